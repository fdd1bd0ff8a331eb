#include "tests/rules/plan_book.h"

#include <gtest/gtest.h>

#include <QStringList>

// Rule 4.9. Source of the figures: own calculation from the rules' text and the table of 4.6.

namespace {

using namespace core;
using namespace core::rules;
using namespace tests::rules;

QString shakenOut(const PlanBook& book, const QString& day = kFall) {
    const Snapshot s = book.on(day);
    QStringList out;
    for (const ShakeOut& shaken : advise(s, {}).shakeOuts)
        out += s.colony(shaken.colony).label + '>' + s.colony(shaken.into).label;
    return out.join(' ');
}

std::optional<Unresolved> unresolved(const PlanBook& book, const QString& label, const QString& day = kFall) {
    const Snapshot s = book.on(day);
    for (const UnresolvedColony& u : advise(s, {}).unresolved)
        if (s.colony(u.colony).label == label) return u.why;
    return std::nullopt;
}

TEST(ShakeOuts, ASmallColonyGoesToAHostOfItsYard) {
    EXPECT_EQ(shakenOut(PlanBook().colony("A").colony("B").bees("A", "2").bees("B", "6")), "A>B");
    EXPECT_EQ(shakenOut(PlanBook().colony("A").colony("B").bees("A", "2.25").bees("B", "8")), "");
}

TEST(ShakeOuts, OutOfSeasonTheClassTakesNoPart) {
    PlanBook book;
    book.colony("A").colony("B");
    for (const char* c : {"A", "B"})
        book.visit(c, "2026-07-20", {{"bees_top", *c == 'A' ? "2" : "6"}, {"queen", "eggs"}});
    EXPECT_EQ(shakenOut(book, "2026-08-19"), "");
    const Plan plan = book.plan("2026-08-19");
    ASSERT_EQ(plan.alone.size(), 2U);
    EXPECT_TRUE(plan.alone[0].atRisk);
    EXPECT_EQ(plan.alone[0].strengthClass, StrengthClass::ShakeOut);
    book.set("season.fall_start", "08-19");
    EXPECT_EQ(shakenOut(book, "2026-08-19"), "A>B");
}

TEST(ShakeOuts, NoHostIsHeldOrWithoutAQueenOrTooSmall) {
    const auto withHost = [](Cells cells, const char* frames) {
        return PlanBook().colony("A").colony("B").bees("A", "2").bees("B", frames, cells);
    };
    EXPECT_EQ(shakenOut(withHost({}, "2.25")), "A>B");
    EXPECT_EQ(shakenOut(withHost({{"queen", "virgin"}}, "5")), "A>B");
    EXPECT_EQ(shakenOut(withHost({{"queen", "none"}}, "5")), "");
    EXPECT_EQ(shakenOut(withHost({{"queen", "laying-workers"}}, "5")), "");
    EXPECT_EQ(shakenOut(withHost({}, "2")), "");
    EXPECT_EQ(shakenOut(PlanBook().colony("A").unchecked("B").bees("A", "2").bees("B", "5")), "");
    EXPECT_EQ(unresolved(withHost({}, "2"), "A"), Unresolved::NoHost);
}

TEST(ShakeOuts, OneWithoutAQueenIsShakenOutTooAndElseHasNoHost) {
    PlanBook book;
    book.colony("A").colony("B").bees("A", "2", {{"queen", "none"}}).bees("B", "5");
    const Plan plan = book.plan(kFall);
    ASSERT_EQ(plan.shakeOuts.size(), 1U);
    EXPECT_FALSE(plan.shakeOuts[0].removeQueen);
    EXPECT_EQ(unresolved(PlanBook().colony("A").bees("A", "2", {{"queen", "none"}}), "A"), Unresolved::NoHost);
    EXPECT_EQ(unresolved(PlanBook().colony("A").bees("A", "3", {{"queen", "none"}}), "A"), Unresolved::NoPartner);
}

TEST(ShakeOuts, ALayingWorkerColonyIsNotShakenOut) {
    PlanBook book;
    book.colony("A").colony("B").bees("A", "2", {{"queen", "laying-workers"}}).bees("B", "5");
    EXPECT_EQ(shakenOut(book), "");
    EXPECT_EQ(book.plan(kFall).separate.size(), 1U);
}

TEST(ShakeOuts, EachHostTakesOneOrAsManyAsTheSettingSays) {
    PlanBook book;
    book.colony("A").colony("B").colony("C").bees("A", "1").bees("B", "1").bees("C", "9");
    EXPECT_EQ(shakenOut(book), "B>C"); // both add the same, and B is the nearer
    EXPECT_EQ(shakenOut(PlanBook(book).set("shake.per_host", "2")), "A>C B>C");
    EXPECT_EQ(shakenOut(PlanBook(book).set("shake.per_host", "0")), "");
}

// As many as possible first: C could take A (+398 at 6 frames), but then B, which only C can reach for less than a
// loss, would still go to D. Source: own calculation.
TEST(ShakeOuts, AsManyAsPossibleBeforeTheGreatestSum) {
    PlanBook book;
    book.colony("A", {{"x_m", "0"}})
        .colony("B", {{"x_m", "1"}})
        .colony("C", {{"x_m", "2"}})
        .colony("D", {{"x_m", "3000"}});
    book.bees("A", "1").bees("B", "1").bees("C", "6").bees("D", "6");
    // C takes one, D the other, though its 3 km cost more than it adds.
    const QString got = shakenOut(book);
    EXPECT_TRUE(got == "A>C B>D" || got == "A>D B>C") << got.toStdString();
    EXPECT_EQ(got, "A>C B>D"); // 3000 − 2999: B is the nearer to D
}

TEST(ShakeOuts, AUnionIsOneHostAndLeftInPeaceWhereAnotherWillDo) {
    PlanBook book;
    book.colony("A", {{"x_m", "0"}})
        .colony("B", {{"x_m", "1"}})
        .colony("C", {{"x_m", "2"}})
        .bees("A", "1")
        .bees("B", "3")
        .bees("C", "3");
    EXPECT_EQ(unionsOf(book.on(kFall), book.plan(kFall)), "C>B");
    EXPECT_EQ(shakenOut(book), "A>B");
    EXPECT_TRUE(book.plan(kFall).shakeOuts[0].intoUnion);
    // 6 frames take 1: +398 − 200 for the union; D, strong, +136 (E(9) 1720 − E(8) 1584), less what it is away.
    book.colony("D", {{"x_m", "0"}, {"y_m", "2"}}).bees("D", "8");
    EXPECT_EQ(shakenOut(book), "A>B"); // 398 − 200 − 1 = 197 against 134
}

// The union's A>B is worth 398 − 200 − 1 = 197; E, of another kind, takes one at 7 frames for 436 less its carry.
// Source: own calculation.
TEST(ShakeOuts, AUnionIsLeftInPeaceForExactly200) {
    const auto with = [](const char* metres) {
        PlanBook book;
        book.colony("A", {{"x_m", "0"}}).colony("B", {{"x_m", "1"}}).colony("C", {{"x_m", "2"}});
        book.colony("E", {{"x_m", "0"}, {"y_m", metres}, {"box", "national-11"}});
        return shakenOut(book.bees("A", "1").bees("B", "3").bees("C", "3").bees("E", "7"));
    };
    EXPECT_EQ(with("238"), "A>E"); // 198
    EXPECT_EQ(with("240"), "A>B"); // 196
}

TEST(ShakeOuts, IntoAUnionBothHaveTheirCautions) {
    PlanBook book;
    book.colony("A").colony("B").colony("C").bees("A", "1").bees("B", "3", {{"queen", "unknown"}}).bees("C", "3.25");
    const Plan plan = book.plan(kFall);
    ASSERT_EQ(plan.shakeOuts.size(), 1U);
    ASSERT_EQ(plan.shakeOuts[0].cautions.size(), 1U); // B is moved to C, A goes to C: B's caution is there too
    EXPECT_EQ(plan.shakeOuts[0].cautions[0].kind, CautionKind::QueenUnknown);
    EXPECT_TRUE(plan.cautions.empty());
}

// Source: own calculation. E(6) 750 + E(1) 50 become E(7) 1148.
TEST(ShakeOuts, TotalsCountThemOut) {
    PlanBook book;
    book.colony("A", {{"brood_boxes", "2"}}).colony("B").bees("A", "0.5", {{"upper_bees_top", "0.5"}}).bees("B", "6");
    const Totals totals = book.plan(kFall).totals;
    EXPECT_EQ(totals.expectedAsIs, 800);
    EXPECT_EQ(totals.expectedPlanned, 1148);
    EXPECT_EQ(totals.boxesFreed, 2);
    EXPECT_EQ(totals.shakeOuts, 1);
}

} // namespace
