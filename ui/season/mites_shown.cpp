#include "core/rules/limits.h"
#include "core/rules/season.h"
#include "core/rules/season_mites.h"
#include "ui/look/words.h"
#include "ui/season/mite_words.h"
#include "ui/season/shown.h"

#include <QCoreApplication>

#include <algorithm>

namespace ui::season {

namespace rules = core::rules;

namespace {

struct MiteWords {
    Q_DECLARE_TR_FUNCTIONS(ui::season::MiteWords)
};

QString latestText(const rules::MiteWeek& week) {
    QString text =
        MiteWords::tr("Week to %1: %2, %3").arg(look::dayText(week.days.last), sampledText(week), rateText(week));
    text += MiteWords::tr(". Highest hive: %1; above its threshold: %2. ")
                .arg(oneDecimal(week.highest), hivesText(week.above));
    return text + verdictText(week);
}

QStringList sentencesOf(const std::vector<rules::MiteWeek>& weeks) {
    QStringList out;
    if (!weeks.empty()) out << latestText(weeks.back());
    if (!weeks.empty() && !weeks.back().enough) out << enoughText();
    return out << decidersText();
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

} // namespace

Shown mitesShown(SeasonDesk& desk) {
    const auto weeks = rules::mitesByWeek(desk.book());
    chart::Chart chart = miteWeeksChart(desk, weeks);
    addThresholds(chart, desk, weeks);
    return {sentencesOf(weeks), {{{}, std::move(chart)}}};
}

} // namespace ui::season
