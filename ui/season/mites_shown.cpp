#include "core/rules/limits.h"
#include "core/rules/season.h"
#include "core/rules/season_mites.h"
#include "ui/look/words.h"
#include "ui/season/shown.h"

#include <QCoreApplication>

#include <algorithm>

namespace ui::season {

namespace rules = core::rules;

namespace {

struct MiteWords {
    Q_DECLARE_TR_FUNCTIONS(ui::season::MiteWords)
};

QString oneDecimal(double value) { return QString::number(value, 'f', 1); }

QString rangeText(const rules::calc::Range& range) {
    return MiteWords::tr("%1 to %2").arg(oneDecimal(range.low), oneDecimal(range.high));
}

QString sampledText(const rules::MiteWeek& week) {
    return MiteWords::tr("%1 of %2 sampled").arg(week.colonies).arg(hivesText(week.living));
}

QString verdictText(const rules::MiteWeek& week) {
    if (!week.threshold) return MiteWords::tr("Yards of both halves of the earth have no threshold in common.");
    const QString limit = numberText(week.threshold->real(), 2);
    if (!week.interval && week.yards > 1)
        return MiteWords::tr("The threshold is %1; from so few yards there is no interval.").arg(limit);
    if (!week.interval)
        return MiteWords::tr("The threshold is %1; one hive says nothing certain of the others.").arg(limit);
    switch (rules::verdictOf(week)) {
    case rules::MiteVerdict::Above:
        return MiteWords::tr("All of the interval lies above the threshold of %1.").arg(limit);
    case rules::MiteVerdict::Below:
        return MiteWords::tr("None of the interval lies above the threshold of %1.").arg(limit);
    case rules::MiteVerdict::Open:
        break;
    }
    return MiteWords::tr("The threshold of %1 lies within the interval: these samples do not decide it.").arg(limit);
}

QString latestText(const rules::MiteWeek& week) {
    QString text = MiteWords::tr("Week to %1: %2, %3 mites in 100 bees")
                       .arg(look::dayText(week.days.last), sampledText(week), oneDecimal(week.rate));
    if (week.interval) text += MiteWords::tr(" (95 % interval %1)").arg(rangeText(*week.interval));
    text += MiteWords::tr(". Highest hive: %1; above its threshold: %2. ")
                .arg(oneDecimal(week.highest), hivesText(week.above));
    return text + verdictText(week);
}

QStringList sentencesOf(const std::vector<rules::MiteWeek>& weeks) {
    QStringList out;
    if (!weeks.empty()) out << latestText(weeks.back());
    if (!weeks.empty() && !weeks.back().enough)
        out << MiteWords::tr(
                   "For an estimate of a yard sample %1 of its hives, or all of a smaller one (Lee et al. 2010).")
                   .arg(rules::calc::kColoniesToSample);
    return out << MiteWords::tr("What to do about mites, the label, your veterinarian and local law decide.");
}

void addColumns(chart::Chart& chart, const rules::MiteWeek& week) {
    const int at = week.days.last.number;
    const auto add = [&](const QString& name, const QString& text) {
        columnOf(chart, name).cells.emplace_back(at, text);
    };
    add(MiteWords::tr("hives"), QString::number(week.living));
    add(MiteWords::tr("sampled"), QString::number(week.colonies));
    add(MiteWords::tr("highest"), oneDecimal(week.highest));
    add(MiteWords::tr("threshold"), week.threshold ? numberText(week.threshold->real(), 2) : QString());
    add(MiteWords::tr("hives above"), QString::number(week.above));
    add(MiteWords::tr("enough sampled"), week.enough ? MiteWords::tr("yes") : MiteWords::tr("no"));
}

/// Those that hold in some week shown.
void addThresholds(chart::Chart& chart, SeasonDesk& desk, const std::vector<rules::MiteWeek>& weeks) {
    const auto yard = desk.yard();
    const auto& s = desk.reading().snapshot;
    const bool southern = yard ? s.yard(*yard).southern() : std::ranges::all_of(s.yards, &core::SnapYard::southern);
    const std::pair<core::Millionths, const char*> both[] = {{s.settings.mitesSpring, "4.5 spring_months"},
                                                             {s.settings.mitesFall, "4.5 fall_months"}};
    for (const auto& [limit, months] : both)
        if (std::ranges::any_of(weeks, [&](const rules::MiteWeek& w) { return w.threshold == limit; }))
            chart.thresholds.push_back(
                {limit.real(), MiteWords::tr("threshold, %1").arg(rules::limitText(s.settings, months, southern))});
}

QString sourceText(const core::Settings& settings) {
    return MiteWords::tr(
               "Thresholds of rule 4.5: %1; %2. One yard: the mean of its hives, interval by Student's t; "
               "several: all mites of all bees, interval of yards that differ (van der Zee et al. 2013), from "
               "four yards on. A mite to a bee: an assumption.")
        .arg(settingText(settings, "mites.spring"), settingText(settings, "mites.fall"));
}

} // namespace

Shown mitesShown(SeasonDesk& desk) {
    const auto weeks = rules::mitesByWeek(desk.book());
    chart::Chart chart;
    chart.title = MiteWords::tr("Mites, %1").arg(desk.where());
    chart.valueTitle = MiteWords::tr("mites in 100 bees, 95 % interval");
    chart.unit = MiteWords::tr("in 100");
    chart.decimals = 1;
    chart.whereTitle = MiteWords::tr("week to");
    chart.first = desk.from();
    chart.last = desk.day();
    chart.none = MiteWords::tr("No mite sample in this time.");
    chart::Series dots{{}, chart::Kind::Dots, {}};
    for (const rules::MiteWeek& week : weeks) {
        chart::Point point{week.days.last.number, week.rate, {}, {}, sampledText(week)};
        if (week.interval) point.lower = week.interval->low;
        if (week.interval) point.upper = week.interval->high;
        dots.points.push_back(std::move(point));
        addColumns(chart, week);
    }
    chart.series.push_back(std::move(dots));
    addThresholds(chart, desk, weeks);
    chart.source = sourceText(desk.reading().snapshot.settings);
    return {sentencesOf(weeks), {{{}, std::move(chart)}}};
}

} // namespace ui::season
