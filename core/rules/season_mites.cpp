#include "core/rules/season_mites.h"

#include "core/rules/calc/clustered.h"
#include "core/rules/limits.h"
#include "core/rules/season.h"

#include <algorithm>
#include <map>

namespace core::rules {

namespace {

using ByYard = std::map<YardIx, std::vector<calc::MiteSample>>;

ByYard byYard(const PlacedSamples& samples) {
    ByYard out;
    for (const auto& [colony, sample] : samples) out[sample.yard].push_back(sample.counted);
    return out;
}

std::map<YardIx, int> livingOn(const SeasonBook& book, const ColonyPlaces& places, Day day) {
    std::map<YardIx, int> living;
    for (size_t i = 0; i < book.s.colonies.size(); ++i) {
        const ColonyIx c{static_cast<qint32>(i)};
        const auto yard = stoodThere(book, c) ? places.livingIn(c, day) : std::nullopt;
        if (yard) ++living[*yard];
    }
    return living;
}

void estimateOverYards(MiteWeek& week, const ByYard& yards) {
    std::vector<calc::Counted> groups;
    qint64 mites = 0, bees = 0;
    bool within = true;
    for (const auto& [yard, samples] : yards) {
        calc::Counted sum;
        for (const calc::MiteSample& one : samples) {
            sum.found += one.mites;
            sum.of += one.bees;
        }
        within = within && sum.found <= sum.of;
        mites += sum.found;
        bees += sum.of;
        groups.push_back(sum);
    }
    week.rate = 100.0 * static_cast<double>(mites) / static_cast<double>(bees);
    if (!within || week.yards < kYardsForInterval) return;
    if (const auto share = calc::clusteredShare(groups))
        week.interval = calc::Range{100 * share->interval.low, 100 * share->interval.high};
}

void judge(MiteWeek& week, const Snapshot& s, const PlacedSamples& samples) {
    std::optional<Day> last;
    std::optional<bool> half;
    bool both = false;
    for (const auto& [colony, sample] : samples) {
        const bool southern = s.yard(sample.yard).southern();
        both = both || (half && *half != southern);
        half = southern;
        last = std::max(last.value_or(sample.day), sample.day);
        const Millionths limit = miteThreshold(s.settings, sample.day, southern);
        if (qint64(sample.counted.mites) * 100'000'000 > limit.value * sample.counted.bees) ++week.above;
        week.highest = std::max(week.highest, calc::mitesPerHundred(sample.counted));
    }
    if (!both) week.threshold = miteThreshold(s.settings, *last, *half);
}

} // namespace

Millionths miteThreshold(const Settings& settings, Day day, bool southern) {
    return northernMonth(day, southern) <= fixed::kLastMonthOfSpring ? settings.mitesSpring : settings.mitesFall;
}

MiteWeek miteEstimate(const Snapshot& s, calc::DayRange days, const std::map<YardIx, int>& living,
                      std::optional<YardIx> yard, const PlacedSamples& samples) {
    MiteWeek week;
    week.days = days;
    week.colonies = static_cast<int>(samples.size());
    const ByYard yards = byYard(samples);
    week.yards = static_cast<int>(yards.size());
    for (const auto& [in, count] : living)
        if (!yard || in == *yard) week.living += count;
    week.enough = true;
    for (const auto& [in, of] : yards) {
        const auto there = living.find(in);
        const auto estimate = calc::yardMites(of, there == living.end() ? 0 : there->second);
        week.enough = week.enough && estimate->enough;
        if (yards.size() > 1) continue;
        week.rate = estimate->mean;
        week.interval = estimate->interval;
    }
    if (yards.size() > 1) estimateOverYards(week, yards);
    judge(week, s, samples);
    return week;
}

MiteVerdict verdictOf(const MiteWeek& week) {
    if (!week.threshold || !week.interval) return MiteVerdict::Open;
    const double limit = week.threshold->real();
    if (week.interval->low > limit) return MiteVerdict::Above;
    return week.interval->high <= limit ? MiteVerdict::Below : MiteVerdict::Open;
}

std::vector<MiteWeek> mitesByWeek(const SeasonBook& book) {
    const auto weeks = weeksBetween(book.from, book.s.on);
    const ColonyPlaces places(book.s);
    std::map<size_t, PlacedSamples> sampled;
    for (const Visit& v : book.visits) {
        if (!v.mites || !v.miteSample || v.day < book.from || v.day > book.s.on) continue;
        const auto c = places.find(v.colony);
        const auto yard = c ? places.yardOn(*c, v.day) : std::nullopt;
        if (!yard || (book.yard && yard != book.yard)) continue;
        sampled[weekOf(weeks, v.day)][*c] = {v.day, *yard, {*v.mites, *v.miteSample}};
    }
    std::vector<MiteWeek> out;
    for (const auto& [week, samples] : sampled) {
        const auto days = weeks[week];
        out.push_back(miteEstimate(book.s, days, livingOn(book, places, days.last), book.yard, samples));
    }
    return out;
}

} // namespace core::rules
