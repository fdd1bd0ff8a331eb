#include "core/rules/calc/sample_size.h"
#include "core/rules/limits.h"
#include "core/rules/mite_washes.h"
#include "core/rules/season.h"
#include "ui/health/mite_shown.h"
#include "ui/look/sample_text.h"
#include "ui/look/words.h"
#include "ui/season/mite_words.h"

#include <QCoreApplication>

#include <algorithm>

namespace ui::health {

namespace rules = core::rules;
namespace calc = core::rules::calc;
using season::oneDecimal;

namespace {

struct Washes {
    Q_DECLARE_TR_FUNCTIONS(ui::health::Washes)
};

/// More would be no drawing; the table behind it has as many.
constexpr size_t kMostWashes = 60;

double rateOf(const rules::LatestWash& wash) { return calc::mitesPerHundred(wash.counted); }

/// "January to July 2 in 100 (…), August to December 3 in 100 (…): assumptions. On this day 3 holds."
QString thresholdsText(const season::SeasonDesk& desk) {
    const core::Settings& settings = desk.reading().snapshot.settings;
    const auto half = southernOf(desk);
    if (!half) return Washes::tr("Yards of both halves of the earth have no threshold in common on one day.");
    const auto one = [&](const char* months, const char* limit) {
        const rules::Limit of = rules::limitOf(settings, limit, *half);
        return Washes::tr("%1 %2 (%3)").arg(rules::limitText(settings, months, *half), of.value, of.source);
    };
    return Washes::tr("Thresholds: %1; %2. On %3 it is %4 in 100.")
        .arg(one("4.5 spring_months", "mites.spring"), one("4.5 fall_months", "mites.fall"), look::dayText(desk.day()),
             season::numberText(rules::miteThreshold(settings, desk.day(), *half).real(), 2));
}

QString countsText(const season::SeasonDesk& desk, const rules::LatestWashes& all) {
    QString text = Washes::tr("%1: %2 of %3 have a wash of the last %4 days")
                       .arg(desk.where())
                       .arg(all.washes.size())
                       .arg(season::hivesText(all.living))
                       .arg(rules::fixed::kSampleDays);
    if (all.old > 0) text += Washes::tr(", %1 an older one").arg(all.old);
    if (all.never > 0) text += Washes::tr(", %1 none").arg(all.never);
    return text + u'.';
}

/// "A1 (0 of 300)": what such a wash may have missed.
QString noneText(const core::Snapshot& s, const rules::LatestWashes& all) {
    QStringList named;
    const rules::LatestWash* fewest = nullptr;
    for (const rules::LatestWash& wash : all.washes) {
        if (wash.counted.mites > 0) continue;
        named << s.colony(wash.colony).shown;
        if (!fewest || wash.counted.bees < fewest->counted.bees) fewest = &wash;
    }
    if (!fewest || !fewest->interval) return {};
    const int bees = fewest->counted.bees;
    return Washes::tr(
               "No mite in the wash of %1 is not no mites: 0 of %2 bees leaves up to %3 in 100 possible, and where "
               "1 bee in 100 carries one, %4 % of such washes show none (Oliver 2020).")
        .arg(someOf(named))
        .arg(bees)
        .arg(oneDecimal(fewest->interval->high), oneDecimal(100 * calc::chanceOfNone(1, bees)));
}

QString aboveText(const core::Snapshot& s, std::vector<rules::LatestWash> washes) {
    std::erase_if(washes, [](const rules::LatestWash& w) { return !w.above; });
    if (washes.empty()) return Washes::tr("No hive's latest wash lies above its threshold.");
    QStringList named;
    for (const rules::LatestWash& wash : washes)
        named << QStringLiteral("%1 (%2)").arg(s.colony(wash.colony).shown, oneDecimal(rateOf(wash)));
    return Washes::tr("Above the threshold: %1.").arg(someOf(named));
}

QStringList washesSaid(const season::SeasonDesk& desk, const rules::LatestWashes& all) {
    const core::Snapshot& s = desk.reading().snapshot;
    QStringList out{countsText(desk, all)};
    if (all.estimate) {
        const rules::MiteWeek& e = *all.estimate;
        out.front() +=
            u' ' + (e.colonies > 1 ? Washes::tr("Together: %1. %2").arg(season::rateText(e), season::verdictText(e))
                                   : season::verdictText(e));
        if (!e.enough) out << season::enoughText();
        out << aboveText(s, all.washes);
        if (const QString none = noneText(s, all); !none.isEmpty()) out << none;
    } else if (all.living > 0) {
        out << season::enoughText();
    }
    return out << thresholdsText(desk);
}

void addRow(chart::Chart& chart, const core::Snapshot& s, const rules::LatestWash& wash, int at) {
    const auto add = [&](const QString& name, const QString& text) {
        season::columnOf(chart, name).cells.emplace_back(at, text);
    };
    add(Washes::tr("washed"), look::dayText(wash.day));
    add(Washes::tr("mites"), QString::number(wash.counted.mites));
    add(Washes::tr("bees"), QString::number(wash.counted.bees));
    add(Washes::tr("threshold"), season::numberText(wash.threshold.real(), 2));
    add(Washes::tr("above"), wash.above ? Washes::tr("yes") : Washes::tr("no"));
    //: A wash shows no mite though 1 bee in 100 carries one
    add(Washes::tr("misses 1 in 100, %"), oneDecimal(100 * calc::chanceOfNone(1, wash.counted.bees)));
    const auto* place = s.placeOf(wash.colony);
    add(Washes::tr("yard"), place ? s.yard(place->yard).name : look::dash());
}

chart::Chart washesChart(const season::SeasonDesk& desk, const std::vector<rules::LatestWash>& washes, bool all) {
    const core::Snapshot& s = desk.reading().snapshot;
    chart::Chart chart;
    chart.title = all ? Washes::tr("Latest washes, %1, %2").arg(desk.where(), look::dayText(desk.day()))
                      : Washes::tr("The %1 highest of the latest washes, %2, %3")
                            .arg(QString::number(washes.size()), desk.where(), look::dayText(desk.day()));
    chart.valueTitle = Washes::tr("mites in 100 bees, 95 % interval");
    chart.unit = Washes::tr("in 100");
    chart.decimals = 1;
    chart.whereTitle = Washes::tr("hive");
    chart.none = Washes::tr("No wash of the last %1 days.").arg(rules::fixed::kSampleDays);
    chart.source = look::sampleSource();
    chart::Series dots{{}, chart::Kind::Dots, {}};
    for (const rules::LatestWash& wash : washes) {
        const int at = static_cast<int>(chart.names.size());
        chart.names.push_back(s.colony(wash.colony).shown);
        chart::Point point{at, rateOf(wash), {}, {}, {}};
        if (wash.interval) point.lower = wash.interval->low;
        if (wash.interval) point.upper = wash.interval->high;
        dots.points.push_back(std::move(point));
        addRow(chart, s, wash, at);
    }
    chart.series.push_back(std::move(dots));
    if (const auto half = southernOf(desk))
        chart.thresholds.push_back(
            {rules::miteThreshold(s.settings, desk.day(), *half).real(), Washes::tr("threshold of this day")});
    return chart;
}

/// The days on which another threshold begins, and the last.
chart::Series thresholdSteps(const season::SeasonDesk& desk, bool southern) {
    chart::Series steps{Washes::tr("threshold"), chart::Kind::Step, {}};
    const core::Settings& settings = desk.reading().snapshot.settings;
    std::optional<core::Millionths> before;
    for (core::Day day = desk.from(); day <= desk.day(); day = day + 1) {
        const auto limit = rules::miteThreshold(settings, day, southern);
        if (limit != before || day == desk.day()) steps.points.push_back({day.number, limit.real(), {}, {}, {}});
        before = limit;
    }
    return steps;
}

} // namespace

season::Part washesPart(season::SeasonDesk& desk) {
    const auto& reading = desk.reading();
    rules::LatestWashes all = rules::latestWashes(reading.snapshot, reading.facts, desk.yard());
    std::ranges::stable_sort(
        all.washes, [](const rules::LatestWash& a, const rules::LatestWash& b) { return rateOf(b) < rateOf(a); });
    const QStringList said = washesSaid(desk, all);
    const bool few = all.washes.size() <= kMostWashes;
    if (!few) all.washes.resize(kMostWashes);
    return {Washes::tr("Latest washes"), washesChart(desk, all.washes, few), said};
}

season::Part washesOverTimePart(season::SeasonDesk& desk, const MiteRows& rows) {
    rules::SeasonBook book{desk.from(), desk.reading().snapshot, desk.reading().snapshot, desk.yard(), rows.visits, {}};
    const auto weeks = rules::mitesByWeek(book);
    chart::Chart chart = season::miteWeeksChart(desk, weeks);
    chart.series.front().name = Washes::tr("washes");
    chart.marks = treatmentMarks(desk, rows);
    if (const auto half = southernOf(desk); half && !weeks.empty()) chart.series.push_back(thresholdSteps(desk, *half));
    QStringList said;
    if (!weeks.empty())
        said << Washes::tr("Week to %1: %2, %3. %4")
                    .arg(look::dayText(weeks.back().days.last), season::sampledText(weeks.back()),
                         season::rateText(weeks.back()), season::verdictText(weeks.back()));
    said << thresholdsText(desk);
    return {Washes::tr("Over time"), std::move(chart), said};
}

} // namespace ui::health
