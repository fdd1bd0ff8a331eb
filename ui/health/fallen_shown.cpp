#include "core/rules/limits.h"
#include "core/rules/mite_fall_weeks.h"
#include "ui/health/mite_shown.h"
#include "ui/look/words.h"
#include "ui/season/mite_words.h"

#include <QCoreApplication>

namespace ui::health {

namespace rules = core::rules;
using season::oneDecimal;

namespace {

struct Fallen {
    Q_DECLARE_TR_FUNCTIONS(ui::health::Fallen)
};

QString limitsText(const season::SeasonDesk& desk) {
    const core::Settings& settings = desk.reading().snapshot.settings;
    const auto half = southernOf(desk);
    if (!half) return Fallen::tr("Yards of both halves of the earth have no threshold in common on one day.");
    const auto now = rules::dropThreshold(settings, desk.day(), *half);
    const rules::Limit summer = rules::limitOf(settings, "drop.summer", *half);
    const rules::Limit late = rules::limitOf(settings, "drop.late", *half);
    const QString text =
        (*half ? Fallen::tr("Thresholds of natural fall, January to April %1, May and June %2 (%3).")
               : Fallen::tr("Thresholds of natural fall, July to October %1, November and December %2 (%3)."))
            .arg(summer.value, late.value,
                 summer.source == late.source ? summer.source : summer.source + u' ' + late.source);
    return text + u' ' +
           (now ? Fallen::tr("On %1 it is %2 a day.").arg(look::dayText(desk.day()), season::numberText(now->real(), 2))
                : Fallen::tr("On %1 none holds: the source names no other months.").arg(look::dayText(desk.day())));
}

QString latestSaid(const season::SeasonDesk& desk, const rules::FallWeek& week) {
    const core::Snapshot& s = desk.reading().snapshot;
    QString text = Fallen::tr("Natural fall, week to %1: %2 counted, mean %3 mites a day, highest %4 (%5). ")
                       .arg(look::dayText(week.days.last), season::hivesText(week.colonies), oneDecimal(week.mean),
                            oneDecimal(week.highest), s.colony(week.highestOf).shown);
    QStringList named;
    for (const core::ColonyIx c : week.over) named << s.colony(c).shown;
    if (!named.isEmpty()) return text + Fallen::tr("Above the threshold: %1.").arg(someOf(named));
    return text + (week.threshold ? Fallen::tr("None above the threshold.")
                                  : Fallen::tr("No threshold in common holds for that time."));
}

chart::Series seriesOf(chart::Chart& chart, const QString& name, const std::vector<rules::FallWeek>& weeks) {
    chart::Series dots{name, chart::Kind::Dots, {}};
    for (const rules::FallWeek& week : weeks)
        dots.points.push_back(
            {week.days.last.number,
             week.mean,
             {},
             {},
             Fallen::tr("%1, highest %2 a day").arg(season::hivesText(week.colonies), oneDecimal(week.highest))});
    chart.none = Fallen::tr("No fallen mites counted in this time.");
    return dots;
}

/// Breaks in the months without a threshold.
chart::Series dropSteps(const season::SeasonDesk& desk, bool southern) {
    chart::Series steps{Fallen::tr("threshold"), chart::Kind::Step, {}};
    const core::Settings& settings = desk.reading().snapshot.settings;
    std::optional<core::Millionths> before;
    for (core::Day day = desk.from(); day <= desk.day(); day = day + 1) {
        const auto limit = rules::dropThreshold(settings, day, southern);
        const bool last = day == desk.day() || rules::dropThreshold(settings, day + 1, southern) != limit;
        if (limit && (limit != before || last)) steps.points.push_back({day.number, limit->real(), {}, {}, {}});
        if (!limit && before) steps.points.push_back({day.number, std::nullopt, {}, {}, {}});
        before = limit;
    }
    return steps;
}

} // namespace

season::Part fallenPart(season::SeasonDesk& desk, const MiteRows& rows) {
    const core::Snapshot& s = desk.reading().snapshot;
    const rules::SeasonBook book{desk.from(), s, s, desk.yard(), {}, {}};
    const auto treated = rules::treatedByColony(treatmentBook(desk, rows));
    const auto natural = rules::fallByWeek(book, rows.falls, treated, rules::FallKind::Natural);
    const auto during = rules::fallByWeek(book, rows.falls, treated, rules::FallKind::WhileTreated);
    chart::Chart chart;
    chart.title = Fallen::tr("Mites fallen, %1").arg(desk.where());
    chart.valueTitle = Fallen::tr("mites a day on the board, mean of the hives counted");
    chart.unit = Fallen::tr("a day");
    chart.decimals = 1;
    chart.whereTitle = Fallen::tr("week to");
    chart.first = desk.from();
    chart.last = desk.day();
    chart.series.push_back(seriesOf(chart, Fallen::tr("natural fall"), natural));
    if (!during.empty()) chart.series.push_back(seriesOf(chart, Fallen::tr("while treated"), during));
    if (const auto half = southernOf(desk); half && !(natural.empty() && during.empty()))
        chart.series.push_back(dropSteps(desk, *half));
    chart.marks = treatmentMarks(desk, rows);
    chart.source =
        Fallen::tr("Mites a day: mites on the board by the days that it lay there. No interval is shown: none of "
                   "the sources gives one.");
    QStringList said;
    if (!natural.empty()) said << latestSaid(desk, natural.back());
    said << Fallen::tr(
                "Natural fall is a method of its own, best counted over %1 days: it agrees poorly with washes in "
                "some studies and is never turned into mites in 100 bees (Oliver 2020).")
                .arg(rules::kBoardDays);
    if (!during.empty())
        said << Fallen::tr(
            "What falls while a treatment works is no natural fall: it is drawn apart, and no threshold is "
            "for it.");
    said << limitsText(desk);
    return {Fallen::tr("Fallen mites"), std::move(chart), said};
}

} // namespace ui::health
