#pragma once

#include <cstdint>
#include <vector>

namespace core::pairing {

/// Millimetres; each coordinate within ±1e9.
struct Point {
    std::int64_t x;
    std::int64_t y;
};

/// A closed walk depot → stops → depot.
struct Tour {
    std::vector<int> order; ///< indices into the stops, each once, in walking order
    double lengthMm = 0;
    bool shortest = true; ///< false: found by search, short but not proved the shortest
};

/// Up to so many stops the tour is the shortest.
constexpr int kExactStops = 12;

/// The shortest closed walk for up to kExactStops stops; beyond, the best of kSearchStarts starts of 2-opt and or-opt.
/// Points may coincide. The direction is arbitrary: the caller chooses. The same points give the same tour on any
/// machine.
Tour closedTour(Point depot, const std::vector<Point>& stops);

constexpr int kSearchStarts = 24;

} // namespace core::pairing
