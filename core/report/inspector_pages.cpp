#include "core/report/inspector_pages.h"

#include "core/report/inspector_part.h"

#include <algorithm>
#include <set>

namespace core::report {

namespace {

/// Who, when, which yards; and what authorities ask that a book of colonies has no place for.
PaperTable headTable(const InspectorInput& in, const PageOrigin& origin) {
    const Keeper keeper = in.book.keeper.value_or(Keeper{});
    QStringList yards;
    for (const YardIx yard : in.book.yards) yards << in.yard(yard);
    const QString notKept = QStringLiteral("not kept in this book");
    PaperTable table;
    table.file = QStringLiteral("report");
    table.heading = QStringLiteral("Keeper");
    table.columns = {{QStringLiteral("What"), QStringLiteral("item"), false, true},
                     {QStringLiteral("Recorded"), QStringLiteral("value")}};
    table.rows = {{QStringLiteral("Name"), keeper.name},
                  {QStringLiteral("Address"), keeper.address},
                  {QStringLiteral("Contact"), keeper.contact},
                  {QStringLiteral("Registration"), keeper.registration},
                  {QStringLiteral("Place whose rules hold"), keeper.place},
                  {QStringLiteral("First day"), isoText(in.book.from)},
                  {QStringLiteral("Last day"), isoText(in.s().on)},
                  {QStringLiteral("Yards"), yards.join(QStringLiteral(", "))},
                  {QStringLiteral("Book"), origin.book},
                  {QStringLiteral("Revision"), QString::number(origin.revision)},
                  {QStringLiteral("Made on"), origin.printedOn ? isoText(*origin.printedOn) : QString()},
                  {QStringLiteral("Places expected in the next 12 months"), notKept},
                  {QStringLiteral("Training of those who inspect"), notKept}};
    table.after = QStringLiteral("“—” means not recorded, never none. What this book knows of is its own records: no "
                                 "signs recorded does not mean free of disease.");
    return table;
}

} // namespace

std::vector<PaperTable> inspectorTables(const rules::InspectionBook& book, const rules::Inspection& found,
                                        const PageOrigin& origin) {
    const InspectorInput in{book, found};
    std::vector<PaperTable> tables{headTable(in, origin)};
    for (const auto table : {placesTable, countsTable,    coloniesTable, holdsTable,   findsTable,   signsTable,
                             checksTable, uncheckedTable, visitsTable,   samplesTable, resultsTable, treatmentsTable,
                             movesTable,  transfersTable, lineageTable,  begunTable,   endedTable,   lossTable,
                             miteTable,   fallTable,      kitTable,      kitEndsTable})
        tables.push_back(table(in));
    return tables;
}

QString inspectorTitle() { return QStringLiteral("Report for the inspector"); }

QString inspectorSummary(const rules::InspectionBook& book, const rules::Inspection& found) {
    std::set<ColonyIx> held;
    for (const rules::Hold& h : found.holds) held.insert(h.colony);
    const auto counted = [](size_t n, const char* one, const char* more) {
        return QStringLiteral("%1 %2").arg(n).arg(QLatin1StringView(n == 1 ? one : more));
    };
    return QStringLiteral("%1 from %2 to %3: %4 on the last day, %5 of them held.")
        .arg(counted(book.yards.size(), "yard", "yards"), isoText(book.from), isoText(book.s.on),
             counted(found.living.size(), "colony", "colonies"))
        .arg(held.size());
}

std::vector<Page> inspectorPages(const rules::InspectionBook& book, const rules::Inspection& found,
                                 const PageOrigin& origin, const TextMeasure& measure, const Progress& progress) {
    constexpr double kSet = 0.9; // of the way; then the rows are shared out over pages
    const PageSize size = pageSize(origin.paper);
    PageTexts texts = textsFrom(origin, inspectorTitle(), inspectorSummary(book, found));
    texts.running = QStringLiteral("%1, %2 to %3").arg(inspectorTitle(), isoText(book.from), isoText(book.s.on));
    texts.foot = QStringLiteral("Local apiary law and inspectors decide. “—”: not recorded.");
    const std::vector<PaperTable> tables = inspectorTables(book, found, origin);
    size_t rows = 0;
    for (const PaperTable& table : tables) rows += table.rows.size();
    Ticker ticker(progress.part(0, kSet), static_cast<qint64>(rows));
    std::vector<Section> sections;
    for (const PaperTable& table : tables)
        sections.push_back(tableSection(table, measure, size.contentWidth(), &ticker));
    progress.at(kSet);
    return pagesOf(sections, texts, size, measure);
}

} // namespace core::report
