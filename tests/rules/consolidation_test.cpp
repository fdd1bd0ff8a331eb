#include "core/rules/consolidation.h"

#include "tests/rules/plan_book.h"

#include <gtest/gtest.h>

namespace {

using namespace core;
using namespace core::rules;
using namespace tests::rules;

struct Found {
    std::vector<Consolidation> all;
    std::string said;
};

/// A in two boxes, with so many frames of bees below and above, beside B in one.
Found found(const char* below, const char* above, const Cells& more = {}) {
    Cells cells{{"upper_bees_top", above}};
    cells.insert(more.begin(), more.end());
    PlanBook book = PlanBook().colony("A", {{"brood_boxes", "2"}}).colony("B").bees("A", below, cells).bees("B", "5");
    const Snapshot s = book.on(kFall);
    Found out{consolidations(s, colonyFacts(s), advise(s, {}), *s.yardNamed(u"Y")), {}};
    if (!out.all.empty()) out.said = textOf(sentencesOf(out.all[0])).toStdString();
    return out;
}

TEST(Consolidation, KeepsTheBoxWithMoreBees) {
    const Found upper = found("1", "2.5");
    ASSERT_EQ(upper.all.size(), 1U);
    EXPECT_TRUE(upper.all[0].keepUpper);
    EXPECT_EQ(upper.said.find("Keep the upper box: 2.5 of 3.5 frames of bees are there."), 0U) << upper.said;
    EXPECT_EQ(found("2.5", "1").said.find("Keep the lower box: 2.5 of 3.5 frames of bees are there."), 0U);
    EXPECT_TRUE(found("1.5", "1.5").all.at(0).keepUpper);
}

TEST(Consolidation, SaysWhetherBroodAndStoresFit) {
    // 2 of brood and 1.5 + 3 of stores
    const Found known =
        found("1", "2.5", {{"brood_frames", "2"}, {"stores_frames", "1.5"}, {"upper_stores_frames", "3"}});
    EXPECT_NE(known.said.find("Brood and stores fill 6.5 of 10 frames."), std::string::npos) << known.said;
    EXPECT_NE(found("1", "2.5").said.find("not known: look first"), std::string::npos);
}

TEST(Consolidation, OnlyOfWhatAUnionTakesInOneBox) {
    EXPECT_TRUE(found("1", "1").all.empty()) << "shaken out, not united";
    EXPECT_TRUE(found("6", "6").all.empty()) << "strong";
}

} // namespace
