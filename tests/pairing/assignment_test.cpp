#include "core/pairing/assignment.h"

#include "tests/pairing/graphs.h"
#include "tests/pairing/proof.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <utility>

namespace {

using core::pairing::assignGuests;
using core::pairing::Assignment;
using core::pairing::kMaxOffer;
using core::pairing::Offer;
using tests::pairing::expectProved;
using tests::pairing::pick;
using tests::pairing::randomOffers;

/// (guests placed, sum of values), the greatest in this order, by trying all.
std::pair<int, std::int64_t> tryAll(int guest, int guests, const std::vector<Offer>& offers, std::vector<int>& room) {
    if (guest == guests) {
        return {0, 0};
    }
    std::pair<int, std::int64_t> best = tryAll(guest + 1, guests, offers, room);
    for (const Offer& offer : offers) {
        int& left = room[static_cast<std::size_t>(offer.host)];
        if (offer.guest != guest || left == 0) {
            continue;
        }
        --left;
        const auto rest = tryAll(guest + 1, guests, offers, room);
        ++left;
        best = std::max(best, {rest.first + 1, rest.second + offer.value});
    }
    return best;
}

TEST(Assignment, NobodyToPlace) {
    EXPECT_EQ(assignGuests(0, 0, 1, {}).placed, 0);
    EXPECT_EQ(assignGuests(0, 3, 1, {}).placed, 0);
    EXPECT_EQ(assignGuests(2, 0, 1, {}).host, (std::vector<int>{-1, -1}));
    EXPECT_EQ(assignGuests(2, 2, 1, {}).host, (std::vector<int>{-1, -1}));
    EXPECT_EQ(assignGuests(1, 1, 0, {{0, 0, 9}}).host, (std::vector<int>{-1}));
}

// Source: own calculation, by hand: guest 0 would do best at host 0 (100), but guest 1 can go nowhere else.
TEST(Assignment, AsManyAsPossibleComesBeforeTheSum) {
    const std::vector<Offer> offers{{0, 0, 100}, {0, 1, -300}, {1, 0, -200}};
    const Assignment one = assignGuests(2, 2, 1, offers);
    EXPECT_EQ(one.host, (std::vector<int>{1, 0}));
    EXPECT_EQ(one.value, -500);
    const Assignment two = assignGuests(2, 2, 2, offers);
    EXPECT_EQ(two.host, (std::vector<int>{0, 0}));
    EXPECT_EQ(two.value, -100);
}

TEST(Assignment, EqualsTryingAll) {
    int unplaced = 0;
    for (unsigned seed = 0; seed < 2000; ++seed) {
        std::mt19937 random(seed);
        const int guests = pick(random, 0, 6);
        const int hosts = pick(random, 1, 4);
        const int perHost = pick(random, 1, 3);
        const std::vector<Offer> offers = randomOffers(random, guests, hosts);
        const Assignment answer = assignGuests(guests, hosts, perHost, offers);
        std::vector<int> room(static_cast<std::size_t>(hosts), perHost);
        const auto [placed, value] = tryAll(0, guests, offers, room);
        EXPECT_EQ(answer.placed, placed) << "seed " << seed;
        EXPECT_EQ(answer.value, value) << "seed " << seed;
        expectProved(perHost, offers, answer);
        unplaced += guests - placed;
        ASSERT_FALSE(HasFailure()) << "seed " << seed;
    }
    EXPECT_GT(unplaced, 100) << "there is room for all: too easy";
}

TEST(Assignment, IsProvedOnLargerOnes) {
    for (unsigned seed = 0; seed < 30; ++seed) {
        std::mt19937 random(seed);
        const int guests = pick(random, 50, 120);
        const int hosts = pick(random, 20, 60);
        const int perHost = pick(random, 1, 3);
        const std::vector<Offer> offers = randomOffers(random, guests, hosts);
        expectProved(perHost, offers, assignGuests(guests, hosts, perHost, offers));
        ASSERT_FALSE(HasFailure()) << "seed " << seed;
    }
}

TEST(Assignment, TheGreatestOffersDoNotOverflow) {
    std::mt19937 random(1);
    std::vector<Offer> offers = randomOffers(random, 60, 40);
    for (Offer& offer : offers) {
        offer.value = offer.value < 0 ? -kMaxOffer : kMaxOffer;
    }
    expectProved(1, offers, assignGuests(60, 40, 1, offers));
}

TEST(Assignment, TheSameInputGivesTheSameAnswer) {
    for (unsigned seed = 0; seed < 20; ++seed) {
        std::mt19937 random(seed);
        const std::vector<Offer> offers = randomOffers(random, 30, 20);
        EXPECT_EQ(assignGuests(30, 20, 1, offers).host, assignGuests(30, 20, 1, offers).host);
    }
}

} // namespace
