#include "core/rules/facts.h"

#include "core/rules/queen.h"
#include "core/rules/strength.h"

// Rule 4.0: which observations are still valid on the day.

namespace core::rules {

namespace {

/// By living colony: the day of its latest union (as host) or divide (either part).
std::vector<std::optional<Day>> freshStarts(const Snapshot& s) {
    std::vector<std::optional<Day>> out(s.livingCount());
    const auto mark = [&](ColonyIx colony, Day day) {
        const auto i = static_cast<size_t>(colony.value);
        if (i < out.size() && (!out[i] || *out[i] < day)) out[i] = day;
    };
    for (const SnapLineage& row : s.lineage) {
        if (row.how == LineageHow::ShakenOut) continue;
        mark(row.into, row.day);
        if (row.how == LineageHow::Divided) mark(row.colony, row.day);
    }
    return out;
}

/// The observation while it is valid; nullptr else.
template <class T> const T* valid(const std::optional<T>& seen, std::optional<Day> freshStart) {
    return seen && (!freshStart || seen->day > *freshStart) ? &*seen : nullptr;
}

void addStrength(ColonyFacts& f, const SnapCount* count, const Snapshot& s) {
    const Strength strength = strengthOn(s.on, count, s.settings);
    f.strength = strength.quarters;
    f.noStrength = strength.why;
    f.lastCount = strength.counted;
    f.lowerBees = strength.lower;
    f.upperBees = strength.upper;
    if (count) f.counted = count->day;
    if (f.strength) f.strengthClass = classOf(*f.strength, s.settings);
}

void addWeightAndStores(ColonyFacts& f, const SnapLatest& latest, const Snapshot& s) {
    const auto young = [&](Day day) { return s.on - day <= s.settings.weighMaxAgeDays; };
    if (const auto* weight = valid(latest.weight, f.freshStart); weight && weight->supers == 0 && young(weight->day)) {
        f.gross = weight->gross;
        f.weighed = weight->day;
    }
    if (const auto* stores = valid(latest.stores, f.freshStart); stores && young(stores->day)) {
        f.stores = stores->stores;
        f.storesDay = stores->day;
        f.upperStores = stores->upper;
    }
}

ColonyFacts factsOf(const Snapshot& s, ColonyIx colony, std::optional<Day> freshStart) {
    const SnapLatest& latest = s.latestOf(colony);
    ColonyFacts f;
    f.colony = colony;
    if (const SnapStay* place = s.placeOf(colony)) f.yard = place->yard;
    f.freshStart = freshStart;
    f.boxes = latest.boxes;
    addStrength(f, valid(latest.count, freshStart), s);
    const QueenNote noted = latestQueen(latest.queen, freshStart);
    f.queenNoted = noted.queen;
    f.queenDay = noted.day;
    f.queen = queenOn(s.on, noted, s.settings);
    f.lacksQueen = lacksQueen(f.queen);
    f.layingWorkers = f.queen == QueenSeen::LayingWorkers;
    addWeightAndStores(f, latest, s);
    if (const auto* brood = valid(latest.brood, freshStart)) {
        f.broodFrames = brood->broodFrames;
        f.broodDay = brood->day;
    }
    if (const auto* mites = valid(latest.mites, freshStart)) f.mites = *mites;
    return f;
}

} // namespace

std::vector<ColonyFacts> colonyFacts(const Snapshot& s) {
    const auto starts = freshStarts(s);
    std::vector<ColonyFacts> out;
    out.reserve(starts.size());
    for (size_t i = 0; i < starts.size(); ++i) out.push_back(factsOf(s, ColonyIx{static_cast<qint32>(i)}, starts[i]));
    return out;
}

} // namespace core::rules
