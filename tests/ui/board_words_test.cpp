#include "ui/board/difference_words.h"
#include "ui/board/limit_text.h"
#include "ui/board/pair_typed.h"

#include <gtest/gtest.h>

// What is typed on the board, and what it says. Source: own calculation.

namespace {

using ui::board::Limit;
using ui::board::limitTyped;

TEST(LimitTyped, IsUnionsOrATime) {
    EXPECT_EQ(limitTyped(QStringLiteral(" 6 ")), (Limit{6, std::nullopt}));
    EXPECT_EQ(limitTyped(QStringLiteral("1 union")), (Limit{1, std::nullopt}));
    EXPECT_EQ(limitTyped(QStringLiteral("0")), (Limit{0, std::nullopt}));
    EXPECT_EQ(limitTyped(QStringLiteral("90 min")), (Limit{std::nullopt, 90}));
    EXPECT_EQ(limitTyped(QStringLiteral("3h")), (Limit{std::nullopt, 180}));
    EXPECT_EQ(limitTyped(QStringLiteral("2,5 h")), (Limit{std::nullopt, 150}));
    EXPECT_EQ(limitTyped(QStringLiteral("1 h 30 min")), (Limit{std::nullopt, 90}));
    EXPECT_EQ(limitTyped(QString()), Limit{});
}

TEST(LimitTyped, OrNothingItKnows) {
    for (const char* text : {"a few", "-3", "3.5", "0 min", "h", "6 hives", "1 h 30 min or so", "0 h"})
        EXPECT_FALSE(limitTyped(QLatin1StringView(text))) << text;
}

TEST(LimitTyped, IsTypedAgainAsItIsShown) {
    for (const Limit& limit : {Limit{6, {}}, Limit{{}, 45}, Limit{{}, 180}, Limit{{}, 135}, Limit{}})
        EXPECT_EQ(limitTyped(ui::board::limitAsTyped(limit)), limit) << ui::board::limitAsTyped(limit).toStdString();
}

core::rules::PlanGist::Joined joined(const char* moved, const char* host, int gain) {
    core::rules::PlanGist::Joined out;
    out.movedName = QLatin1StringView(moved);
    out.hostName = QLatin1StringView(host);
    out.gain = gain;
    return out;
}

TEST(DifferenceWords, ALineAKindAndBothGains) {
    using core::rules::PlanChange;
    core::rules::PlanDifference d;
    d.unionsBefore = 2;
    d.unions = 1;
    d.gainBefore = 812;
    d.gain = 305;
    d.rows = {{PlanChange::UnionWent, joined("K2", "K4", 507), 0, false},
              {PlanChange::UnionCame, joined("K2", "K9", 305), 0, false},
              {PlanChange::LeftAlone, joined("K4", "", 0), 0, true}};
    EXPECT_EQ(ui::board::differenceHead(d), QStringLiteral("Now 1 union, gain 0.31; before 2 unions, gain 0.81."));
    EXPECT_EQ(ui::board::differenceLines(d),
              (QStringList{QStringLiteral("Went: K2 → K4 (0.51)."), QStringLiteral("Came: K2 → K9 (0.31)."),
                           QStringLiteral("Alone now: K4 (at risk).")}));
}

TEST(DifferenceWords, OfManyOnlySomeInShort) {
    using core::rules::PlanChange;
    core::rules::PlanDifference d;
    for (const char* moved : {"K1", "K2", "K3", "K4", "K5"})
        d.rows.push_back({PlanChange::UnionCame, joined(moved, "K9", 100), 0, false});
    EXPECT_EQ(ui::board::differenceLines(d, 3),
              QStringList(QStringLiteral("Came: K1 → K9 (0.10), K2 → K9 (0.10), K3 → K9 (0.10), and 2 more.")));
    EXPECT_EQ(ui::board::differenceLines(d, 4), ui::board::differenceLines(d)) << "one more is told as it is";
}

ui::desk::Reading reading(const QStringList& labels) {
    ui::desk::Reading r;
    for (const QString& label : labels) {
        core::SnapColony c;
        c.id = {static_cast<qint64>(r.snapshot.colonies.size()) + 1};
        c.label = c.shown = label;
        r.snapshot.colonies.push_back(c);
    }
    return r;
}

TEST(PairTyped, TwoLabelsInAnyCase) {
    const auto r =
        reading({QStringLiteral("K2"), QStringLiteral("K7"), QStringLiteral("Old oak"), QStringLiteral("A+B")});
    for (const char* text : {"K2 + K7", "k2 k7", "K2,K7", "K2  +K7", " K2+K7 "}) {
        const auto pair = ui::board::pairTyped(r, QLatin1StringView(text));
        EXPECT_EQ(pair.problem, QString()) << text;
        EXPECT_EQ(pair.a, core::ColonyIx{0}) << text;
        EXPECT_EQ(pair.b, core::ColonyIx{1}) << text;
    }
    EXPECT_EQ(ui::board::pairTyped(r, QStringLiteral("old oak k2")).a, core::ColonyIx{2});
    EXPECT_EQ(ui::board::pairTyped(r, QStringLiteral("A+B + K2")).a, core::ColonyIx{3});
}

TEST(PairTyped, SaysWhatIsWrong) {
    const auto r = reading({QStringLiteral("K2"), QStringLiteral("K7")});
    EXPECT_TRUE(ui::board::pairTyped(r, QStringLiteral("K2 + K2")).problem.contains(QStringLiteral("twice")));
    EXPECT_TRUE(ui::board::pairTyped(r, QStringLiteral("K2 + K9")).problem.contains(QStringLiteral("K9")));
    EXPECT_TRUE(ui::board::pairTyped(r, QStringLiteral("K2")).problem.contains(QStringLiteral("two labels")));
    EXPECT_TRUE(ui::board::pairTyped(r, QString()).problem.contains(QStringLiteral("two labels")));
}

} // namespace
