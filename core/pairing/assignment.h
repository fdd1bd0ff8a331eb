#pragma once

#include <cstdint>
#include <vector>

namespace core::pairing {

/// A guest that may go to a host. Guests and hosts are counted from 0, each by itself.
struct Offer {
    int guest;
    int host;
    std::int64_t value; ///< any sign, magnitude at most kMaxOffer
};

constexpr std::int64_t kMaxOffer = std::int64_t{1} << 24;

/// Who goes where, and the duals that prove that no more guests can be placed, and none better:
///  - guestDual and hostDual are ≥ 0;
///  - guestDual[g] + hostDual[h] ≥ value + bonus for each offer, with equality for each one taken;
///  - Σ guestDual + perHost · Σ hostDual = value + bonus · placed.
/// `bonus` is worth more than any difference in value that placing one guest more can make.
struct Assignment {
    std::vector<int> host;  ///< by guest: its host, or -1 where it finds none
    int placed = 0;         ///< guests that have a host
    std::int64_t value = 0; ///< sum of the offers taken
    std::int64_t bonus = 0;
    std::vector<std::int64_t> guestDual;
    std::vector<std::int64_t> hostDual;
};

/// As many guests as possible placed, each host taking at most `perHost` (≥ 0); among those, the greatest sum of
/// values. The same offers in the same order give the same answer. At most 100,000 guests and hosts together.
Assignment assignGuests(int guests, int hosts, int perHost, const std::vector<Offer>& offers);

} // namespace core::pairing
