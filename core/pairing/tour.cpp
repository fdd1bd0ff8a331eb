#include "core/pairing/tour.h"

#include "core/pairing/legs.h"

#include <cassert>
#include <cmath>

namespace core::pairing {
namespace {

constexpr double kNanometresPerMm = 1e6;
constexpr std::int64_t kFurthestMm = 1'000'000'000;

std::int64_t nanometres(Point a, Point b) {
    const auto dx = static_cast<double>(a.x - b.x);
    const auto dy = static_cast<double>(a.y - b.y);
    return std::llround(std::sqrt(dx * dx + dy * dy) * kNanometresPerMm);
}

[[maybe_unused]] bool isWithinReach(Point p) { return std::abs(p.x) <= kFurthestMm && std::abs(p.y) <= kFurthestMm; }

} // namespace

Legs::Legs(Point depot, const std::vector<Point>& stops) : m_places(static_cast<int>(stops.size()) + 1) {
    std::vector<Point> place{depot};
    place.insert(place.end(), stops.begin(), stops.end());
    m_length.reserve(place.size() * place.size());
    for (const Point& from : place) {
        assert(isWithinReach(from));
        for (const Point& to : place) {
            m_length.push_back(nanometres(from, to));
        }
    }
}

std::int64_t Legs::around(const std::vector<int>& walk) const {
    std::int64_t sum = walk.empty() ? 0 : between(walk.back(), walk.front());
    for (std::size_t i = 1; i < walk.size(); ++i) {
        sum += between(walk[i - 1], walk[i]);
    }
    return sum;
}

Tour closedTour(Point depot, const std::vector<Point>& stops) {
    const Legs legs(depot, stops);
    Tour tour;
    tour.shortest = stops.size() <= static_cast<std::size_t>(kExactStops);
    const std::vector<int> walk = tour.shortest ? shortestWalk(legs) : shortWalk(legs);
    for (std::size_t i = 1; i < walk.size(); ++i) {
        tour.order.push_back(walk[i] - 1);
    }
    tour.lengthMm = static_cast<double>(legs.around(walk)) / kNanometresPerMm;
    return tour;
}

} // namespace core::pairing
