#include "core/edit/bulk_change.h"
#include "tests/edit/put_right_fixture.h"

namespace tests::edit {

namespace {

/// Four colonies with a visit each.
class BulkChange : public PutRight {
protected:
    std::vector<ColonyId> colonies{k5, k6, newColony(north, QStringLiteral("7"), {4000, 0}),
                                   newColony(north, QStringLiteral("8"), {6000, 0})};
    std::vector<VisitId> visits;

    void SetUp() override {
        for (size_t i = 0; i < colonies.size(); ++i) {
            log(colonies[i], kDay, [&](Visit& v) {
                v.stores = Quarters{static_cast<qint32>(4 * i)};
                v.note = i % 2 == 0 ? QStringLiteral("calm") : QString();
            });
            visits.push_back(session->visitsOf(colonies[i], 1).front().id);
        }
    }
    Visit visitNow(size_t i) const { return session->visitsOf(colonies[i], 1).front(); }
    Work change(const VisitPut& put) const {
        return [=, this](const EditContext& c) { return changeVisits(c, visits, put); };
    }
};

TEST_F(BulkChange, WritesOnlyWhatIsSet) {
    VisitPut put;
    put.supers = std::optional(1);
    put.queen = std::optional(QueenSeen::Eggs);
    put.note = PutNote{QStringLiteral(" fed "), true};
    std::vector<Visit> before;
    for (size_t i = 0; i < visits.size(); ++i) before.push_back(visitNow(i));
    EXPECT_EQ(done(change(put)), "Changed 4 visits");
    for (size_t i = 0; i < visits.size(); ++i) {
        Visit expected = before[i];
        expected.supers = 1;
        expected.queen = QueenSeen::Eggs;
        expected.note = i % 2 == 0 ? QStringLiteral("calm\nfed") : QStringLiteral("fed");
        EXPECT_EQ(visitNow(i), expected) << i;
    }
}

TEST_F(BulkChange, SaysHowManyChangedAndNothingWhereNoneDid) {
    VisitPut put;
    put.stores = std::optional(Quarters{4}); // one of them says so already
    EXPECT_EQ(done(change(put)), "Changed 3 visits");
    const auto before = session->history(1).front().seq;
    EXPECT_FALSE(apply(change(put)));
    EXPECT_FALSE(apply(change({})));
    EXPECT_EQ(session->history(1).front().seq, before);
    put.stores = Put<Quarters>{std::optional<Quarters>{}};
    EXPECT_EQ(done(change(put)), "Changed 4 visits");
    EXPECT_FALSE(visitNow(2).stores);
}

TEST_F(BulkChange, IsRefusedAsAWholeWithTheFirstThatCannotBe) {
    log(colonies[2], kDay + 1);
    VisitPut put;
    put.day = kDay + 1;
    EXPECT_EQ(refusal(change(put)),
              "7, visit of 2026-09-10: 7 has a visit on 2026-09-11 already; expected one visit a colony a day.");
    put = {};
    put.broodChecked = std::optional(5); // more than the four brood frames of each
    EXPECT_EQ(refusal(change(put)).rfind("5, visit of 2026-09-10: ", 0), 0u);
}

TEST_F(BulkChange, MovesTwoVisitsOfOneColonyToOneDayNever) {
    log(k5, kDay + 3);
    visits.push_back(session->visitsOf(k5, 1).front().id);
    VisitPut put;
    put.day = kDay + 6;
    EXPECT_NE(refusal(change(put)).find("5 has a visit on 2026-09-16 already"), std::string::npos);
}

TEST_F(BulkChange, TakesSeveralVisitsBackInOneUndo) {
    EXPECT_EQ(done([&](const EditContext& c) { return takeBackVisits(c, visits); }), "Took back 4 visits");
    for (const ColonyId colony : colonies) EXPECT_TRUE(session->visitsOf(colony, 1).empty());
    EXPECT_EQ(refusal([&](const EditContext& c) { return takeBackVisits(c, visits); }),
              "A visit: That visit is no longer in the book.");
}

TEST_F(BulkChange, LogsTheSameVisitOfEach) {
    Visit like;
    like.day = kDay + 5;
    like.supers = 1;
    like.signs.add(Sign::Chalkbrood);
    like.note = QStringLiteral("supers on");
    EXPECT_EQ(done([&](const EditContext& c) { return logVisits(c, colonies, like); }),
              "Logged visits of 4 colonies on 2026-09-15");
    for (size_t i = 0; i < colonies.size(); ++i) {
        EXPECT_EQ(visitNow(i).day, like.day);
        EXPECT_EQ(visitNow(i).supers, 1);
        EXPECT_TRUE(visitNow(i).signs.has(Sign::Chalkbrood));
    }
    EXPECT_EQ(refusal([&](const EditContext& c) { return logVisits(c, colonies, like); }),
              "5: 5 has a visit on 2026-09-15 already; expected one visit a colony a day.");
}

TEST_F(BulkChange, ChangesTheDataOfSeveralColonies) {
    ColonyPut put;
    put.queenBorn = std::optional(2025);
    put.note = PutNote{QStringLiteral("requeened")};
    EXPECT_EQ(done([&](const EditContext& c) { return changeColonies(c, colonies, put); }),
              "Changed the data of 4 colonies");
    for (const ColonyId colony : colonies) {
        EXPECT_EQ(session->colony(colony)->queenBorn, 2025);
        EXPECT_EQ(session->colony(colony)->note, "requeened");
    }
    put = {};
    put.queenBorn = std::optional(3000);
    EXPECT_EQ(refusal([&](const EditContext& c) { return changeColonies(c, colonies, put); }).rfind("5: ", 0), 0u);
}

TEST_F(BulkChange, NothingSelectedAndFarTooManyAreRefused) {
    EXPECT_EQ(refusal([](const EditContext& c) { return takeBackVisits(c, {}); }), "Nothing is selected.");
    const std::vector<VisitId> many(kMostAtOnce + 1, visits.front());
    EXPECT_EQ(refusal([&](const EditContext& c) { return takeBackVisits(c, many); }),
              "2001 are selected; at most 2000 are changed at once.");
}

// Rule 4.4.2: signs of American foulbrood hold; several visits are taken back at once only as a correction.
TEST_F(BulkChange, AHoldThatRestsOnOneOfThemAsksForACorrection) {
    log(k6, kDay + 2, [](Visit& v) { v.signs.add(Sign::Afb); });
    visits.push_back(session->visitsOf(k6, 1).front().id);
    const auto before = rowsText(path());
    const Edit edit = [&](const EditContext& c) { return takeBackVisits(c, visits); };
    EXPECT_EQ(thrownBy([&] { session->apply(edit); }).kind, Error::Kind::Correction);
    EXPECT_EQ(rowsText(path()), before);
    const auto line =
        session->apply(edit, Correction{QStringLiteral("Ana"), QStringLiteral("Typed of the wrong hive")});
    ASSERT_TRUE(line);
    EXPECT_TRUE(session->visitsOf(k6, 1).empty());
}

} // namespace

} // namespace tests::edit
