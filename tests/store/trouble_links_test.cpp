#include "core/store/trouble_links.h"
#include "tests/store/test_book.h"

#include <gtest/gtest.h>

using namespace core;
using namespace core::store;

namespace {

class TroubleLinks : public testing::Test {
protected:
    bool linked(const Colony& colony, int most = 1000) { return troubleLinked(book.db(), {colony.id}, {}, most); }
    bool linked(const Yard& yard) { return troubleLinked(book.db(), {}, {yard.id}, 1000); }
    void give(const Colony& from, const Colony& to) {
        book.add(Transfer{{}, day("2026-06-01"), from.id, to.id, TransferKind::Feed, {}, {}});
    }
    void sign(const Colony& colony, Sign sign) {
        Visit v;
        v.colony = colony.id;
        v.day = day("2026-06-02");
        v.signs.add(sign);
        book.visit(v);
    }
    void result(std::optional<ColonyId> colony, std::optional<YardId> yard, Verdict verdict) {
        book.add(Result{{}, colony, yard, day("2026-06-02"), Disease::Afb, verdict, Method::Inspector, "x", "1", {}});
    }

    TestBook book;
    Yard a = book.yard("A");
    Yard b = book.yard("B");
    Yard c = book.yard("C");
    Colony a1 = book.colony(a, "1", day("2026-05-01"));
    Colony a2 = book.colony(a, "2", day("2026-05-01"));
    Colony b1 = book.colony(b, "3", day("2026-05-01"));
    Colony c1 = book.colony(c, "4", day("2026-05-01"));
};

TEST_F(TroubleLinks, AreNoneWhereThereIsNoTrouble) {
    give(a1, b1);
    sign(a1, Sign::Chalkbrood);
    result(a1.id, {}, Verdict::Negative);
    EXPECT_FALSE(linked(a1));
    EXPECT_FALSE(linked(b));
}

TEST_F(TroubleLinks, LeadAlongGiftsEitherWayAndThroughSharedYards) {
    sign(a1, Sign::BroodDoubt);
    EXPECT_TRUE(linked(a1));
    EXPECT_TRUE(linked(a2)) << "of its yard";
    EXPECT_TRUE(linked(a));
    EXPECT_FALSE(linked(b1));
    EXPECT_FALSE(linked(b));
    give(b1, a2);
    EXPECT_TRUE(linked(b1));
    EXPECT_TRUE(linked(b));
    EXPECT_FALSE(linked(c1));
    book.add(Lineage{{}, day("2026-06-01"), LineageHow::Divided, b1.id, c1.id, {}, {}});
    EXPECT_TRUE(linked(c1));
}

TEST_F(TroubleLinks, LeadThroughAYardThatAHiveHasLeft) {
    result(a1.id, {}, Verdict::Positive);
    book.carry(b1, book.stand(a, "x"), day("2026-05-10"));
    book.carry(b1, book.stand(b, "y"), day("2026-05-11"));
    EXPECT_TRUE(linked(b1));
    EXPECT_FALSE(linked(c1));
}

TEST_F(TroubleLinks, LeadToAnOrderOfAYard) {
    result({}, b.id, Verdict::Order);
    EXPECT_TRUE(linked(b1));
    EXPECT_TRUE(linked(b));
    EXPECT_FALSE(linked(a1));
}

TEST_F(TroubleLinks, AreTakenToBeWhereTheyAreTooManyToFollow) {
    EXPECT_FALSE(linked(a1, 2));
    EXPECT_TRUE(linked(a1, 1)) << "two colonies stand in its yard";
}

} // namespace
