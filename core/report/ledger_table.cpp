#include "core/report/ledger_table.h"

#include "core/rules/calc/loss.h"
#include "core/rules/limits.h"

#include <cmath>

namespace core::report {

using rules::LedgerCount;
using rules::LedgerPeriod;
using rules::LedgerSeason;
using rules::LedgerYear;

namespace {

constexpr std::pair<const char*, const char*> kColumns[] = {
    {"Yard", "yard"},           {"Year", "year"},          {"Season", "season"},         {"From", "from"},
    {"Until", "until"},         {"At its start", "start"}, {"Divided", "divided"},       {"New", "begun"},
    {"Carried in", "moved_in"}, {"United", "united"},      {"Shaken out", "shaken_out"}, {"Dead", "dead"},
    {"Destroyed", "destroyed"}, {"Sold", "sold"},          {"Carried out", "moved_out"}, {"At its end", "end"}};

constexpr int LedgerCount::*kCounts[] = {&LedgerCount::start,    &LedgerCount::divided,   &LedgerCount::begun,
                                         &LedgerCount::movedIn,  &LedgerCount::united,    &LedgerCount::shakenOut,
                                         &LedgerCount::dead,     &LedgerCount::destroyed, &LedgerCount::sold,
                                         &LedgerCount::movedOut, &LedgerCount::end};

QString seasonName(LedgerSeason season) {
    switch (season) {
    case LedgerSeason::Fall:
        return QStringLiteral("fall");
    case LedgerSeason::Winter:
        return QStringLiteral("winter");
    case LedgerSeason::Summer:
        break;
    }
    return QStringLiteral("summer");
}

QString yardName(const Snapshot& s, const LedgerYear& year) {
    if (year.yard) return s.yard(*year.yard).name;
    return year.southern ? QStringLiteral("all southern yards") : QStringLiteral("all northern yards");
}

QString percent(double share) { return QString::number(std::lround(share * 100)); }

QString lossSentence(const rules::calc::ClusteredShare& loss) {
    return QStringLiteral("Winter took %1 of %2 at risk: %3 % (95 % interval %4 to %5 %).")
        .arg(loss.found)
        .arg(loss.of)
        .arg(rules::calc::wholePercent(loss.found, loss.of))
        .arg(percent(loss.interval.low), percent(loss.interval.high));
}

QString fallSentence(const LedgerPeriod& fall) {
    const LedgerCount& c = fall.count;
    return QStringLiteral("At the fall count, %1: %2. Given up in fall: %3 (%4 united, %5 shaken out).")
        .arg(isoText(fall.from))
        .arg(c.start)
        .arg(c.givenUp())
        .arg(c.united)
        .arg(c.shakenOut);
}

QString summerSentence(const LedgerYear& year, const LedgerPeriod& summer) {
    const LedgerCount& c = summer.count;
    const LedgerPeriod* fall = year.of(LedgerSeason::Fall);
    QString text = QStringLiteral("At the spring count, %1: %2. Came of divides: %3; new: %4.")
                       .arg(isoText(summer.from))
                       .arg(c.start)
                       .arg(c.divided)
                       .arg(c.begun);
    if (!summer.over || !fall) return text + QStringLiteral(" The summer is not over.");
    const int more = c.end - fall->count.start;
    return text + QStringLiteral(" At the next fall count: %1, %2 than a year before.")
                      .arg(c.end)
                      .arg(more == 0  ? QStringLiteral("no more and no fewer")
                           : more > 0 ? QStringLiteral("%1 more").arg(more)
                                      : QStringLiteral("%1 fewer").arg(-more));
}

} // namespace

QString winterName(int year, bool southern) {
    if (southern) return QString::number(year);
    return QStringLiteral("%1/%2").arg(year).arg((year + 1) % 100, 2, 10, QLatin1Char('0'));
}

QStringList ledgerColumns() {
    QStringList out;
    for (const auto& [shown, file] : kColumns) out << QString::fromLatin1(shown);
    return out;
}

QStringList ledgerFileColumns() {
    QStringList out;
    for (const auto& [shown, file] : kColumns) out << QString::fromLatin1(file);
    return out;
}

std::vector<LedgerRow> ledgerRows(const Snapshot& s, const std::vector<LedgerYear>& years, bool forFile) {
    std::vector<LedgerRow> rows;
    for (size_t i = 0; i < years.size(); ++i)
        for (const LedgerPeriod& p : years[i].periods) {
            LedgerRow row{i,
                          {yardName(s, years[i]),
                           forFile ? QString::number(years[i].year) : winterName(years[i].year, years[i].southern),
                           seasonName(p.season), isoText(p.from), isoText(p.over ? p.until : s.on)}};
            for (const auto count : kCounts) {
                const bool ends = count == &LedgerCount::start || count == &LedgerCount::end;
                const int n = p.count.*count;
                row.cells << (n == 0 && !ends && !forFile ? QString() : QString::number(n));
            }
            rows.push_back(std::move(row));
        }
    return rows;
}

QStringList ledgerSentences(const Snapshot&, const LedgerYear& year) {
    QStringList out;
    if (const LedgerPeriod* fall = year.of(LedgerSeason::Fall)) out << fallSentence(*fall);
    if (year.winterLoss) out << lossSentence(*year.winterLoss);
    if (const LedgerPeriod* summer = year.of(LedgerSeason::Summer)) out << summerSentence(year, *summer);
    return out;
}

QString ledgerKey(const Settings& settings) {
    const auto day = [&](const char* name) { return rules::limitText(settings, name); };
    return QStringLiteral(
               "Fall begins on %1, winter on the day after %2, summer on %3, with the first divides (settings "
               "and assumptions); in southern yards six months later. Each count is of the colonies that live "
               "as the day begins: start + divided + new + carried in − united − shaken out − dead − destroyed "
               "− sold − carried out = end. Lost in winter: dead and destroyed of those at risk (COLOSS "
               "BEEBOOK).")
        .arg(day("season.fall_start"), day("season.fall_end"), day("4.13 divide_from"));
}

namespace {

/// A year of a yard: its name, a line a season, its sentences.
Block yearBlock(const Snapshot& s, const LedgerYear& year, const std::vector<LedgerRow>& rows, size_t index,
                const TextMeasure& measure, double width) {
    constexpr double kWords = 34; // of the season
    Block block;
    BlockPen pen(measure, block);
    double y = pen.paragraph(0, 0, width,
                             yardName(s, year) + QStringLiteral(", ") + winterName(year.year, year.southern), kLabel) +
               1;
    const QStringList columns = ledgerColumns();
    for (const LedgerRow& row : rows) {
        if (row.year != index) continue;
        QStringList parts;
        for (qsizetype c = 5; c < columns.size(); ++c)
            if (!row.cells[c].isEmpty()) parts << columns[c].toLower() + u' ' + row.cells[c];
        pen.line(0, y, row.cells[2], kStrong);
        y = pen.paragraph(kWords - 14, y, width - kWords + 14,
                          row.cells[3] + QStringLiteral(" to ") + row.cells[4] + QStringLiteral(": ") +
                              parts.join(QStringLiteral(" · ")),
                          kText);
    }
    for (const QString& sentence : ledgerSentences(s, year)) y = pen.paragraph(0, y + 0.6, width, sentence, kText);
    pen.stroke({0, y + 1}, {width, y + 1}, 0.2);
    block.height = y + 1.4;
    block.zone = QStringLiteral("year %1").arg(index);
    block.zoneWidth = width;
    return block;
}

} // namespace

std::vector<Page> ledgerPages(const Snapshot& s, const std::vector<LedgerYear>& years, const PageOrigin& origin,
                              const TextMeasure& measure) {
    const PageSize size = pageSize(origin.paper);
    const PageTexts texts =
        textsFrom(origin, QStringLiteral("Ledger of colonies"), QStringLiteral("up to %1").arg(isoText(s.on)));
    Section section;
    section.heading = QStringLiteral("By yard and year");
    section.note = ledgerKey(s.settings);
    const auto rows = ledgerRows(s, years);
    for (size_t i = 0; i < years.size(); ++i)
        section.blocks.push_back(yearBlock(s, years[i], rows, i, measure, size.contentWidth()));
    return pagesOf({section}, texts, size, measure);
}

} // namespace core::report
