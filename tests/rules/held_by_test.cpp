#include "core/rules/held_by.h"

#include "tests/rules/hold_book.h"

#include <gtest/gtest.h>

namespace {

using tests::rules::HoldBook;

/// Labels of those held by what was seen of the colonies named with their days ("K1 2026-05-01").
std::string heldBy(const HoldBook& book, const char* on, const std::vector<std::pair<const char*, const char*>>& seen) {
    const core::Snapshot s = book.on(QString::fromLatin1(on));
    std::vector<core::rules::SignSeen> signs;
    for (const auto& [label, day] : seen)
        signs.push_back({*s.colonyNamed(QString::fromLatin1(label)), *core::parseIsoDay(QString::fromLatin1(day))});
    QStringList out;
    for (const core::ColonyIx colony : core::rules::heldBy(s, core::rules::holds(s), signs))
        out << s.colony(colony).label;
    return out.join(u' ').toStdString();
}

/// K1 to K3 in Home, H1 in Hill, all checked on 2026-06-01.
HoldBook checked() {
    HoldBook book;
    for (const char* label : {"K1", "K2", "K3"}) book.colony(label).check(label, QStringLiteral("2026-06-01"));
    book.colony("H1", "Hill").check("H1", QStringLiteral("2026-06-01"));
    return book;
}

TEST(HeldBy, AFoulbroodSignHoldsItsYardAndThoseItGaveTo) {
    HoldBook book = checked();
    book.gift("K1", "H1", QStringLiteral("2026-06-10")).sign("K1", QStringLiteral("2026-07-01"));
    EXPECT_EQ(heldBy(book, "2026-07-01", {{"K1", "2026-07-01"}}), "H1 K1 K2 K3");
    EXPECT_EQ(heldBy(book, "2026-06-30", {{"K1", "2026-07-01"}}), "") << "not seen yet";
}

TEST(HeldBy, ThoseAlreadyHeldOtherwiseAreNotCounted) {
    HoldBook book = checked();
    book.colony("H2", "Hill"); // never checked
    book.sign("K1", QStringLiteral("2026-07-01"));
    EXPECT_EQ(heldBy(book, "2026-07-01", {{"K1", "2026-07-01"}}), "K1 K2 K3");
}

TEST(HeldBy, ASecondSignInTheYardHoldsAllOfItToo) {
    HoldBook book = checked();
    book.sign("K1", QStringLiteral("2026-07-01")).sign("K2", QStringLiteral("2026-07-02"));
    EXPECT_EQ(heldBy(book, "2026-07-02", {{"K2", "2026-07-02"}}), "K1 K2 K3");
}

TEST(HeldBy, EfbAndDoubtFollowTheGiftsThroughOneThatHasEnded) {
    for (const char* sign : {"efb", "brood-doubt"}) {
        HoldBook book = checked();
        book.ended("E1", "Home", QStringLiteral("2026-06-20"), "dead");
        book.gift("K1", "E1", QStringLiteral("2026-06-10"), "brood").gift("E1", "H1", QStringLiteral("2026-06-12"));
        book.sign("K1", QStringLiteral("2026-06-25"), sign);
        EXPECT_EQ(heldBy(book, "2026-06-25", {{"K1", "2026-06-25"}}), "H1 K1") << sign;
    }
}

TEST(HeldBy, NothingOnceItIsAnswered) {
    HoldBook book = checked();
    book.sign("K1", QStringLiteral("2026-07-01"));
    book.result("K1", QStringLiteral("2026-07-03"), "negative");
    EXPECT_EQ(heldBy(book, "2026-07-02", {{"K1", "2026-07-01"}}), "K1 K2 K3");
    EXPECT_EQ(heldBy(book, "2026-07-03", {{"K1", "2026-07-01"}}), "");
}

TEST(HeldBy, APositiveHoldsAsASignDoes) {
    HoldBook book = checked();
    book.result("K1", QStringLiteral("2026-07-01"), "positive", "laboratory", "efb");
    EXPECT_EQ(heldBy(book, "2026-07-01", {{"K1", "2026-07-01"}}), "K1");
    book.result("K2", QStringLiteral("2026-07-01"), "positive");
    EXPECT_EQ(heldBy(book, "2026-07-01", {{"K2", "2026-07-01"}}), "K1 K2 K3");
}

} // namespace
