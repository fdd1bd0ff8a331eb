#include "app/commands.h"

#include "core/base/error.h"
#include "core/base/natural_order.h"
#include "core/edit/medicine_rows.h"
#include "core/exchange/csv_writer.h"
#include "core/report/medicine_pages.h"
#include "ui/print/book_origin.h"
#include "ui/print/font_measure.h"
#include "ui/print/pages_file.h"

#include <QFileInfo>

namespace app {

namespace {

std::optional<core::Day> dayIn(const Arguments& a, const QString& option) {
    return a.has(option) ? std::optional(a.day(option)) : std::nullopt;
}

core::YardId yardIn(const core::rules::MedicineBook& book, const QString& name) {
    for (const core::Yard& yard : book.rows().yards)
        if (core::folded(yard.name) == core::folded(name.trimmed())) return yard.id;
    throw core::Error(core::Error::Kind::BadData, QStringLiteral("The book has no yard “%1”.").arg(name));
}

} // namespace

int runRegister(const QStringList& words, const core::Clock& clock, Streams) {
    const Arguments a(words,
                      {{QStringLiteral("to")},
                       {QStringLiteral("from")},
                       {QStringLiteral("until")},
                       {QStringLiteral("yard")},
                       {QStringLiteral("paper")}},
                      {QStringLiteral("BOOK")});
    const QString to = a.required(QStringLiteral("to"));
    const bool csv = to.endsWith(QLatin1StringView(".csv"), Qt::CaseInsensitive);
    if (!csv && !to.endsWith(QLatin1StringView(".pdf"), Qt::CaseInsensitive))
        throw UsageError(QStringLiteral("--to: expected a file that ends in .pdf or .csv."));
    const QString paper = a.choice(QStringLiteral("paper"), {QStringLiteral("a4"), QStringLiteral("letter")});
    core::rules::MedicineAsked asked;
    asked.from = dayIn(a, QStringLiteral("from"));
    asked.until = dayIn(a, QStringLiteral("until"));
    if (asked.from && asked.until && *asked.from > *asked.until)
        throw UsageError(QStringLiteral("--from is after --until: expected the earlier day first."));
    const auto session =
        core::edit::Session::open(a.word(QStringLiteral("BOOK")), clock, core::edit::Session::Access::ReadOnly);
    const core::rules::MedicineBook book = core::edit::medicineBook(*session);
    core::report::MedicineAbout about;
    if (const auto yard = a.value(QStringLiteral("yard"))) {
        asked.yard = yardIn(book, *yard);
        about.yard = book.yardName(*asked.yard);
    }
    about.from = asked.from;
    about.until = asked.until;
    about.entries = book.entries(asked);
    if (csv) {
        const QFileInfo file(to);
        core::exchange::CsvWriter writer(file.absolutePath(), file.fileName());
        writer.row(core::report::medicineFileColumns());
        for (const QStringList& row : core::report::medicineFileRows(book, about)) writer.row(row);
        writer.commit();
        return 0;
    }
    ui::print::requireFonts();
    core::report::PageOrigin origin{core::report::Paper::A4, session->bookTitle(), ui::print::revisionOf(*session),
                                    clock.today()};
    if (paper == QLatin1StringView("letter")) origin.paper = core::report::Paper::Letter;
    ui::print::writePages(core::report::medicinePages(book, about, origin, ui::print::FontMeasure()), nullptr,
                          QStringLiteral("Medicine register"), to);
    return 0;
}

} // namespace app
