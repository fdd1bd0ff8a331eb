#include "core/rules/colony_over_time.h"

#include "core/rules/calc/mites.h"
#include "core/rules/strength.h"

#include <algorithm>

namespace core::rules {

std::vector<int> boxesOverTime(const Colony& colony, std::span<const Visit> visits, std::span<const Lineage> lineage) {
    std::vector<Day> unions;
    for (const Lineage& l : lineage)
        if (l.how == LineageHow::United && l.into == colony.id) unions.push_back(l.day);
    std::ranges::sort(unions);
    std::vector<int> out;
    out.reserve(visits.size());
    size_t next = 0;
    int boxes = colony.broodBoxes;
    for (const Visit& v : visits) {
        while (next < unions.size() && unions[next] < v.day) ++next, boxes = 2;
        if (v.boxes) boxes = *v.boxes;
        if (next < unions.size() && unions[next] == v.day) ++next, boxes = 2; // at a tie the union
        out.push_back(boxes);
    }
    return out;
}

std::vector<StrengthThen> strengthOverTime(std::span<const Visit> visits, std::span<const int> boxes,
                                           const Settings& settings) {
    std::vector<StrengthThen> out;
    for (size_t i = 0; i < visits.size(); ++i) {
        const Visit& v = visits[i];
        if (!v.beesTop && !v.beesBottom && !v.upperBeesTop && !v.upperBeesBottom) continue;
        SnapCount count;
        count.day = v.day;
        count.top = v.beesTop;
        count.bottom = v.beesBottom;
        count.upperTop = v.upperBeesTop;
        count.upperBottom = v.upperBeesBottom;
        count.boxes = boxes[i];
        const Strength s = strengthOn(v.day, &count, settings);
        out.push_back({v.day, boxes[i], s.counted, s.lower, s.upper});
    }
    return out;
}

std::vector<StoresThen> storesOverTime(std::span<const Visit> visits, std::span<const int> boxes) {
    std::vector<StoresThen> out;
    for (size_t i = 0; i < visits.size(); ++i) {
        const Visit& v = visits[i];
        if (!v.stores && !v.upperStores) continue;
        StoresThen then{v.day, v.stores, boxes[i] == 2 ? v.upperStores : std::nullopt, {}};
        if (then.lower && (boxes[i] == 1 || then.upper)) then.all = *then.lower + then.upper.value_or(Quarters{});
        out.push_back(then);
    }
    return out;
}

std::vector<WeightThen> weightOverTime(std::span<const Visit> visits) {
    std::vector<WeightThen> out;
    for (const Visit& v : visits)
        if (v.gross) out.push_back({v.day, *v.gross, v.supers.value_or(0)});
    return out;
}

std::vector<MitesThen> mitesOverTime(std::span<const Visit> visits) {
    std::vector<MitesThen> out;
    for (const Visit& v : visits) {
        if (!v.mites || v.miteSample.value_or(0) < 1) continue;
        const calc::MiteSample sample{*v.mites, *v.miteSample};
        out.push_back({v.day, sample.mites, sample.bees, calc::mitesPerHundred(sample), calc::mitesInterval(sample)});
    }
    return out;
}

std::vector<QueenThen> queenOverTime(std::span<const Visit> visits) {
    std::vector<QueenThen> out;
    for (const Visit& v : visits)
        if (v.queen) out.push_back({v.day, *v.queen});
    return out;
}

} // namespace core::rules
