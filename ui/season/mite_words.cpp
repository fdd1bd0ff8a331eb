#include "ui/season/mite_words.h"

#include "ui/look/words.h"

#include <QCoreApplication>

namespace ui::season {

namespace rules = core::rules;

namespace {

struct MiteSaid {
    Q_DECLARE_TR_FUNCTIONS(ui::season::MiteWords)
};

void addWeekColumns(chart::Chart& chart, const rules::MiteWeek& week) {
    const int at = week.days.last.number;
    const auto add = [&](const QString& name, const QString& text) {
        columnOf(chart, name).cells.emplace_back(at, text);
    };
    add(MiteSaid::tr("hives"), QString::number(week.living));
    add(MiteSaid::tr("sampled"), QString::number(week.colonies));
    add(MiteSaid::tr("highest"), oneDecimal(week.highest));
    add(MiteSaid::tr("threshold"), week.threshold ? numberText(week.threshold->real(), 2) : QString());
    add(MiteSaid::tr("hives above"), QString::number(week.above));
    add(MiteSaid::tr("enough sampled"), week.enough ? MiteSaid::tr("yes") : MiteSaid::tr("no"));
}

QString weeksSource(const core::Settings& settings) {
    return MiteSaid::tr("Thresholds of rule 4.5: %1; %2. One yard: the mean of its hives, interval by Student's t; "
                        "several: all mites of all bees, interval of yards that differ (van der Zee et al. 2013), from "
                        "four yards on. A mite to a bee: an assumption.")
        .arg(settingText(settings, "mites.spring"), settingText(settings, "mites.fall"));
}

} // namespace

QString oneDecimal(double value) { return QString::number(value, 'f', 1); }

QString rangeText(const rules::calc::Range& range) {
    return MiteSaid::tr("%1 to %2").arg(oneDecimal(range.low), oneDecimal(range.high));
}

QString sampledText(const rules::MiteWeek& week) {
    return MiteSaid::tr("%1 of %2 sampled").arg(week.colonies).arg(hivesText(week.living));
}

QString rateText(const rules::MiteWeek& week) {
    QString text = MiteSaid::tr("%1 mites in 100 bees").arg(oneDecimal(week.rate));
    if (week.interval) text += MiteSaid::tr(" (95 % interval %1)").arg(rangeText(*week.interval));
    return text;
}

QString verdictText(const rules::MiteWeek& week) {
    if (!week.threshold) return MiteSaid::tr("Yards of both halves of the earth have no threshold in common.");
    const QString limit = numberText(week.threshold->real(), 2);
    if (!week.interval && week.yards > 1)
        return MiteSaid::tr("The threshold is %1; from so few yards there is no interval.").arg(limit);
    if (!week.interval)
        return MiteSaid::tr("The threshold is %1; one hive says nothing certain of the others.").arg(limit);
    switch (rules::verdictOf(week)) {
    case rules::MiteVerdict::Above:
        return MiteSaid::tr("All of the interval lies above the threshold of %1.").arg(limit);
    case rules::MiteVerdict::Below:
        return MiteSaid::tr("None of the interval lies above the threshold of %1.").arg(limit);
    case rules::MiteVerdict::Open:
        break;
    }
    return MiteSaid::tr("The threshold of %1 lies within the interval: these samples do not decide it.").arg(limit);
}

QString enoughText() {
    return MiteSaid::tr("For an estimate of a yard sample %1 of its hives, or all of a smaller one (Lee et al. 2010).")
        .arg(rules::calc::kColoniesToSample);
}

QString decidersText() {
    return MiteSaid::tr("What to do about mites, the label, your veterinarian and local law decide.");
}

chart::Chart miteWeeksChart(SeasonDesk& desk, const std::vector<rules::MiteWeek>& weeks) {
    chart::Chart chart;
    chart.title = MiteSaid::tr("Mites, %1").arg(desk.where());
    chart.valueTitle = MiteSaid::tr("mites in 100 bees, 95 % interval");
    chart.unit = MiteSaid::tr("in 100");
    chart.decimals = 1;
    chart.whereTitle = MiteSaid::tr("week to");
    chart.first = desk.from();
    chart.last = desk.day();
    chart.none = MiteSaid::tr("No mite sample in this time.");
    chart::Series dots{{}, chart::Kind::Dots, {}};
    for (const rules::MiteWeek& week : weeks) {
        chart::Point point{week.days.last.number, week.rate, {}, {}, sampledText(week)};
        if (week.interval) point.lower = week.interval->low;
        if (week.interval) point.upper = week.interval->high;
        dots.points.push_back(std::move(point));
        addWeekColumns(chart, week);
    }
    chart.series.push_back(std::move(dots));
    chart.source = weeksSource(desk.reading().snapshot.settings);
    return chart;
}

} // namespace ui::season
