#include "core/rules/laying_workers.h"

#include "core/base/error.h"
#include "core/rules/explain.h"
#include "tests/rules/plan_book.h"

#include <gtest/gtest.h>

namespace {

using namespace core;
using namespace core::rules;
using namespace tests::rules;

bool takesPart(const Plan& plan, ColonyIx c) {
    for (const Union& u : plan.unions)
        if (u.moved == c || u.host == c) return true;
    for (const ShakeOut& s : plan.shakeOuts)
        if (s.colony == c || s.into == c) return true;
    for (const Divide& d : plan.divides)
        if (d.colony == c) return true;
    return false;
}

/// A yard of five with every partner a colony could wish for; L of so many frames has laying workers.
PlanBook yardWith(const QString& frames, const QString& day) {
    PlanBook book;
    for (int i = 0; i < 4; ++i) {
        const QString label(QChar(u'A' + static_cast<char16_t>(i)));
        book.colony(label, {{"x_m", QString::number(2 * i)}});
        book.visit(label, day,
                   {{"bees_top", i == 0 ? "3" : "7"},
                    {"queen", i == 1 ? "none" : "eggs"},
                    {"brood_frames", "8"},
                    {"brood_checked", "8"}});
    }
    book.colony("L", {{"x_m", "10"}});
    return book.visit(
        "L", day, {{"bees_top", frames}, {"queen", "laying-workers"}, {"brood_frames", "8"}, {"brood_checked", "8"}});
}

TEST(LayingWorkers, AreNeverInAUnionAShakeOutOrADivide) {
    for (const char* day : {"2026-05-10", "2026-07-10", "2026-09-10"})
        for (const char* frames : {"0.5", "1", "2", "2.25", "3", "5", "7.75", "8", "10"}) {
            const PlanBook book = yardWith(frames, day);
            const Snapshot s = book.on(day);
            const ColonyIx l = named(s, "L");
            const Plan plan = advise(s, {});
            EXPECT_FALSE(takesPart(plan, l)) << day << ' ' << frames;
            ASSERT_EQ(plan.separate.size(), 1U) << day << ' ' << frames;
            EXPECT_EQ(plan.separate[0].colony, l);
            for (const char* partner : {"A", "B", "C", "D"}) {
                PlanRequest pinned;
                pinned.pins = {{l, named(s, partner)}};
                EXPECT_THROW(advise(s, pinned), Error) << "not even pinned, with " << partner;
            }
        }
}

TEST(LayingWorkers, AreTakenUpAgainOnceAQueenIsNoted) {
    PlanBook book = yardWith("5", "2026-09-10");
    book.visit("L", "2026-09-12", {{"bees_top", "5"}, {"queen", "unknown"}});
    EXPECT_EQ(book.plan("2026-09-13").separate.size(), 1U) << "unknown does not count after laying workers";
    book.visit("L", "2026-09-14", {{"bees_top", "5"}, {"queen", "eggs"}});
    EXPECT_TRUE(book.plan("2026-09-15").separate.empty());
}

TEST(LayingWorkers, TheProcedureNeverUnitesAndSaysWhatItRestsOn) {
    QString all;
    for (const Procedure& part : layingWorkerProcedure()) {
        EXPECT_FALSE(part.sentences.empty());
        all += QString::fromUtf8(part.heading) + textOf(part.sentences);
    }
    EXPECT_TRUE(all.contains(QStringLiteral("never a union")));
    EXPECT_TRUE(all.contains(QStringLiteral("only where no colony of the yard is held")));
    EXPECT_TRUE(all.contains(QStringLiteral("disease first")));
    EXPECT_TRUE(all.contains(QStringLiteral("common practice, no source")));
}

TEST(QueenTrouble, OtherWaysNameTheDaysOfAQueenRaised) {
    // 11 to 17 days to emergence, 10 to 14 more to laying: Fell, Morse; MacFawn.
    const QString text = textOf(queenTroubleWays(dayOf(2026, 7, 1)));
    EXPECT_TRUE(text.contains(QStringLiteral("from 2026-07-22 to 2026-08-01"))) << text.toStdString();
    EXPECT_TRUE(text.contains(QStringLiteral("common practice, no source")));
}

} // namespace
