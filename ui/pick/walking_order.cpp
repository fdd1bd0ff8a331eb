#include "ui/pick/walking_order.h"

#include "core/rules/work_order.h"

#include <algorithm>

namespace ui::pick {

namespace {

std::vector<core::ColonyId> along(const core::Snapshot& snapshot, core::YardIx yard,
                                  std::vector<core::ColonyIx> those) {
    std::sort(those.begin(), those.end()); // by label
    std::vector<core::MmPoint> stops;
    for (const core::ColonyIx ix : those) stops.push_back(snapshot.placeOf(ix)->at);
    std::vector<core::ColonyId> out;
    for (const size_t i : core::rules::walkRound(snapshot.yard(yard).gate, stops))
        out.push_back(snapshot.colony(those[i]).id);
    return out;
}

} // namespace

std::vector<core::ColonyId> walkingOrder(const desk::Reading& reading, core::YardIx yard,
                                         const std::vector<core::ColonyId>& colonies) {
    std::vector<core::ColonyIx> those;
    for (const core::ColonyId colony : colonies)
        if (const auto ix = reading.find(colony); ix && reading.factsOf(*ix).yard == yard) those.push_back(*ix);
    return along(reading.snapshot, yard, std::move(those));
}

std::vector<core::ColonyId> walkingOrder(const core::Snapshot& snapshot, core::YardIx yard) {
    std::vector<core::ColonyIx> those;
    for (qint32 i = 0; i < static_cast<qint32>(snapshot.colonies.size()); ++i) {
        const core::ColonyIx ix{i};
        const core::SnapStay* stay = snapshot.colony(ix).living() ? snapshot.placeOf(ix) : nullptr;
        if (stay && stay->yard == yard) those.push_back(ix);
    }
    return along(snapshot, yard, std::move(those));
}

} // namespace ui::pick
