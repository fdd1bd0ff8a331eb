#include "core/rules/near_sources.h"

#include "core/rules/drift.h"
#include "core/rules/hold_sources.h"
#include "core/rules/nearby.h"

#include <algorithm>
#include <tuple>

namespace core::rules {

namespace {

bool located(const SnapYard& yard) { return yard.latitudeDeg && yard.longitudeDeg; }

/// Living hives by yard.
std::vector<int> hivesOf(const Snapshot& s) {
    std::vector<int> hives(s.yards.size());
    for (size_t i = 0; i < s.livingCount(); ++i)
        if (const SnapStay* place = s.placeOf({static_cast<qint32>(i)}))
            ++hives[static_cast<size_t>(place->yard.value)];
    return hives;
}

void addYards(const Snapshot& s, const std::vector<int>& hives, NearSource& out) {
    const SnapYard& there = s.yard(out.yard);
    for (size_t i = 0; i < s.yards.size(); ++i) {
        const YardIx yard{static_cast<qint32>(i)};
        if (yard == out.yard || hives[i] == 0) continue;
        if (!located(there) || !located(s.yards[i])) {
            out.unknown.push_back(yard);
            continue;
        }
        const double metres = metresBetween(s.yards[i], there);
        const bool near = metres <= s.settings.afbNearM.real();
        const bool robbing = metres <= s.settings.afbRobM.real();
        if (near || robbing) out.yards.push_back({yard, hives[i], metres, near, robbing});
    }
    std::ranges::stable_sort(out.yards, {}, &NearYard::metres);
}

void addHives(const Snapshot& s, NearSource& out) {
    for (size_t i = 0; i < s.livingCount(); ++i) {
        const ColonyIx colony{static_cast<qint32>(i)};
        const SnapStay* place = s.placeOf(colony);
        if (!place || colony == out.source || place->yard != out.yard) continue;
        if (withinDrift(s.settings, out.at, place->at)) out.hives.push_back({colony, place->at});
    }
    std::ranges::stable_sort(out.hives, {}, [&](const NearHive& h) { return squaredDistance(out.at, h.at); });
}

} // namespace

std::vector<NearSource> nearSources(const Evidence& evidence) {
    const Snapshot& s = evidence.s;
    std::vector<NearSource> out;
    std::vector<int> hives;
    for (const Source& source : sourcesOf(evidence)) {
        const SnapStay* place = s.placeOf(source.colony);
        if (source.past || !place || s.on - source.last > evidence.limits.afbYardAfterDays) continue;
        if (hives.empty()) hives = hivesOf(s);
        NearSource found{source.colony, source.confirmed, source.last, place->yard, place->at, {}, {}, {}};
        addYards(s, hives, found);
        addHives(s, found);
        out.push_back(std::move(found));
    }
    std::ranges::stable_sort(out, {}, [](const NearSource& n) { return std::tuple(n.yard, n.source); });
    return out;
}

} // namespace core::rules
