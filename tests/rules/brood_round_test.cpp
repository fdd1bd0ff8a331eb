#include "core/rules/brood_round.h"

#include "tests/rules/hold_book.h"

#include <gtest/gtest.h>

// Rule 4.4.10 as a round: the limits are those of the rule (check.max_age_days 150, check.grace_days 30, the season
// from 05-01) and season.fall_start 08-20; the days are of our own calculation, by counting.

namespace {

using core::rules::RoundGroup;
using core::rules::RoundStop;
using core::rules::RoundYard;
using tests::rules::HoldBook;

/// The round of a yard, with what it points to.
struct Walked {
    core::Snapshot s;
    std::vector<core::rules::Hold> holds;
    RoundYard round;

    Walked(const HoldBook& book, const char* on, const char* yard = "Home") : s(book.on(QString::fromLatin1(on))) {
        holds = core::rules::holds(s);
        for (RoundYard& r : core::rules::broodRound(s, holds))
            if (s.yard(r.yard).name == QLatin1StringView(yard)) round = std::move(r);
    }
    std::string names(const std::vector<RoundStop>& stops) const {
        QStringList out;
        for (const RoundStop& stop : stops) out << s.colony(stop.colony).label;
        return out.join(u' ').toStdString();
    }
    std::string walk() const { return names(round.walk); }
    std::string closed() const { return names(round.closed); }
    std::string sure() const { return names(round.sure); }
    const RoundStop& stop(const char* label) const {
        for (const auto* stops : {&round.walk, &round.closed, &round.sure})
            for (const RoundStop& stop : *stops)
                if (s.colony(stop.colony).label == QLatin1StringView(label)) return stop;
        ADD_FAILURE() << label;
        static const RoundStop none;
        return none;
    }
};

std::string text(std::optional<core::Day> day) { return day ? core::isoText(*day).toStdString() : "never"; }

HoldBook checkedOn(const char* day, int checked = 6, int frames = 6) {
    HoldBook book;
    book.colony("K1").check("K1", QString::fromLatin1(day), checked, frames);
    return book;
}

TEST(BroodRound, TheFallUnionsBeginOnTheNextFirstDayOrHaveBegun) {
    const core::Settings settings;
    const auto fall = [&](const char* on, bool southern = false) {
        return text(core::rules::fallFrom(settings, *core::parseIsoDay(QString::fromLatin1(on)), southern));
    };
    EXPECT_EQ(fall("2026-08-19"), "2026-08-20");
    EXPECT_EQ(fall("2026-08-20"), "2026-08-20");
    EXPECT_EQ(fall("2026-10-20"), "2026-10-20");
    EXPECT_EQ(fall("2026-10-21"), "2027-08-20");
    EXPECT_EQ(fall("2026-03-01", true), "2026-03-01") << "in the south the season is half a year on";
    EXPECT_EQ(fall("2026-02-19", true), "2026-02-20");
}

TEST(BroodRound, ACheckCountsOnTheFallDayFromTheFirstOfMayOn) {
    // 150 days before 2026-08-20 is 03-23, 30 days before it 07-21: the season of 05-01 decides.
    EXPECT_EQ(Walked(checkedOn("2026-04-30"), "2026-05-20").walk(), "K1");
    EXPECT_EQ(Walked(checkedOn("2026-05-01"), "2026-05-20").walk(), "");
    EXPECT_EQ(Walked(checkedOn("2026-05-01"), "2026-05-20").sure(), "K1");
    EXPECT_EQ(text(Walked(checkedOn("2026-05-01"), "2026-05-20").round.from), "2026-05-01");
    EXPECT_EQ(text(Walked(checkedOn("2026-05-01"), "2026-05-20").round.fall), "2026-08-20");
}

TEST(BroodRound, SaysUntilWhenACheckCounts) {
    EXPECT_EQ(text(Walked(checkedOn("2026-04-30"), "2026-05-20").stop("K1").until), "2026-05-30") << "30 days of grace";
    EXPECT_EQ(text(Walked(checkedOn("2026-04-30"), "2026-05-30").stop("K1").until), "2026-05-30");
    const Walked lapsed(checkedOn("2026-04-30"), "2026-05-31");
    EXPECT_EQ(text(lapsed.stop("K1").until), "never");
    ASSERT_NE(lapsed.stop("K1").lacks, nullptr);
    EXPECT_EQ(text(lapsed.stop("K1").checked), "2026-04-30");
    EXPECT_EQ(text(Walked(checkedOn("2026-05-01"), "2026-05-20").stop("K1").until), "2026-09-28") << "150 days";
}

TEST(BroodRound, TheUntilDayIsTheLastOnWhichNobodyIsHeldForIt) {
    for (const char* day : {"2026-01-10", "2026-04-01", "2026-04-02", "2026-05-01", "2026-07-30", "2026-12-31"}) {
        const HoldBook book = checkedOn(day);
        const auto until = Walked(book, day).stop("K1").until;
        ASSERT_TRUE(until) << day;
        EXPECT_FALSE(book.held("K1", "brood-not-checked", core::isoText(*until))) << day;
        EXPECT_TRUE(book.held("K1", "brood-not-checked", core::isoText(*until + 1))) << day;
    }
}

TEST(BroodRound, AShortCheckIsNamedByTheHoldItself) {
    const Walked two(checkedOn("2026-06-01", 2, 6), "2026-06-10");
    EXPECT_EQ(two.walk(), "K1");
    EXPECT_EQ(two.stop("K1").examined, 2);
    EXPECT_EQ(two.stop("K1").broodFrames, 6);
    EXPECT_EQ(text(two.stop("K1").looked), "2026-06-01");
    EXPECT_EQ(text(two.stop("K1").checked), "never");
    ASSERT_NE(two.stop("K1").lacks, nullptr);
    EXPECT_EQ(two.stop("K1").lacks->told.toStdString(),
              "At the last brood check, of 2026-06-01, only 2 of 6 brood frames were examined; it takes 3, or all "
              "where there are fewer.");
    EXPECT_EQ(Walked(checkedOn("2026-06-01", 3, 6), "2026-06-10").sure(), "K1");
    EXPECT_EQ(Walked(checkedOn("2026-06-01", 2, 2), "2026-06-10").sure(), "K1") << "all there are";
}

TEST(BroodRound, AMaskedCheckCountsAndIsNamed) {
    HoldBook book = checkedOn("2026-06-01");
    book.antibiotic("K1", tests::rules::moved("2026-06-01", -548));
    EXPECT_EQ(text(Walked(book, "2026-06-10").stop("K1").masked),
              tests::rules::moved("2026-06-01", -548).toStdString());
    EXPECT_EQ(Walked(book, "2026-06-10").sure(), "K1");
    HoldBook before = checkedOn("2026-06-01");
    before.antibiotic("K1", tests::rules::moved("2026-06-01", -549));
    EXPECT_EQ(text(Walked(before, "2026-06-10").stop("K1").masked), "never");
}

TEST(BroodRound, ANegativeCountsAsACheckDoes) {
    HoldBook book = checkedOn("2025-06-01");
    book.result("K1", QStringLiteral("2026-06-01"), "negative");
    const Walked w(book, "2026-06-10");
    EXPECT_EQ(w.sure(), "K1");
    EXPECT_EQ(text(w.stop("K1").checked), "2026-06-01");
    EXPECT_EQ(text(w.stop("K1").until), "2026-10-29");
}

TEST(BroodRound, ThoseHeldComeLastAndFoulbroodStaysClosed) {
    HoldBook book;
    for (const char* label : {"K1", "K2", "K3"}) book.colony(label, "Hill");
    EXPECT_EQ(Walked(book, "2026-06-10", "Hill").walk(), "K1 K2 K3");
    book.sign("K1", QStringLiteral("2026-06-09"), "efb");
    const Walked efb(book, "2026-06-10", "Hill");
    EXPECT_EQ(efb.walk(), "K2 K3 K1");
    EXPECT_EQ(efb.stop("K1").group, RoundGroup::Signs);
    EXPECT_EQ(efb.stop("K2").group, RoundGroup::Free);
    book.sign("K2", QStringLiteral("2026-06-10"));
    const Walked afb(book, "2026-06-10", "Hill");
    EXPECT_EQ(afb.walk(), "K3 K1");
    EXPECT_EQ(afb.closed(), "K2");
    EXPECT_EQ(afb.stop("K3").group, RoundGroup::Traced);
    EXPECT_EQ(afb.round.hives(), 3U);
}

TEST(BroodRound, ASouthernYardHasItsOwnFall) {
    HoldBook book;
    book.colony("Z1", "South").check("Z1", QStringLiteral("2025-11-01"));
    const Walked w(book, "2025-12-01", "South");
    EXPECT_EQ(text(w.round.fall), "2026-02-20");
    EXPECT_EQ(text(w.round.from), "2025-11-01");
    EXPECT_EQ(w.sure(), "Z1");
    HoldBook before;
    before.colony("Z1", "South").check("Z1", QStringLiteral("2025-10-31"));
    EXPECT_EQ(Walked(before, "2025-12-01", "South").walk(), "Z1");
}

} // namespace
