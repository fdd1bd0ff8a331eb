#include "core/rules/feed_given.h"

#include <gtest/gtest.h>

namespace core::rules {

namespace {

TEST(FeedGiven, AMixIsKeptAsOneText) {
    for (const char* typed : {"3:2", " 3 : 2 ", "3,0:2.0"})
        EXPECT_EQ(mixText(calc::mixOf(QString::fromLatin1(typed)).value()), QStringLiteral("3:2")) << typed;
    EXPECT_EQ(mixText(calc::mixOf(u"1,25:1").value()), QStringLiteral("1.25:1"));
}

TEST(FeedGiven, TellsTheStoresThatItMakes) {
    Feeding f;
    f.mix = QStringLiteral("3:2");
    f.weight = Decagrams{500};
    // Stores of 18 % water: an assumption.
    EXPECT_NEAR(storesOf(f).value(), 3 / 0.82, 1e-9);
    f.mix.clear();
    EXPECT_FALSE(storesOf(f)) << "mix not recorded";
    f.what = FeedKind::Honey;
    EXPECT_NEAR(storesOf(f).value(), 5, 1e-9);
    for (const FeedKind what : {FeedKind::Fondant, FeedKind::Pollen, FeedKind::Other}) {
        f.what = what;
        EXPECT_FALSE(storesOf(f));
    }
}

} // namespace

} // namespace core::rules
