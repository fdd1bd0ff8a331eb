#include "core/pairing/legs.h"

#include <algorithm>
#include <array>
#include <numeric>
#include <random>
#include <utility>

namespace core::pairing {
namespace {

constexpr int kLongestSegment = 3; ///< places that or-opt moves together
constexpr std::uint32_t kSeed = 20'260'701;

/// A closed walk that is only ever made shorter. The lengths are whole numbers, so this ends.
class Walk {
public:
    Walk(const Legs& legs, std::vector<int> walk) : m_legs(legs), m_walk(std::move(walk)) {}

    void shorten() {
        bool shorter = true;
        while (shorter) {
            shorter = uncross();
            shorter = moveSegments() || shorter;
        }
    }
    const std::vector<int>& places() const { return m_walk; }

private:
    using Offset = std::vector<int>::difference_type;

    std::int64_t leg(std::size_t i, std::size_t j) const { return m_legs.between(m_walk[i], m_walk[j]); }

    /// 2-opt: two legs are replaced by the two that reverse what lies between them.
    bool uncross() {
        const std::size_t n = m_walk.size();
        bool shorter = false;
        for (std::size_t i = 0; i + 2 < n; ++i) {
            for (std::size_t j = i + 2; j < n; ++j) {
                const std::size_t after = j + 1 == n ? 0 : j + 1;
                if (leg(i, j) + leg(i + 1, after) >= leg(i, i + 1) + leg(j, after)) {
                    continue;
                }
                std::reverse(m_walk.begin() + static_cast<Offset>(i) + 1, m_walk.begin() + static_cast<Offset>(j) + 1);
                shorter = true;
            }
        }
        return shorter;
    }

    /// Or-opt: each run of up to kLongestSegment places is brought to the front in turn, and moved to where it costs
    /// least.
    bool moveSegments() {
        bool shorter = false;
        for (std::size_t turn = 0; turn < m_walk.size(); ++turn) {
            std::rotate(m_walk.begin(), m_walk.begin() + 1, m_walk.end());
            for (std::size_t length = 1; length <= kLongestSegment; ++length) {
                shorter = moveFront(length) || shorter;
            }
        }
        return shorter;
    }

    bool moveFront(std::size_t length) {
        const std::size_t n = m_walk.size();
        const std::size_t end = length - 1;
        const std::int64_t gain = leg(n - 1, 0) + leg(end, length) - leg(n - 1, length);
        std::int64_t cheapest = gain;
        std::size_t after = 0;
        bool turned = false;
        const std::int64_t* const fromFirst = m_legs.from(m_walk[0]);
        const std::int64_t* const fromLast = m_legs.from(m_walk[end]);
        for (std::size_t i = length; i + 1 < n; ++i) {
            const int before = m_walk[i];
            const int next = m_walk[i + 1];
            const std::int64_t broken = m_legs.between(before, next);
            const std::int64_t asItIs = fromFirst[before] + fromLast[next] - broken;
            const std::int64_t reversed = fromLast[before] + fromFirst[next] - broken;
            if (std::min(asItIs, reversed) >= cheapest) {
                continue;
            }
            cheapest = std::min(asItIs, reversed);
            after = i;
            turned = reversed < asItIs;
        }
        if (cheapest == gain) {
            return false;
        }
        const auto front = m_walk.begin() + static_cast<Offset>(length);
        if (turned) {
            std::reverse(m_walk.begin(), front);
        }
        std::rotate(m_walk.begin(), front, m_walk.begin() + static_cast<Offset>(after) + 1);
        return true;
    }

    const Legs& m_legs;
    std::vector<int> m_walk;
};

std::vector<int> allPlaces(const Legs& legs) {
    std::vector<int> places(static_cast<std::size_t>(legs.places()));
    std::iota(places.begin(), places.end(), 0);
    return places;
}

/// From `first` always on to the nearest place left, the lower number at a tie.
std::vector<int> nearestNeighbourWalk(const Legs& legs, int first) {
    std::vector<int> walk = allPlaces(legs);
    std::swap(walk[0], walk[static_cast<std::size_t>(first)]);
    for (auto here = walk.begin(); here + 1 != walk.end(); ++here) {
        const auto nearest = std::min_element(here + 1, walk.end(), [&](int a, int b) {
            return std::make_pair(legs.between(*here, a), a) < std::make_pair(legs.between(*here, b), b);
        });
        std::iter_swap(here + 1, nearest);
    }
    return walk;
}

/// Written out, since what the standard library's shuffle does with the numbers is not laid down.
std::vector<int> shuffledWalk(const Legs& legs, std::mt19937& random) {
    std::vector<int> walk = allPlaces(legs);
    for (std::size_t left = walk.size(); left > 1; --left) {
        std::swap(walk[left - 1], walk[random() % left]);
    }
    return walk;
}

/// The first half of the starts are nearest-neighbour walks from places spread over the list, the depot first; the
/// others are shuffled.
std::vector<int> startingWalk(const Legs& legs, int start, std::mt19937& random) {
    constexpr int kGreedy = kSearchStarts / 2;
    if (start < kGreedy) {
        return nearestNeighbourWalk(legs, start * legs.places() / kGreedy);
    }
    return shuffledWalk(legs, random);
}

} // namespace

std::vector<int> shortWalk(const Legs& legs) {
    std::mt19937 random(kSeed);
    std::vector<int> shortest;
    for (int start = 0; start < kSearchStarts; ++start) {
        Walk walk(legs, startingWalk(legs, start, random));
        walk.shorten();
        if (shortest.empty() || legs.around(walk.places()) < legs.around(shortest)) {
            shortest = walk.places();
        }
    }
    std::rotate(shortest.begin(), std::find(shortest.begin(), shortest.end(), 0), shortest.end());
    return shortest;
}

} // namespace core::pairing
