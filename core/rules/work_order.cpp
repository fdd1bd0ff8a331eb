#include "core/rules/work_order.h"

#include "core/pairing/tour.h"

#include <algorithm>
#include <span>

namespace core::rules {

namespace {

/// `unions` are of one yard, by host.
void orderYard(MmPoint gate, std::span<Union> unions) {
    std::vector<pairing::Point> stops;
    for (const Union& u : unions) stops.push_back({u.to.x, u.to.y});
    std::vector<int> walk = pairing::closedTour({gate.x, gate.y}, stops).order;
    // Stops are by host, so the smaller index comes first in natural order.
    if (walk.front() > walk.back()) std::reverse(walk.begin(), walk.end());
    for (size_t i = 0; i < walk.size(); ++i) unions[static_cast<size_t>(walk[i])].order = static_cast<int>(i) + 1;
    std::sort(unions.begin(), unions.end(), [](const Union& a, const Union& b) { return a.order < b.order; });
}

} // namespace

void orderWork(const DayView& view, std::vector<Union>& unions) {
    std::sort(unions.begin(), unions.end(),
              [](const Union& a, const Union& b) { return a.yard != b.yard ? a.yard < b.yard : a.host < b.host; });
    for (auto first = unions.begin(); first != unions.end();) {
        const auto last = std::find_if(first, unions.end(), [&](const Union& u) { return u.yard != first->yard; });
        orderYard(view.s.yard(first->yard).gate, {first, last});
        first = last;
    }
}

} // namespace core::rules
