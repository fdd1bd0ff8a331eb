#include "core/store/snapshot_reader.h"
#include "tests/store/test_book.h"

#include <gtest/gtest.h>

using namespace core;
using namespace core::store;

namespace {

QStringList shown(const Snapshot& s) {
    QStringList names;
    for (const SnapColony& c : s.colonies) names << c.shown;
    return names;
}

/// "A1 2026-05-01..2026-06-01 180 | …"
QString stays(const Snapshot& s, const char* name) {
    QStringList parts;
    for (size_t i = 0; i < s.colonies.size(); ++i) {
        if (s.colonies[i].shown != QLatin1String(name)) continue;
        for (const SnapStay& stay : s.staysOf({static_cast<qint32>(i)}))
            parts << QStringLiteral("%1 %2..%3 %4")
                         .arg(stay.standName, isoText(stay.since), stay.until ? isoText(*stay.until) : QString())
                         .arg(stay.headingDeg);
    }
    return parts.join(" | ");
}

TEST(Snapshot, OfAnEmptyBook) {
    TestBook book;
    const Snapshot s = readSnapshot(book.db(), day("2026-09-20"));
    EXPECT_EQ(s.on, day("2026-09-20"));
    EXPECT_EQ(s.settings, Settings());
    EXPECT_TRUE(s.colonies.empty());
    ASSERT_EQ(s.boxKinds.size(), 5u);
    EXPECT_EQ(s.boxKinds[2].name, "langstroth-10");
    EXPECT_EQ(s.boxKinds[2].widthMm, 413);
    EXPECT_EQ(s.boxKinds[0].widthMm, std::nullopt);
}

TEST(Snapshot, TakesColoniesByTheirLife) {
    TestBook book;
    const Yard north = book.yard("North");
    Colony a = book.colony(north, "A", day("2026-05-01"));
    book.end(a, day("2026-08-01"), EndKind::Sold);
    book.colony(north, "B", day("2026-09-01"));
    EXPECT_EQ(shown(readSnapshot(book.db(), day("2026-04-30"))), QStringList());
    const Snapshot before = readSnapshot(book.db(), day("2026-07-31"));
    ASSERT_EQ(shown(before), QStringList("A"));
    EXPECT_TRUE(before.colonies[0].living());
    EXPECT_EQ(before.livingCount(), 1u);
    const Snapshot after = readSnapshot(book.db(), day("2026-08-01"));
    ASSERT_EQ(shown(after), QStringList("A"));
    EXPECT_EQ(after.colonies[0].ended, day("2026-08-01"));
    EXPECT_EQ(after.colonies[0].end, EndKind::Sold);
    EXPECT_EQ(after.livingCount(), 0u);
    EXPECT_EQ(shown(readSnapshot(book.db(), day("2026-09-01"))), (QStringList{"B", "A"})); // the living first
}

TEST(Snapshot, OrdersNaturallyAndNamesTheEarlierOfALabelByItsDay) {
    TestBook book;
    const Yard north = book.yard("North");
    for (const char* label : {"A10", "a2", "A02", "B1", "10", "2"}) book.colony(north, label, day("2026-05-01"));
    Colony first = book.colony(north, "b2", day("2025-05-01"));
    book.end(first, day("2026-05-01"), EndKind::Dead);
    book.colony(north, "B2", day("2026-05-02"));
    EXPECT_EQ(shown(readSnapshot(book.db(), day("2026-09-20"))),
              (QStringList{"2", "10", "A02", "a2", "A10", "B1", "B2", "b2@2025-05-01"}));
    // Before the second began, the plain label is the first's.
    EXPECT_EQ(shown(readSnapshot(book.db(), day("2026-05-01"))),
              (QStringList{"2", "10", "A02", "a2", "A10", "B1", "b2"}));
    const Snapshot s = readSnapshot(book.db(), day("2026-09-20"));
    EXPECT_EQ(s.colony(s.livingNamed(u"b2").value()).label, "B2");
    EXPECT_EQ(s.livingNamed(u"b2@2025-05-01"), std::nullopt);
}

TEST(Snapshot, ResolvesStaysAndHeadings) {
    TestBook book;
    const Yard north = book.yard("North");
    const Colony a = book.colony(north, "A", day("2026-05-01"));
    const Stand two = book.stand(north, "two", {1000, 2000});
    const Stand three = book.stand(book.yard("South"), "three");
    book.carry(a, two, day("2026-06-01"), 90);
    book.carry(a, three, day("2026-07-01"));
    EXPECT_EQ(stays(readSnapshot(book.db(), day("2026-05-31")), "A"), "A 1 2026-05-01.. 180");
    EXPECT_EQ(stays(readSnapshot(book.db(), day("2026-06-01")), "A"),
              "A 1 2026-05-01..2026-06-01 180 | two 2026-06-01.. 90");
    const Snapshot s = readSnapshot(book.db(), day("2026-09-20"));
    EXPECT_EQ(stays(s, "A"), "A 1 2026-05-01..2026-06-01 180 | two 2026-06-01..2026-07-01 90 | three 2026-07-01.. 90");
    EXPECT_EQ(s.yard(s.placeOf({0})->yard).name, "South");
    EXPECT_EQ(s.staysOf({0})[1].at, (MmPoint{1000, 2000}));
}

TEST(Snapshot, KeepsCarriesOfTheFirstAndTheLastDay) {
    TestBook book;
    const Yard north = book.yard("North");
    Colony a = book.colony(north, "A", day("2026-05-01"));
    book.carry(a, book.stand(north, "first day"), day("2026-05-01"));
    book.carry(a, book.stand(north, "last day"), day("2026-08-01"));
    book.end(a, day("2026-08-01"), EndKind::Dead);
    EXPECT_EQ(stays(readSnapshot(book.db(), day("2026-08-01")), "A"),
              "A 1 2026-05-01..2026-05-01 180 | first day 2026-05-01..2026-08-01 180 | "
              "last day 2026-08-01..2026-08-01 180");
    EXPECT_EQ(stays(readSnapshot(book.db(), day("2026-07-31")), "A"),
              "A 1 2026-05-01..2026-05-01 180 | first day 2026-05-01.. 180");
}

TEST(Snapshot, ReadsWhatIsDatedUpToTheDayInItsOrder) {
    TestBook book;
    const Yard north = book.yard("North");
    const Colony a = book.colony(north, "A", day("2026-05-01"));
    const Colony b = book.colony(north, "B", day("2026-05-01"));
    const auto transfer = [&](const char* on, const Colony& from, const Colony& to, TransferKind what) {
        Transfer t;
        t.day = day(on);
        t.from = from.id;
        t.to = to.id;
        t.what = what;
        book.add(t);
    };
    transfer("2026-07-02", a, b, TransferKind::Feed);
    transfer("2026-07-01", b, a, TransferKind::Brood);
    transfer("2026-07-03", a, b, TransferKind::Box);
    Result r;
    r.yard = north.id;
    r.day = day("2026-07-02");
    r.verdict = Verdict::Order;
    r.method = Method::Inspector;
    r.by = "inspector";
    r.paper = "12/26";
    book.add(r);
    Treatment t;
    t.colony = b.id;
    t.day = day("2026-07-02");
    t.product = "strips";
    t.substance = "thymol";
    t.days = 42;
    book.add(t);
    const Snapshot s = readSnapshot(book.db(), day("2026-07-02"));
    ASSERT_EQ(s.transfers.size(), 2u);
    EXPECT_EQ(s.transfers[0].what, TransferKind::Brood);
    EXPECT_EQ(s.transfers[0].from, (ColonyIx{1}));
    EXPECT_EQ(s.transfers[1].what, TransferKind::Feed);
    ASSERT_EQ(s.results.size(), 1u);
    EXPECT_EQ(s.results[0].colony.value, -1);
    EXPECT_EQ(s.results[0].yard, (YardIx{0}));
    EXPECT_EQ(s.results[0].verdict, Verdict::Order);
    EXPECT_EQ(s.results[0].paper, "12/26");
    ASSERT_EQ(s.treatments.size(), 1u);
    EXPECT_EQ(s.treatments[0].colony, (ColonyIx{1}));
    EXPECT_EQ(s.treatments[0].days, 42);
    EXPECT_FALSE(s.treatments[0].antibiotic);
    const Snapshot before = readSnapshot(book.db(), day("2026-07-01"));
    EXPECT_EQ(before.transfers.size() + before.results.size() + before.treatments.size(), 1u);
}

TEST(Snapshot, ReadsTheSettings) {
    TestBook book;
    writeRow(book.db(), {Table::Setting, 1, std::nullopt, Row{QString("gain.min"), QString("75")}});
    EXPECT_EQ(readSnapshot(book.db(), day("2026-09-20")).settings.gainMin, 75);
}

} // namespace
