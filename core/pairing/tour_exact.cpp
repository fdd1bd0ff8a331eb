#include "core/pairing/legs.h"

#include <algorithm>
#include <cassert>
#include <limits>

namespace core::pairing {
namespace {

constexpr std::int64_t kUnreached = std::numeric_limits<std::int64_t>::max() / 2;

/// best(set, last): the shortest way from the depot through all stops of `set`, ending at its stop `last`.
class Subsets {
public:
    explicit Subsets(const Legs& legs)
        : m_legs(legs),
          m_stops(static_cast<std::size_t>(legs.places() - 1)),
          m_best((std::size_t{1} << m_stops) * m_stops, kUnreached) {
        for (std::size_t stop = 0; stop < m_stops; ++stop) {
            best(std::size_t{1} << stop, stop) = fromDepot(stop);
        }
        for (std::size_t set = 1; set < std::size_t{1} << m_stops; ++set) {
            extend(set);
        }
    }

    /// Read backwards from the depot: of equal predecessors the first.
    std::vector<int> walk() {
        std::vector<int> backwards;
        std::size_t set = (std::size_t{1} << m_stops) - 1;
        std::size_t next = m_stops; // the depot
        while (set != 0) {
            const std::size_t last = bestLast(set, next);
            backwards.push_back(static_cast<int>(last) + 1);
            set ^= std::size_t{1} << last;
            next = last;
        }
        std::vector<int> walk{0};
        walk.insert(walk.end(), backwards.rbegin(), backwards.rend());
        return walk;
    }

private:
    std::int64_t& best(std::size_t set, std::size_t last) { return m_best[set * m_stops + last]; }
    std::int64_t fromDepot(std::size_t stop) const { return m_legs.between(0, static_cast<int>(stop) + 1); }
    std::int64_t leg(std::size_t a, std::size_t b) const {
        return m_legs.between(static_cast<int>(a) + 1, static_cast<int>(b) + 1);
    }

    void extend(std::size_t set) {
        m_in.clear();
        m_out.clear();
        for (std::size_t stop = 0; stop < m_stops; ++stop) {
            (set >> stop & 1 ? m_in : m_out).push_back(stop);
        }
        for (const std::size_t next : m_out) {
            const std::int64_t* const legs = m_legs.from(static_cast<int>(next) + 1) + 1;
            std::int64_t shortest = kUnreached;
            for (const std::size_t last : m_in) {
                shortest = std::min(shortest, best(set, last) + legs[last]);
            }
            best(set | std::size_t{1} << next, next) = shortest;
        }
    }

    std::size_t bestLast(std::size_t set, std::size_t next) {
        std::size_t chosen = m_stops;
        std::int64_t shortest = kUnreached;
        for (std::size_t last = 0; last < m_stops; ++last) {
            if (!(set >> last & 1)) {
                continue;
            }
            const std::int64_t length = best(set, last) + (next == m_stops ? fromDepot(last) : leg(last, next));
            if (length < shortest) {
                shortest = length;
                chosen = last;
            }
        }
        assert(chosen < m_stops);
        return chosen;
    }

    const Legs& m_legs;
    std::size_t m_stops;
    std::vector<std::int64_t> m_best;
    std::vector<std::size_t> m_in; ///< of the set at hand
    std::vector<std::size_t> m_out;
};

} // namespace

std::vector<int> shortestWalk(const Legs& legs) { return Subsets(legs).walk(); }

} // namespace core::pairing
