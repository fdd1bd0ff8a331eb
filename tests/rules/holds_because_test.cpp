#include "tests/rules/hold_book.h"

#include <gtest/gtest.h>

namespace tests::rules {
namespace {

using core::rules::Hold;
using core::rules::HoldKind;

constexpr const char* kDay = "2026-09-20";

void expectNames(const Hold& hold, const std::vector<const char*>& parts) {
    for (const char* part : parts)
        EXPECT_TRUE(hold.because().contains(QString::fromUtf8(part)))
            << part << " is missing in: " << hold.because().toStdString();
    EXPECT_FALSE(hold.lift.isEmpty());
    EXPECT_TRUE(hold.because().endsWith(hold.lift)) << hold.because().toStdString();
    EXPECT_FALSE(hold.because().contains(u'%')) << hold.because().toStdString();
    EXPECT_FALSE(hold.because().contains(QStringLiteral("..")) || hold.because().contains(QStringLiteral("  ")))
        << hold.because().toStdString();
}

TEST(HoldOrder, KindsStandInOneOrderAndColoniesInTheSnapshots) {
    HoldBook book;
    book.colony("B").colony("A").colony("E", "Hill");
    book.check("A", "2026-09-01", 0, 6, "afb efb brood-doubt").ofYard("Home", "2026-09-02", "order");
    book.gift("E", "A", "2026-08-01").sign("E", "2026-09-03");
    const core::Snapshot s = book.on(kDay);
    const auto holds = core::rules::holds(s);
    std::vector<HoldKind> kinds;
    for (const Hold& hold : holds)
        if (s.colony(hold.colony).shown == u"A") kinds.push_back(hold.kind);
    const std::vector<HoldKind> expected{HoldKind::Order,          HoldKind::AfbSuspected, HoldKind::AfbContact,
                                         HoldKind::AfbYard,        HoldKind::Efb,          HoldKind::BroodDoubt,
                                         HoldKind::BroodNotChecked};
    EXPECT_EQ(kinds, expected);
    EXPECT_TRUE(std::is_sorted(holds.begin(), holds.end(), [](const Hold& a, const Hold& b) {
        return std::pair(a.colony, a.kind) < std::pair(b.colony, b.kind);
    }));
}

TEST(HoldOrder, WordsAndLettersAreTheContracts) {
    const char* words[] = {"order",    "afb-confirmed", "afb-suspected", "afb-contact",
                           "afb-yard", "efb",           "brood-doubt",   "brood-not-checked"};
    for (int i = 0; i < core::rules::kHoldKindCount; ++i) {
        EXPECT_EQ(core::rules::holdWord(static_cast<HoldKind>(i)), QString::fromLatin1(words[i]));
        EXPECT_EQ(core::rules::holdLetter(static_cast<HoldKind>(i)), QChar::fromLatin1("OFSCYEDB"[i]));
    }
}

TEST(HoldBecause, OfContactNamesTheSourceTheChainAndTheDays) {
    HoldBook book;
    book.ended("B2", "Home", "2026-07-16")
        .check("B2", "2026-07-10", 6, 6, "afb")
        .result("B2", "2026-07-14", "positive");
    book.colony("C1", "Hill")
        .colony("C3", "Hill")
        .gift("B2", "C1", "2026-05-20")
        .gift("C1", "C3", "2026-06-01", "bees");
    const Hold hold = book.hold("C3", "afb-contact", kDay);
    expectNames(hold, {"B2", "2026-07-10", "2026-07-14", "C3 received bees from C1 on 2026-06-01",
                       "C1 received frames from B2 on 2026-05-20", "2026-07-31", "2026-07-13", "2026-06-02",
                       "with fewer brood frames or none"});
}

TEST(HoldBecause, OfAGiverNamesWhatItGaveAndWhatBecameTheSource) {
    HoldBook book;
    book.colony("A").colony("E", "Hill").ended("F", "Hill", "2026-05-10", "united");
    book.gift("E", "F", "2026-04-01", "brood").lineage("F", "A", "2026-05-10", "united");
    book.result("A", "2026-07-14", "positive");
    expectNames(book.hold("E", "afb-contact", kDay), {"F received brood from E on 2026-04-01",
                                                      "F was united into A on 2026-05-10", "2025-07-14", "2026-05-13"});
}

TEST(HoldBecause, OfContactNamesEverySource) {
    HoldBook book;
    book.ended("P", "Home", "2026-07-01").ended("Q", "South", "2026-08-01").colony("E", "Hill");
    book.result("P", "2026-07-01", "positive").result("Q", "2026-08-01", "positive");
    book.gift("P", "E", "2026-06-01", "feed").gift("Q", "E", "2026-07-20", "feed");
    expectNames(book.hold("E", "afb-contact", kDay),
                {"P had", "2026-07-01", "received feed from P on 2026-06-01", "Q had", "2026-08-01",
                 "received feed from Q on 2026-07-20", "on or after 2026-09-18", "on or after 2026-08-31"});
}

TEST(HoldBecause, OfAYardNamesTheYardTheSourceAndTheDays) {
    HoldBook book;
    book.ended("A", "Home", "2026-07-16").result("A", "2026-07-16", "positive").colony("B");
    expectNames(book.hold("B", "afb-yard", kDay),
                {"B stands in Home", "A", "2026-07-16", "at least 3, on or after 2026-09-14",
                 "negative on or after 2026-08-27"});
    book.colony("E", "Hill").gift("B", "E", "2026-08-01", "box");
    expectNames(book.hold("E", "afb-yard", kDay), {"E received a box from B on 2026-08-01", "B stands in Home",
                                                   "on or after 2026-09-30", "on or after 2026-09-12"});
}

TEST(HoldBecause, OfALivingSuspectSaysThatItsSuspicionComesFirst) {
    HoldBook book;
    book.colony("A").colony("B").sign("A", "2026-09-01");
    const Hold hold = book.hold("B", "afb-yard", kDay);
    expectNames(hold, {"A is under suspicion", "negative of A dated on or after 2026-09-01"});
    expectNames(book.hold("A", "afb-suspected", kDay), {"2026-09-01", "dated after 2026-09-01"});
}

TEST(HoldBecause, OfAConfirmedAsksForAReleaseOnly) {
    HoldBook book;
    book.colony("A").result("A", "2026-09-01", "positive").result("A", "2026-09-05", "positive", "inspector");
    const Hold hold = book.hold("A", "afb-confirmed", kDay);
    expectNames(hold, {"2026-09-01", "2026-09-05", "Only an inspector's release that names A, dated after 2026-09-05"});
    EXPECT_FALSE(hold.lift.contains(QStringLiteral("negative")));
}

TEST(HoldBecause, OfAnOrderNamesPaperYardDayAndChain) {
    HoldBook book;
    book.colony("A").colony("E", "Hill").ofYard("Home", "2026-08-01", "order", "efb").gift("A", "E", "2026-08-03");
    expectNames(book.hold("A", "order", kDay), {"order P-2 of 2026-08-01 by Ines (European foulbrood)", "the yard Home",
                                                "A stood on 2026-08-01", "on or after 2026-08-01"});
    expectNames(book.hold("E", "order", kDay), {"E received frames from A on 2026-08-03", "the yard Home"});
}

TEST(HoldBecause, OfEfbAndDoubtNamesEventAndGift) {
    HoldBook book;
    book.colony("A").colony("B").sign("A", "2026-08-20", "efb brood-doubt").gift("A", "B", "2026-08-10", "brood");
    expectNames(book.hold("A", "efb", kDay), {"A showed European foulbrood on 2026-08-20", "2026-10-01"});
    expectNames(book.hold("B", "efb", kDay), {"B received brood from A on 2026-08-10", "2026-08-20", "2026-09-21"});
    expectNames(book.hold("A", "brood-doubt", kDay), {"2026-08-20", "2026-09-10"});
    expectNames(book.hold("B", "brood-doubt", kDay), {"B received brood from A on 2026-08-10", "2026-08-31"});
}

TEST(HoldBecause, OfNotCheckedNamesWhatIsKnownAndTheLimit) {
    HoldBook book;
    book.colony("A").colony("B").colony("C").colony("D").colony("E");
    book.check("B", "2026-09-01", 2, 7).check("C", "2026-04-20").check("D", "2026-04-01");
    book.check("E", "2026-09-02", 3, 7).gift("A", "E", "2026-09-05", "bees");
    expectNames(book.hold("A", "brood-not-checked", kDay), {"No brood check", "2026-05-01", "without brood"});
    expectNames(book.hold("B", "brood-not-checked", kDay), {"2026-09-01", "2 of 7 brood frames", "it takes 3"});
    expectNames(book.hold("C", "brood-not-checked", kDay), {"2026-04-20", "150 days"});
    expectNames(book.hold("D", "brood-not-checked", "2026-05-10"), {"2026-04-01", "began on 2026-05-01", "30 days"});
    expectNames(book.hold("E", "brood-not-checked", kDay),
                {"2026-09-02", "3 of 7", "E received bees from A on 2026-09-05", "on or after 2026-09-06"});
}

TEST(HoldBecause, KeepsAPercentSignOfALabel) {
    HoldBook book;
    book.ended("A%3", "Home", "2026-07-16").result("A%3", "2026-07-16", "positive").colony("B");
    EXPECT_TRUE(book.hold("B", "afb-yard", kDay).because().contains(QStringLiteral("A%3 had American foulbrood")));
}

} // namespace
} // namespace tests::rules
