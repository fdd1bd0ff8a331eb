#include "core/rules/afb_state.h"

#include <algorithm>

namespace core::rules {

namespace {

constexpr Day kNever{INT32_MIN};

Day latest(const DaysBy& days, ColonyIx colony) {
    const auto all = days.of(colony.value);
    return all.empty() ? kNever : all.back();
}

Day lastDay(const Evidence& evidence, ColonyIx colony) {
    const SnapColony& c = evidence.s.colony(colony);
    if (c.living()) return evidence.s.on;
    Day last =
        std::max({*c.ended, latest(evidence.findings.signs, colony), latest(evidence.findings.positives, colony)});
    const auto given = evidence.gifts.from(colony);
    if (c.end != EndKind::United && !given.empty()) last = std::max(last, given.back().day);
    return last;
}

} // namespace

AfbState afbState(const Evidence& evidence, ColonyIx colony) {
    const Findings& f = evidence.findings;
    const Day release = latest(f.releases, colony);
    const Day positive = latest(f.positives, colony);
    const Day sign = latest(f.signs, colony);
    if (positive != kNever && positive >= release) return AfbState::Confirmed;
    const bool open = sign != kNever && sign >= release && sign > latest(f.negatives, colony);
    return open ? AfbState::Suspected : AfbState::Clear;
}

std::vector<AfbSource> afbSources(const Evidence& evidence) {
    std::vector<AfbSource> out;
    for (size_t i = 0; i < evidence.s.colonies.size(); ++i) {
        const ColonyIx colony{static_cast<qint32>(i)};
        if (afbState(evidence, colony) == AfbState::Clear) continue;
        const SnapStay* place = evidence.s.placeOf(colony);
        if (place) out.push_back({colony, place->yard, lastDay(evidence, colony)});
    }
    return out;
}

} // namespace core::rules
