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

TEST(FeedGiven, IsSummedOverDays) {
    const Day day = dayOf(2026, 9, 1);
    Feeding f;
    f.day = day;
    f.mix = QStringLiteral("3:2");
    f.weight = Decagrams{500};
    Feeding thin = f; // its mix is not known
    thin.day = day + 3;
    thin.mix.clear();
    thin.weight.reset();
    thin.volume = Millilitres{4000};
    Feeding fondant = f;
    fondant.day = day + 10;
    fondant.what = FeedKind::Fondant;
    fondant.mix.clear();
    const std::vector<Feeding> all{f, thin, fondant};
    const ColonyFed two = fedBetween(all, day, day + 9);
    EXPECT_EQ(two.feedings, 2);
    EXPECT_EQ(two.last, day + 3);
    EXPECT_EQ(two.amounts.at(FeedKind::Syrup).millilitres, 4000);
    EXPECT_EQ(two.amounts.at(FeedKind::Syrup).decagrams, 500);
    EXPECT_NEAR(two.sugarKg, 3, 1e-9);
    EXPECT_EQ(two.sugarUnknown, 1);
    EXPECT_EQ(fedBetween(all, day + 1, day + 10).sugarUnknown, 2);
    EXPECT_EQ(fedBetween(all, day + 11, day + 20).feedings, 0);
}

} // namespace

} // namespace core::rules
