#include "core/rules/kit_to_load.h"

#include "core/rules/facts.h"
#include "tests/rules/plan_book.h"

#include <gtest/gtest.h>

// Counts: own calculation, from the plan of each small yard.

namespace {

using namespace core;
using namespace core::rules;
using namespace tests::rules;

KitToLoad kitOf(const PlanBook& book, const QString& day = kFall) {
    const Snapshot s = book.on(day);
    return kitToLoad(s, colonyFacts(s), advise(s, {}), *s.yardNamed(u"Y"));
}

TEST(KitToLoad, AUnionNeedsPaperStrapAndBarrowAndFreesFloorAndLid) {
    const KitToLoad kit = kitOf(PlanBook().colony("A").colony("B").bees("A", "3").bees("B", "5"));
    EXPECT_EQ(kit.unions, 1);
    for (const KitThing one : {KitThing::Newspaper, KitThing::Straps, KitThing::Barrow, KitThing::WaterSpray,
                               KitThing::Smoker, KitThing::Pencil})
        EXPECT_EQ(kit.of(one), 1);
    for (const KitThing none :
         {KitThing::QueenCages, KitThing::Floors, KitThing::Lids, KitThing::Boxes, KitThing::SyrupHalfLitres})
        EXPECT_EQ(kit.of(none), 0);
    EXPECT_EQ(kit.freed.floors, 1);
    EXPECT_EQ(kit.freed.lids, 1);
    EXPECT_EQ(kit.freed.innerCovers, 1);
    EXPECT_EQ(kit.freed.boxesInAll(), 0);
}

TEST(KitToLoad, ABoxBroughtAwayIsCountedByItsKind) {
    PlanBook book = PlanBook().colony("A", {{"brood_boxes", "2"}, {"box", "zander-10"}});
    book.colony("B", {{"box", "zander-10"}}).bees("A", "1.5", {{"upper_bees_top", "1.5"}}).bees("B", "5");
    const KitToLoad kit = kitOf(book);
    ASSERT_EQ(kit.unions, 1);
    ASSERT_EQ(kit.freed.boxes.size(), 1U);
    EXPECT_EQ(kit.freed.boxes[0].count, 1);
    EXPECT_EQ(kitPartOf(book.on(kFall), kit.freed.boxes[0]), "zander-10");
}

TEST(KitToLoad, AShakeOutFreesAllItsBoxesAndNeedsNoPaper) {
    const KitToLoad kit = kitOf(PlanBook()
                                    .colony("A", {{"brood_boxes", "2"}})
                                    .colony("B")
                                    .bees("A", "1", {{"upper_bees_top", "1"}})
                                    .bees("B", "6"));
    EXPECT_EQ(kit.shakeOuts, 1);
    EXPECT_EQ(kit.freed.boxesInAll(), 2);
    EXPECT_EQ(kit.freed.floors, 1);
    EXPECT_EQ(kit.of(KitThing::Newspaper), 0);
    EXPECT_EQ(kit.of(KitThing::QueenCages), 1) << "its queen is removed";
}

TEST(KitToLoad, EachPartADivideMakesNeedsAHive) {
    PlanBook book = PlanBook().unchecked("A", {{"brood_boxes", "2"}});
    book.visit("A", "2026-05-10",
               {{"bees_top", "8"},
                {"upper_bees_top", "8"},
                {"queen", "eggs"},
                {"brood_frames", "12"},
                {"brood_checked", "12"}});
    const KitToLoad kit = kitOf(book, "2026-05-11");
    EXPECT_EQ(kit.parts, 2) << "divided in three";
    for (const KitThing part : {KitThing::Floors, KitThing::Lids, KitThing::InnerCovers, KitThing::Boxes})
        EXPECT_EQ(kit.of(part), 2);
    EXPECT_EQ(kit.freed.floors, 0);
}

TEST(KitToLoad, SyrupIsTheFeedOfTheYard) {
    // 32 - 30 = 2 kg short: 2 / 1.078 = 1.86 litres, rounded up to half a litre
    const KitToLoad kit = kitOf(PlanBook().colony("A").bees("A", "9", {{"gross_kg", "30"}}));
    EXPECT_EQ(kit.of(KitThing::SyrupHalfLitres), 4);
    EXPECT_EQ(kit.of(KitThing::Smoker), 0) << "nothing else is done";
}

TEST(KitToLoad, OtherYardsAreNotCounted) {
    PlanBook book = PlanBook().yard("Y").yard("Z");
    book.colony("A", {{"yard", "Z"}, {"stand", "1"}}).colony("B", {{"yard", "Z"}, {"stand", "2"}});
    book.bees("A", "3").bees("B", "5").colony("C").bees("C", "9");
    EXPECT_TRUE(kitOf(book).lines.empty());
}

} // namespace
