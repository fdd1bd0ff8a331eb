#include "core/rules/near_sources.h"
#include "tests/rules/hold_book.h"

#include <gtest/gtest.h>

#include <QStringList>

#include <cmath>

namespace tests::rules {

namespace {

using namespace core;
using core::rules::NearSource;

constexpr const char* kOn = "2026-09-20";

QString asText(const char* latin1) { return QString::fromLatin1(latin1); }

/// Home with a source S, and one further yard so far north of it; coordinates blank where `north` is.
HoldBook withYard(const char* north) {
    HoldBook book;
    book.add("yards", {{"yard", "Far"},
                       {"latitude_deg", asText(north)},
                       {"longitude_deg", *north ? QStringLiteral("14.5") : QString()}});
    book.colony("S").colony("F", "Far").sign("S", asText("2026-09-01"));
    return book;
}

std::vector<NearSource> nearOf(const HoldBook& book, const char* on = kOn) {
    const Snapshot s = book.on(asText(on));
    return core::rules::nearSources(core::rules::Evidence(s));
}

/// "S in Home: Far near robbing; unknown: -; hives: -"
std::string toldOf(const HoldBook& book, const char* on = kOn) {
    const Snapshot s = book.on(asText(on));
    QStringList out;
    for (const NearSource& n : core::rules::nearSources(core::rules::Evidence(s))) {
        QStringList yards, unknown, hives;
        for (const auto& y : n.yards)
            yards << s.yard(y.yard).name + (y.near ? " near" : "") + (y.robbing ? " robbing" : "");
        for (const YardIx y : n.unknown) unknown << s.yard(y).name;
        for (const auto& h : n.hives) hives << s.colony(h.colony).shown;
        out << QStringLiteral("%1 in %2: %3; unknown: %4; hives: %5")
                   .arg(s.colony(n.source).shown, s.yard(n.yard).name, yards.join(u','), unknown.join(u','),
                        hives.join(u','));
    }
    return out.join(u'|').toStdString();
}

// Source: own calculation: on a sphere of 6371.0 km a degree is 111194.93 m, so 1000 m are 0.00899322 degrees and
// 2000 m are 0.01798643 degrees. Home lies at 52.1.
TEST(NearSources, YardsAreNearUpTo1000MetresAndMayRobUpTo2000) {
    EXPECT_EQ(toldOf(withYard("52.1089932")), "S in Home: Far near robbing; unknown: ; hives: ") << "below 1000 m";
    EXPECT_EQ(toldOf(withYard("52.1089933")), "S in Home: Far robbing; unknown: ; hives: ") << "above 1000 m";
    EXPECT_EQ(toldOf(withYard("52.1179864")), "S in Home: Far robbing; unknown: ; hives: ") << "below 2000 m";
    EXPECT_EQ(toldOf(withYard("52.1179865")), "S in Home: ; unknown: ; hives: ") << "above 2000 m";
    const auto found = nearOf(withYard("52.1089932"));
    ASSERT_EQ(found.size(), 1u);
    EXPECT_NEAR(found[0].yards[0].metres, 1000.0, 0.01);
    EXPECT_EQ(found[0].yards[0].hives, 1);
    EXPECT_FALSE(found[0].confirmed);
}

// At the limit itself: the very distance, as it is computed, as the setting.
TEST(NearSources, TheLimitItselfCounts) {
    const double metres = nearOf(withYard("52.1050000"))[0].yards[0].metres;
    const qint64 micrometres = qint64(std::ceil(metres * 1e6));
    const auto limited = [&](const char* name, qint64 value) {
        HoldBook book = withYard("52.1050000");
        book.set("afb.near_m", "0").set("afb.rob_m", "0");
        const QByteArray typed = QByteArray::number(double(value) / 1e6, 'f', 6);
        book.set(name, typed.constData());
        return toldOf(book);
    };
    EXPECT_EQ(limited("afb.near_m", micrometres), "S in Home: Far near; unknown: ; hives: ");
    EXPECT_EQ(limited("afb.near_m", micrometres - 1), "S in Home: ; unknown: ; hives: ");
    EXPECT_EQ(limited("afb.rob_m", micrometres), "S in Home: Far robbing; unknown: ; hives: ");
    EXPECT_EQ(limited("afb.rob_m", micrometres - 1), "S in Home: ; unknown: ; hives: ");
}

TEST(NearSources, AYardWithoutCoordinatesIsUnknownAndNotFar) {
    EXPECT_EQ(toldOf(withYard("")), "S in Home: ; unknown: Far; hives: ");
    // Nor is any yard far from a source that stands where no coordinates are recorded.
    HoldBook book = withYard("");
    book.colony("H", "Hill").sign("F", asText("2026-09-01")).result("S", asText("2026-09-02"), "negative");
    EXPECT_EQ(toldOf(book), "F in Far: ; unknown: Hill,Home; hives: ");
    // A yard without hives is not told: nothing there can rob.
    HoldBook empty;
    empty.colony("S").sign("S", asText("2026-09-01"));
    EXPECT_EQ(toldOf(empty), "S in Home: ; unknown: ; hives: ");
}

/// A hive that stands so far east of the source, in metres.
HoldBook withHive(const char* x) {
    HoldBook book;
    book.colony("S").sign("S", asText("2026-09-01"));
    book.add("colonies",
             {{"colony", "N"}, {"yard", "Home"}, {"stand", "N"}, {"since", "2024-05-01"}, {"x_m", asText(x)}});
    return book;
}

TEST(NearSources, HivesOfItsYardWithinTheDriftDistance) {
    EXPECT_EQ(toldOf(withHive("2.999")), "S in Home: ; unknown: ; hives: N");
    EXPECT_EQ(toldOf(withHive("3")), "S in Home: ; unknown: ; hives: N") << "at 3 m";
    EXPECT_EQ(toldOf(withHive("3.001")), "S in Home: ; unknown: ; hives: ");
    EXPECT_EQ(toldOf(withHive("3.001").set("move.drift_m", "4")), "S in Home: ; unknown: ; hives: N");
}

TEST(NearSources, AreThoseOfTheCautionAndNoPastOnes) {
    HoldBook book = withYard("52.105");
    book.result("S", asText("2026-09-10"), "negative");
    EXPECT_EQ(toldOf(book, "2026-09-09"), "S in Home: Far near robbing; unknown: ; hives: ");
    EXPECT_EQ(toldOf(book, "2026-09-10"), "") << "answered";
    HoldBook positive = withYard("52.105");
    positive.result("S", asText("2026-09-10"), "positive");
    EXPECT_TRUE(nearOf(positive)[0].confirmed);
    positive.result("S", asText("2026-09-15"), "release", "inspector");
    EXPECT_EQ(toldOf(positive), "") << "a past source";
    // One that ended counts for afb.yard_after_days after its last day.
    HoldBook ended;
    ended.ended("S", "Home", asText("2026-01-10")).colony("F", "Hill").sign("S", asText("2026-01-05"));
    ended.set("afb.rob_m", "20000");
    EXPECT_EQ(toldOf(ended, "2027-01-10"), "S in Home: Hill robbing; unknown: ; hives: ") << "365 days";
    EXPECT_EQ(toldOf(ended, "2027-01-11"), "");
}

} // namespace

} // namespace tests::rules
