#include "core/pairing/legs.h"

#include <cassert>
#include <limits>

namespace core::pairing {
namespace {

constexpr std::int64_t kUnreached = std::numeric_limits<std::int64_t>::max() / 2;

/// best(set, last): the shortest way from the depot through all stops of `set`, ending at its stop `last`.
class Subsets {
public:
    explicit Subsets(const Legs& legs)
        : m_legs(legs), m_stops(static_cast<std::size_t>(legs.places() - 1)),
          m_best((std::size_t{1} << m_stops) * m_stops, kUnreached) {
        for (std::size_t stop = 0; stop < m_stops; ++stop) { best(std::size_t{1} << stop, stop) = fromDepot(stop); }
        for (std::size_t set = 1; set < std::size_t{1} << m_stops; ++set) { extend(set); }
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
        for (std::size_t last = 0; last < m_stops; ++last) {
            if (!(set >> last & 1)) { continue; }
            const std::int64_t soFar = best(set, last);
            for (std::size_t next = 0; next < m_stops; ++next) {
                if (set >> next & 1) { continue; }
                std::int64_t& known = best(set | std::size_t{1} << next, next);
                const std::int64_t length = soFar + leg(last, next);
                if (length < known) { known = length; }
            }
        }
    }

    std::size_t bestLast(std::size_t set, std::size_t next) {
        std::size_t chosen = m_stops;
        std::int64_t shortest = kUnreached;
        for (std::size_t last = 0; last < m_stops; ++last) {
            if (!(set >> last & 1)) { continue; }
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
};

} // namespace

std::vector<int> shortestWalk(const Legs& legs) { return Subsets(legs).walk(); }

} // namespace core::pairing
