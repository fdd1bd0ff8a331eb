#include "ui/ready/load_rows.h"

#include "core/model/kit_words.h"
#include "tests/rules/plan_book.h"

#include <gtest/gtest.h>

// Counts: own calculation, from the plan of a yard in spring. 16 frames of bees and 12 of brood make three parts.

namespace {

using namespace core;
using namespace tests::rules;
using core::rules::KitPile;

std::string rowsWith(const std::vector<KitPile>& piles) {
    PlanBook book = PlanBook().unchecked("A", {{"brood_boxes", "2"}});
    book.visit("A", "2026-05-10",
               {{"bees_top", "8"},
                {"upper_bees_top", "8"},
                {"queen", "eggs"},
                {"brood_frames", "12"},
                {"brood_checked", "12"}});
    const ui::desk::Reading reading = ui::desk::readingOf(book.on("2026-05-11"));
    std::vector<ui::board::BoardRow> rows;
    ui::ready::addLoad(reading, *reading.snapshot.yardNamed(u"Y"), piles, rows);
    QStringList told;
    for (const ui::board::BoardRow& row : rows)
        if (row.right.size() > 0) told << row.title + QStringLiteral(": ") + row.right + u' ' + row.cautions.join(u' ');
    return told.join(u'|').simplified().toStdString();
}

KitPile pile(const QString& part, const QString& state, int count, std::optional<YardId> yard = {},
             std::optional<ColonyId> colony = {}) {
    return {{yard, part, state, colony}, count, {}};
}

TEST(LoadRows, EachHiveThatADivideMakesIsOfferedFromUsableKit) {
    EXPECT_EQ(rowsWith({}), "2 floors: none counted |2 lids: none counted |2 inner covers: none counted "
                            "|2 boxes with frames (langstroth-10): none counted");
    const auto floors = [](const std::vector<KitPile>& piles) {
        const std::string all = rowsWith(piles);
        return all.substr(0, all.find('|'));
    };
    EXPECT_EQ(floors({pile(kit::kFloor, kit::kUsable, 5)}), "2 floors: 5 usable in the store room ");
    EXPECT_EQ(floors({pile(kit::kFloor, kit::kUsable, 1)}), "2 floors: 1 usable in the store room 1 short.");
    EXPECT_EQ(floors({pile(kit::kFloor, kit::kUsable, 0)}), "2 floors: 0 usable in the store room 2 short.");
    for (const QString& state : {kit::kToClean, kit::kSterilised, kit::kBurned})
        EXPECT_EQ(floors({pile(kit::kFloor, state, 9)}), "2 floors: none counted ") << state.toStdString();
    EXPECT_EQ(floors({pile(kit::kFloor, kit::kQuarantined, 9, {}, ColonyId{1})}),
              "2 floors: none counted 9 more in quarantine: not to be used.");
    EXPECT_EQ(floors({pile(kit::kFloor, kit::kUsable, 5, YardId{99})}), "2 floors: none counted ") << "another yard's";
}

} // namespace
