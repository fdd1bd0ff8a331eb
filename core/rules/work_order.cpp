#include "core/rules/work_order.h"

#include "core/pairing/tour.h"

#include <algorithm>
#include <span>

namespace core::rules {

namespace {

/// `unions` are of one yard, by host.
void orderYard(MmPoint gate, std::span<Union> unions) {
    std::vector<MmPoint> stops;
    for (const Union& u : unions) stops.push_back(u.to);
    const std::vector<size_t> walk = walkRound(gate, stops);
    for (size_t i = 0; i < walk.size(); ++i) unions[walk[i]].order = static_cast<int>(i) + 1;
    std::sort(unions.begin(), unions.end(), [](const Union& a, const Union& b) { return a.order < b.order; });
}

} // namespace

std::vector<size_t> walkRound(MmPoint gate, const std::vector<MmPoint>& stops) {
    std::vector<pairing::Point> points;
    for (const MmPoint stop : stops) points.push_back({stop.x, stop.y});
    const std::vector<int> order = pairing::closedTour({gate.x, gate.y}, points).order;
    std::vector<size_t> walk(order.begin(), order.end());
    if (!walk.empty() && walk.front() > walk.back()) std::reverse(walk.begin(), walk.end());
    return walk;
}

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
