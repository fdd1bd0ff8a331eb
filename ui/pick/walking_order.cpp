#include "ui/pick/walking_order.h"

#include "core/rules/work_order.h"

#include <algorithm>

namespace ui::pick {

std::vector<core::ColonyId> walkingOrder(const desk::Reading& reading, core::YardIx yard,
                                         const std::vector<core::ColonyId>& colonies) {
    std::vector<core::ColonyIx> those;
    for (const core::ColonyId colony : colonies)
        if (const auto ix = reading.find(colony); ix && reading.factsOf(*ix).yard == yard) those.push_back(*ix);
    std::sort(those.begin(), those.end()); // by label
    std::vector<core::MmPoint> stops;
    for (const core::ColonyIx ix : those) stops.push_back(reading.snapshot.placeOf(ix)->at);
    std::vector<core::ColonyId> out;
    for (const size_t i : core::rules::walkRound(reading.snapshot.yard(yard).gate, stops))
        out.push_back(reading.snapshot.colony(those[i]).id);
    return out;
}

} // namespace ui::pick
