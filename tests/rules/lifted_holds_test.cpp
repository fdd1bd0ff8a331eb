#include "core/rules/holds_then.h"
#include "core/rules/lifted_holds.h"
#include "tests/rules/hold_book.h"
#include "tests/support/csv_snapshot.h"
#include "tests/support/random_book.h"

#include <gtest/gtest.h>

#include <QStringList>

#include <algorithm>

namespace tests::rules {

namespace {

using namespace core;
using namespace core::rules;

QString onDay(const char* day) { return QString::fromLatin1(day); }

constexpr const char* kBy[] = {"release", "release of the yard", "negative", "check", "ended", "elsewhere"};

/// "S afb-suspected 2026-06-01..2026-06-20 by negative; …", oldest last.
std::string lifted(const HoldBook& book, const char* first, const char* last, int apart = 7) {
    const Snapshot whole = book.on(QStringLiteral("9999-12-31"));
    QStringList out;
    for (const LiftedHold& h : liftedHolds(whole, *parseIsoDay(onDay(first)), *parseIsoDay(onDay(last)), apart)) {
        const auto colony = std::ranges::find(whole.colonies, h.colony, &SnapColony::id);
        out << QStringLiteral("%1 %2 %3..%4%5 by %6")
                   .arg(colony->label, holdWord(h.kind), isoText(h.from), isoText(h.to),
                        h.before ? QStringLiteral(" (before)") : QString(),
                        QString::fromLatin1(kBy[static_cast<size_t>(h.by)]));
        EXPECT_EQ(h.result.has_value(), h.by <= LiftedBy::Negative);
    }
    return out.join(QStringLiteral("; ")).toStdString();
}

TEST(LiftedHolds, ANegativeEndsASuspicion) {
    HoldBook book;
    book.colony("S").sign("S", onDay("2026-06-01")).result("S", onDay("2026-06-21"), "negative");
    EXPECT_EQ(lifted(book, "2026-01-01", "2026-12-31"), "S afb-suspected 2026-06-01..2026-06-20 by negative");
    EXPECT_EQ(lifted(book, "2026-01-01", "2026-06-20"), "") << "it stands";
    EXPECT_EQ(lifted(book, "2026-06-10", "2026-12-31"), "S afb-suspected 2026-06-10..2026-06-20 (before) by negative");
    // A field kit's negative ends nothing.
    HoldBook field;
    field.colony("S").sign("S", onDay("2026-06-01")).result("S", onDay("2026-06-21"), "negative", "field");
    EXPECT_EQ(lifted(field, "2026-01-01", "2026-12-31"), "");
}

TEST(LiftedHolds, AReleaseEndsAConfirmedCaseAndAnOrder) {
    HoldBook book;
    book.colony("S").result("S", onDay("2026-06-01"), "positive").result("S", onDay("2026-08-01"), "release", "inspector");
    book.colony("H", "Hill").ofYard("Hill", onDay("2026-06-05"), "order").ofYard("Hill", onDay("2026-07-05"), "release");
    EXPECT_EQ(lifted(book, "2026-01-01", "2026-12-31"), "S afb-confirmed 2026-06-01..2026-07-31 by release; "
                                                        "H order 2026-06-05..2026-07-04 by release of the yard");
}

TEST(LiftedHolds, ACheckEndsADoubtAndTheAnswerOfASourceFreesItsYard) {
    HoldBook book;
    book.colony("D", "Hill").sign("D", onDay("2026-06-01"), "brood-doubt").check("D", onDay("2026-06-22"));
    EXPECT_EQ(lifted(book, "2026-01-01", "2026-12-31"), "D brood-doubt 2026-06-01..2026-06-21 by check");
    HoldBook yard;
    yard.colony("S").colony("N").sign("S", onDay("2026-06-01")).result("S", onDay("2026-06-21"), "negative");
    const std::string all = lifted(yard, "2026-01-01", "2026-12-31");
    EXPECT_NE(all.find("N afb-yard 2026-06-01..2026-06-20 by elsewhere"), std::string::npos) << all;
    EXPECT_NE(all.find("S afb-suspected 2026-06-01..2026-06-20 by negative"), std::string::npos) << all;
}

TEST(LiftedHolds, OfAColonyThatEndedNothingWasLifted) {
    HoldBook book;
    book.ended("S", "Home", onDay("2026-06-11")).sign("S", onDay("2026-06-01"));
    EXPECT_EQ(lifted(book, "2026-01-01", "2026-12-31"), "S afb-suspected 2026-06-01..2026-06-10 by ended");
}

TEST(LiftedHolds, AMissingBroodCheckIsNotTold) {
    HoldBook book;
    book.colony("C").check("C", onDay("2026-06-01"));
    EXPECT_EQ(lifted(book, "2026-01-01", "2026-12-31"), "");
}

// Source: own calculation: the rules themselves on each of the days.
TEST(LiftedHolds, TheirFirstAndLastDaysAreExact) {
    size_t found = 0;
    for (std::uint64_t seed = 1; seed <= 3; ++seed) {
        const support::RandomBook book = support::randomBook(seed);
        support::CsvTables tables;
        for (const auto& [file, text] : book.files)
            tables[QString::fromStdString(file).chopped(4)] = support::rowsOfCsv(QString::fromStdString(text));
        const Snapshot whole = support::snapshotOf(tables, dayOf(9999, 12, 31));
        const Day last = parseIsoDay(QString::fromStdString(book.days.back())).value();
        for (const LiftedHold& h : liftedHolds(whole, last - 100, last, 10)) {
            const auto stands = [&](Day on) {
                const auto all = holdsThen(whole, on);
                return std::ranges::find(all, HeldThen{h.colony, h.kind}) != all.end();
            };
            EXPECT_TRUE(stands(h.from) && stands(h.to));
            EXPECT_FALSE(stands(h.to + 1));
            EXPECT_TRUE(h.before ? h.from == last - 100 : !stands(h.from - 1));
            ++found;
        }
    }
    EXPECT_GT(found, 5u); // else nothing was tried
}

TEST(LiftedHolds, EndAtOnceWhereTheyAreStopped) {
    HoldBook book;
    book.colony("S").sign("S", onDay("2026-06-01")).result("S", onDay("2026-06-21"), "negative");
    int asked = 0;
    const auto none = liftedHolds(book.on(QStringLiteral("9999-12-31")), dayOf(2026, 1, 1), dayOf(2026, 12, 31), 1,
                                  [&] { return ++asked > 3; });
    EXPECT_TRUE(none.empty());
    EXPECT_EQ(asked, 4);
}

} // namespace

} // namespace tests::rules
