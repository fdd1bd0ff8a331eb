#pragma once

#include "core/pairing/tour.h"

#include <cstdint>
#include <vector>

namespace core::pairing {

/// The straight distances between the places of a tour: place 0 is the depot, place i + 1 the stop i.
/// In whole nanometres, so that sums are exact, ties are ties, and a walk is as long backwards as forwards.
class Legs {
public:
    Legs(Point depot, const std::vector<Point>& stops);

    int places() const { return m_places; }
    std::int64_t between(int a, int b) const { return from(a)[b]; }
    /// The legs from `a`, by place.
    const std::int64_t* from(int a) const {
        return m_length.data() + static_cast<std::size_t>(a) * static_cast<std::size_t>(m_places);
    }
    /// Of a closed walk that starts anywhere and visits each place once.
    std::int64_t around(const std::vector<int>& walk) const;

private:
    int m_places;
    std::vector<std::int64_t> m_length;
};

/// The shortest closed walk, from place 0, by dynamic programming over subsets: O(2^n · n²) for n stops.
std::vector<int> shortestWalk(const Legs& legs);

/// A short closed walk, from place 0: the best of kSearchStarts starts, each led to where neither 2-opt nor or-opt
/// shortens it. Needs 3 stops or more.
std::vector<int> shortWalk(const Legs& legs);

} // namespace core::pairing
