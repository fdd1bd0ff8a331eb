#include "core/rules/limits.h"
#include "core/rules/season_strength.h"
#include "ui/look/rule_words.h"
#include "ui/look/words.h"
#include "ui/season/shown.h"

#include <QCoreApplication>

namespace ui::season {

namespace rules = core::rules;

namespace {

struct StrengthWords {
    Q_DECLARE_TR_FUNCTIONS(ui::season::StrengthWords)
};

QString countedText(const rules::StrengthWeek& week) {
    return StrengthWords::tr("%1 of %2 counted").arg(week.counted).arg(hivesText(week.living));
}

/// "3 counts are older than 30 days, 5 hives have none that is valid, in 1 no bees were found."
QString missingText(const rules::StrengthWeek& week, const core::Settings& settings) {
    QStringList parts;
    if (week.countOld > 0)
        parts << StrengthWords::tr("%1 counted more than %2 before")
                     .arg(week.countOld)
                     .arg(rules::limitText(settings, "strength.max_age_days"));
    if (week.noCount > 0) parts << StrengthWords::tr("%1 without a valid count").arg(week.noCount);
    if (week.noBees > 0) parts << StrengthWords::tr("%1 found without bees").arg(week.noBees);
    if (parts.isEmpty()) return {};
    return StrengthWords::tr("Left out, not counted as 0: %1.").arg(parts.join(QStringLiteral(", ")));
}

QStringList sentencesOf(const std::vector<rules::StrengthWeek>& weeks, const core::Settings& settings) {
    if (weeks.empty()) return {};
    const rules::StrengthWeek& last = weeks.back();
    const QString day = look::dayText(last.days.last);
    QString text = StrengthWords::tr("On %1 no hive lives here.").arg(day);
    if (last.counted > 0)
        text = StrengthWords::tr("On %1: %2, %3 frames of bees a hive, %4 in all.")
                   .arg(day, countedText(last), numberText(*last.mean(), 2), core::framesText(last.sum));
    else if (last.living > 0)
        text = StrengthWords::tr("On %1 none of %2 has a count that still counts.").arg(day, hivesText(last.living));
    const QString missing = missingText(last, settings);
    return {missing.isEmpty() ? text : text + u' ' + missing};
}

void addColumns(chart::Chart& chart, const rules::StrengthWeek& week) {
    const int at = week.days.last.number;
    const auto add = [&](const QString& name, const QString& text) {
        columnOf(chart, name).cells.emplace_back(at, text);
    };
    add(StrengthWords::tr("hives"), QString::number(week.living));
    add(StrengthWords::tr("counted"), QString::number(week.counted));
    add(StrengthWords::tr("count too old"), QString::number(week.countOld));
    add(StrengthWords::tr("no valid count"), QString::number(week.noCount));
    add(StrengthWords::tr("without bees"), QString::number(week.noBees));
    for (size_t i = 0; i < week.ofClass.size(); ++i)
        add(look::classText(static_cast<rules::StrengthClass>(i)), QString::number(week.ofClass[i]));
}

chart::Chart chartOf(SeasonDesk& desk, const std::vector<rules::StrengthWeek>& weeks, bool inAll) {
    const core::Settings& settings = desk.reading().snapshot.settings;
    chart::Chart chart;
    chart.title =
        (inAll ? StrengthWords::tr("Frames of bees in all, %1") : StrengthWords::tr("Strength, %1")).arg(desk.where());
    chart.valueTitle = inAll ? StrengthWords::tr("frames of bees, hives counted together")
                             : StrengthWords::tr("frames of bees a hive counted");
    chart.unit = StrengthWords::tr("frames");
    chart.whereTitle = StrengthWords::tr("week to");
    chart.first = desk.from();
    chart.last = desk.day();
    chart.none = StrengthWords::tr("No count of bees that counts in this time.");
    chart::Series line;
    for (const rules::StrengthWeek& week : weeks) {
        const auto value = week.counted == 0 ? std::nullopt : inAll ? std::optional(week.sum.frames()) : week.mean();
        line.points.push_back({week.days.last.number, value, {}, {}, countedText(week)});
        addColumns(chart, week);
    }
    chart.series.push_back(std::move(line));
    chart.source =
        StrengthWords::tr("At the end of each week, by rule 4.1: the latest valid count, for %1. Classes are "
                          "settings (assumptions).")
            .arg(settingText(settings, "strength.max_age_days"));
    return chart;
}

} // namespace

Shown strengthShown(SeasonDesk& desk) {
    const auto weeks = rules::strengthByWeek(desk.book());
    return {sentencesOf(weeks, desk.reading().snapshot.settings),
            {{StrengthWords::tr("A hive"), chartOf(desk, weeks, false)},
             {StrengthWords::tr("In all"), chartOf(desk, weeks, true)}}};
}

} // namespace ui::season
