#include "ui/pick/walking_order.h"

#include "core/pairing/tour.h"

#include <algorithm>

namespace ui::pick {

namespace pairing = core::pairing;

std::vector<core::ColonyId> walkingOrder(const desk::Reading& reading, core::YardIx yard,
                                         const std::vector<core::ColonyId>& colonies) {
    std::vector<core::ColonyIx> those;
    for (const core::ColonyId colony : colonies)
        if (const auto ix = reading.find(colony); ix && reading.factsOf(*ix).yard == yard) those.push_back(*ix);
    std::sort(those.begin(), those.end()); // by label: a smaller one comes first where the way is the same
    std::vector<pairing::Point> stops;
    for (const core::ColonyIx ix : those) {
        const core::MmPoint at = reading.snapshot.placeOf(ix)->at;
        stops.push_back({at.x, at.y});
    }
    if (stops.empty()) return {};
    const core::MmPoint gate = reading.snapshot.yard(yard).gate;
    std::vector<int> walk = pairing::closedTour({gate.x, gate.y}, stops).order;
    if (walk.front() > walk.back()) std::reverse(walk.begin(), walk.end());
    std::vector<core::ColonyId> out;
    for (const int i : walk) out.push_back(reading.snapshot.colony(those[static_cast<size_t>(i)]).id);
    return out;
}

} // namespace ui::pick
