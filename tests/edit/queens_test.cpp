#include "core/edit/queens.h"
#include "tests/edit/put_right_fixture.h"

namespace tests::edit {

namespace {

class Queens : public PutRight {
protected:
    static Queen queen(ColonyId colony, Day since, std::optional<int> born = {}) {
        Queen q;
        q.colony = colony;
        q.since = since;
        q.born = born;
        return q;
    }
    static Work fresh(const Queen& q, std::optional<QueenBefore> before = {}) {
        return [=](const EditContext& c) { return newQueen(c, q, before); };
    }
    static Work gone(QueenId id, Day day, QueenFate fate) {
        return [=](const EditContext& c) { return endQueen(c, id, day, fate); };
    }
    static Work now(const Queen& q) {
        return [=](const EditContext& c) { return changeQueen(c, q); };
    }
    static Work moved(QueenId id, ColonyId to, Day day, std::optional<QueenBefore> before = {}) {
        return [=](const EditContext& c) { return moveQueen(c, id, to, day, before); };
    }
    static Work queenBack(QueenId id) {
        return [=](const EditContext& c) { return takeBackQueen(c, id); };
    }
    std::vector<Queen> of(ColonyId id) { return session->queensOf(id); }
    std::optional<int> born(ColonyId id) { return session->colony(id)->queenBorn; }
};

constexpr QueenFate kDead = QueenFate::Dead;

TEST_F(Queens, ANewQueenComesAfterTheOneBefore) {
    EXPECT_EQ(done(fresh(queen(k5, dayOf(2026, 5, 1), 2024))), "New queen of 5 on 2026-05-01 (born 2024)");
    EXPECT_EQ(born(k5), 2024);
    const Queen next = queen(k5, kDay, 2026);
    EXPECT_EQ(refusal(fresh(next)), "5 has a queen since 2026-05-01: what became of her?");
    EXPECT_EQ(done(fresh(next, QueenBefore{QueenFate::Replaced, {}})), "New queen of 5 on 2026-09-10 (born 2026)");
    EXPECT_EQ(of(k5).at(0).until, kDay);
    EXPECT_EQ(of(k5).at(0).fate, QueenFate::Replaced);
    EXPECT_EQ(born(k5), 2026);
    // The day before, too; her year not known: the old one's does not stand for her.
    EXPECT_NE(done(fresh(queen(k5, kDay + 5), QueenBefore{QueenFate::Superseded, kDay + 4})), "");
    EXPECT_EQ(of(k5).at(1).until, kDay + 4);
    EXPECT_EQ(born(k5), std::nullopt);
}

TEST_F(Queens, OneOfThePastNeedsHerEndAndLeavesTheYear) {
    apply(fresh(queen(k5, kDay, 2026)));
    Queen old = queen(k5, dayOf(2026, 6, 1), 2023);
    EXPECT_EQ(refusal(fresh(old)),
              "5 has a queen since 2026-06-01; what became of her before the next one came on 2026-09-10?");
    old.until = kDay + 1;
    EXPECT_EQ(refusal(fresh(old)), "What became of her: expected a word where she has an end, found nothing.");
    old.fate = QueenFate::Missing;
    EXPECT_EQ(refusal(fresh(old)), "5 had a queen until 2026-09-11; the next one cannot have come on 2026-09-10.");
    old.until.reset();
    EXPECT_EQ(refusal(fresh(old)), "Until: expected the day where it is said what became of her, found nothing.");
    old.until = dayOf(2026, 5, 30);
    EXPECT_EQ(refusal(fresh(old)), "Until: 2026-05-30 is before she began, on 2026-06-01.");
    old.until = kDay;
    EXPECT_NE(done(fresh(old)), "");
    EXPECT_EQ(born(k5), 2026);
    EXPECT_EQ(refusal(fresh(queen(k5, kDay), QueenBefore{})),
              "5 has a queen from 2026-09-10 on already; expected one queen a day to begin.");
}

TEST_F(Queens, WhatCannotBeIsRefusedInOneSentence) {
    EXPECT_EQ(refusal(fresh(queen(k5, dayOf(2026, 4, 1)))), "5 began on 2026-05-01; 2026-04-01 is before that.");
    EXPECT_EQ(refusal(fresh(queen(k5, kDay, 1989))), "Born: 1989 is not from 1990 to 2100.");
    EXPECT_EQ(refusal(fresh(queen(k5, kDay, 2027))), "Born: 2027 is after the day that she begins, 2026-09-10.");
    Queen q = queen(k5, kDay);
    q.tag = QString(13, u'7');
    EXPECT_EQ(refusal(fresh(q)), "Number on her disc: expected at most 12 characters, found 13.");
    q = queen(k5, kDay);
    q.mother = newColony(north, QStringLiteral("7"), {4000, 0}, kDay + 1);
    EXPECT_EQ(refusal(fresh(q)), "Raised from: 7 began on 2026-09-11; a queen of 2026-09-10 cannot be of it.");
    EXPECT_EQ(refusal(gone(QueenId{9}, kDay, kDead)), "That queen is no longer in the book.");
}

TEST_F(Queens, WhatBecameOfHerIsNotedAndPutRight) {
    apply(fresh(queen(k5, dayOf(2026, 6, 1), 2024)));
    const QueenId id = of(k5).at(0).id;
    EXPECT_EQ(refusal(gone(id, dayOf(2026, 5, 20), kDead)), "Until: 2026-05-20 is before she began, on 2026-06-01.");
    EXPECT_EQ(done(gone(id, kDay, QueenFate::Missing)),
              "Noted of the queen of 5 since 2026-06-01: missing on 2026-09-10");
    EXPECT_EQ(born(k5), 2024) << "the latest's year";
    EXPECT_EQ(refusal(gone(id, kDay, kDead)),
              "What became of the queen of 5 since 2026-06-01 is in the book: missing on 2026-09-10.");
    Queen again = of(k5).at(0);
    again.until.reset();
    again.fate.reset();
    again.born = 2025;
    again.mark = QueenMark::Blue;
    EXPECT_EQ(done(now(again)), "Changed the queen of 5 since 2026-06-01");
    EXPECT_EQ(born(k5), 2025);
    EXPECT_FALSE(apply(now(again))) << "says so already";
    again.colony = k6;
    EXPECT_EQ(refusal(now(again)),
              "A queen's row stays its colony's: move her, or take it back and write it for the other.");
}

TEST_F(Queens, WhatBecameOfHerIsTakenBack) {
    apply(fresh(queen(k5, dayOf(2026, 6, 1), 2024)));
    const QueenId id = of(k5).at(0).id;
    const auto endBackOf = [id](const EditContext& c) { return takeBackQueenEnd(c, id); };
    EXPECT_EQ(refusal(endBackOf), "What became of the queen of 5 since 2026-06-01 is not in the book.");
    apply(gone(id, kDay, QueenFate::Moved));
    EXPECT_EQ(done(endBackOf),
              "Took back what became of the queen of 5 since 2026-06-01 (moved to another colony on 2026-09-10)");
    EXPECT_FALSE(of(k5).at(0).until);
    apply(gone(id, kDay, QueenFate::Swarmed));
    apply(fresh(queen(k5, kDay + 2)));
    EXPECT_EQ(refusal(endBackOf),
              "5 has a queen since 2026-06-01; what became of her before the next one came on 2026-09-12?");
}

TEST_F(Queens, ATakenBackQueenLeavesTheOneBeforeAtTheHead) {
    apply(fresh(queen(k5, dayOf(2026, 6, 1), 2024)));
    apply(fresh(queen(k5, kDay, 2026), QueenBefore{}));
    EXPECT_EQ(done(queenBack(of(k5).at(1).id)), "Took back the queen of 5 since 2026-09-10");
    EXPECT_EQ(of(k5).at(0).until, std::nullopt);
    EXPECT_EQ(born(k5), 2024);
    // What befell the one before by itself stays.
    apply(fresh(queen(k5, kDay, 2026), QueenBefore{kDead, {}}));
    EXPECT_NE(done(queenBack(of(k5).at(1).id)), "");
    EXPECT_EQ(of(k5).at(0).fate, kDead);
    EXPECT_NE(done(queenBack(of(k5).at(0).id)), "");
    EXPECT_EQ(born(k5), std::nullopt);
}

TEST_F(Queens, IsMovedToAnotherColony) {
    Queen q = queen(k5, dayOf(2026, 6, 1), 2024);
    q.mark = QueenMark::Green;
    q.tag = QStringLiteral("17");
    apply(fresh(q));
    apply(fresh(queen(k6, dayOf(2026, 6, 1), 2022)));
    const QueenId id = of(k5).at(0).id;
    EXPECT_EQ(refusal(moved(id, k5, kDay)), "She is moved from one colony to another.");
    EXPECT_EQ(refusal(moved(id, k6, kDay)), "6 has a queen since 2026-06-01: what became of her?");
    EXPECT_EQ(done(moved(id, k6, kDay, QueenBefore{})), "Moved the queen of 5 since 2026-06-01 to 6 on 2026-09-10");
    EXPECT_EQ(of(k5).at(0).fate, QueenFate::Moved);
    const Queen there = of(k6).at(1);
    EXPECT_EQ(there.tag, QStringLiteral("17"));
    EXPECT_EQ(there.mark, QueenMark::Green);
    EXPECT_EQ(there.since, kDay);
    EXPECT_EQ(born(k6), 2024);
    EXPECT_EQ(refusal(moved(id, k6, kDay)),
              "What became of the queen of 5 since 2026-06-01 is in the book: she headed it until 2026-09-10.");
}

TEST_F(Queens, AColonysEndGuessesNothingOfHer) {
    log(k5, kDay);
    log(k6, kDay);
    apply(fresh(queen(k5, dayOf(2026, 6, 1), 2024)));
    const Queen before = of(k5).at(0);
    unite(k5, k6, kDay);
    EXPECT_EQ(of(k5).at(0), before) << "not said to be dead";
    EXPECT_EQ(headedUntil(before, session->colony(k5)->ended), kDay);
    EXPECT_EQ(of(k6).size(), 0u);
    EXPECT_EQ(problems(), "");
    // Who knows it writes it: killed before the union, or she heads the host now.
    EXPECT_EQ(refusal(gone(before.id, kDay + 1, kDead)), "5 ended on 2026-09-10; 2026-09-11 is after that.");
    EXPECT_EQ(done(moved(before.id, k6, kDay)), "Moved the queen of 5 since 2026-06-01 to 6 on 2026-09-10");
    EXPECT_EQ(born(k6), 2024);
    const ColonyId made = divide(k6, QStringLiteral("8"), {4000, 0}, kDay + 2);
    EXPECT_EQ(of(made).size(), 0u);
    EXPECT_EQ(of(k6).size(), 1u) << "she stays where she was";
    end(k6, kDay + 3, EndKind::Sold);
    EXPECT_EQ(of(k6).at(0).until, std::nullopt);
    EXPECT_EQ(problems(), "");
}

TEST_F(Queens, LieWithinTheLifeOfTheirColony) {
    apply(fresh(queen(k5, kDay)));
    EXPECT_EQ(refusal([&](const EditContext& c) { return endColony(c, k5, kDay - 1, EndKind::Dead); }),
              "5 has a queen on 2026-09-10; it cannot have ended before that.");
    EXPECT_EQ(refusal(colony(k5, [](Colony& c) { c.since = kDay + 1; })),
              "5 has a queen on 2026-09-10; it cannot have begun after that.");
    EXPECT_EQ(refusal(back(k5)), "5 has a queen on 2026-09-10; only a colony that no record names is taken back.");
    apply(gone(of(k5).at(0).id, kDay + 5, kDead));
    EXPECT_EQ(refusal([&](const EditContext& c) { return endColony(c, k5, kDay + 4, EndKind::Dead); }),
              "5 has the end of a queen on 2026-09-15; it cannot have ended before that.");
    Queen q = queen(k6, kDay);
    const ColonyId mother = newColony(north, QStringLiteral("7"), {4000, 0}, kDay);
    q.mother = mother;
    apply(fresh(q));
    EXPECT_EQ(refusal(colony(mother, [](Colony& c) { c.since = kDay + 1; })),
              "7 has a queen raised from it on 2026-09-10; it cannot have begun after that.");
    EXPECT_EQ(refusal(back(mother)),
              "7 has a queen raised from it on 2026-09-10; only a colony that no record names is taken back.");
}

TEST_F(Queens, TheYearPutRightOnTheColonyIsTheQueens) {
    apply(fresh(queen(k5, kDay, 2025)));
    EXPECT_NE(done(colony(k5, [](Colony& c) { c.queenBorn = 2026; })), "");
    EXPECT_EQ(of(k5).at(0).born, 2026);
    EXPECT_EQ(refusal(colony(k5, [](Colony& c) { c.queenBorn = 2027; })),
              "Born: 2027 is after the day that she begins, 2026-09-10.");
    EXPECT_NE(done(colony(k6, [](Colony& c) { c.queenBorn = 2025; })), "") << "one of whom nothing else is known";
}

} // namespace

} // namespace tests::edit
