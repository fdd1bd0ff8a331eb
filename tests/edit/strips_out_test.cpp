#include "core/edit/after_union.h"
#include "core/edit/medicine_rows.h"
#include "core/edit/put_right.h"
#include "core/edit/strips_out.h"
#include "tests/edit/edit_fixture.h"

namespace tests::edit {

namespace {

/// North: 5 and 6, treated together on 2026-08-01 for 42 days: their strips are due on 2026-09-12.
class Strips : public EditTest {
protected:
    Strips() {
        Treatment t;
        t.yard = north;
        t.day = dayOf(2026, 8, 1);
        t.product = QStringLiteral("Hazel strips");
        t.substance = QStringLiteral("tau-fluvalinate");
        t.days = 42;
        t.withdrawalDays = 0;
        apply([&](const EditContext& c) { return logTreatment(c, t); });
    }
    std::string refusal(const Edit& e) {
        const auto before = rowsText(path());
        const Thrown thrown = thrownBy([&] { session->apply(e); });
        EXPECT_EQ(thrown.kind, Error::Kind::BadData);
        EXPECT_EQ(rowsText(path()), before);
        return thrown.message;
    }
    const std::optional<Correction> slip = Correction{QStringLiteral("Ana"), QStringLiteral("a slip")};
    std::string done(const Edit& e, const std::optional<Correction>& why = {}) {
        const auto before = rowsText(path());
        const auto line = session->apply(e, why);
        const auto after = rowsText(path());
        EXPECT_EQ(problems(), "");
        session->undo(why ? why : slip);
        EXPECT_EQ(rowsText(path()), before);
        session->redo(why ? why : slip);
        EXPECT_EQ(rowsText(path()), after);
        return line ? line->text.toStdString() : std::string();
    }
    Edit out(ColonyId colony, Day day) {
        return [=](const EditContext& c) { return logStripsOut(c, {{}, TreatmentId{1}, colony, day, {}, {}}); };
    }
    static Edit outOfAll(Day day) {
        return
            [=](const EditContext& c) { return logStripsOutOfAll(c, TreatmentId{1}, day, QStringLiteral("Ana"), {}); };
    }
    /// "5 in 5 due 2026-09-12" for each.
    std::string in() const {
        const auto book = medicineBook(*session);
        QStringList told;
        for (const auto& s : book.stripsIn())
            told << QStringLiteral("%1 in %2 due %3")
                        .arg(book.name(s.colony, s.due), book.name(s.hive, s.due), isoText(s.due));
        return told.join(u'\n').toStdString();
    }
    rules::MedicineEntry entry() const { return medicineBook(*session).entries().front(); }

    YardId north = newYard(QStringLiteral("North"));
    YardId south = newYard(QStringLiteral("South"));
    ColonyId k5 = newColony(north, QStringLiteral("5"), {0, 0});
    ColonyId k6 = newColony(north, QStringLiteral("6"), {2000, 0});
    ColonyId s1 = newColony(south, QStringLiteral("S1"), {0, 0});
};

TEST_F(Strips, EachColonyThatStoodThereHasThemInUntilTheyAreOut) {
    EXPECT_EQ(in(), "5 in 5 due 2026-09-12\n6 in 6 due 2026-09-12");
    EXPECT_EQ(done(out(k5, dayOf(2026, 9, 14))), "Noted that Hazel strips came out of 5 on 2026-09-14");
    EXPECT_EQ(in(), "6 in 6 due 2026-09-12");
    EXPECT_EQ(entry().withdrawal, rules::Withdrawal::StillIn) << "6 has them in, past their time";
    EXPECT_EQ(done(outOfAll(dayOf(2026, 9, 15))), "Noted that Hazel strips came out of hives on 2026-09-15: 1");
    EXPECT_EQ(in(), "");
    // The withdrawal counts from the day on which the last came out.
    EXPECT_EQ(entry().withdrawal, rules::Withdrawal::Counted);
    EXPECT_EQ(entry().honeyFrom, dayOf(2026, 9, 15));
    EXPECT_EQ(refusal(outOfAll(dayOf(2026, 9, 16))),
              "No hive has anything of the treatment with Hazel strips on 2026-08-01 in any more.");
}

TEST_F(Strips, OfOneUnitedTheHostHasThem) {
    for (const ColonyId colony : {k5, k6}) { // else they are held
        Visit v;
        v.colony = colony;
        v.day = dayOf(2026, 8, 19);
        v.broodFrames = v.broodChecked = 5;
        visit(v);
    }
    apply([&](const EditContext& c) {
        return recordUnion(c, {{}, dayOf(2026, 8, 20), LineageHow::United, k5, k6, {}, {}});
    });
    EXPECT_EQ(in(), "5 in 6 due 2026-09-12\n6 in 6 due 2026-09-12");
    EXPECT_EQ(done(out(k5, dayOf(2026, 9, 12))), "Noted that Hazel strips came out of 5 on 2026-09-12");
    EXPECT_EQ(in(), "6 in 6 due 2026-09-12");
}

TEST_F(Strips, OfOneThatDiedNobodyIsAsked) {
    apply([&](const EditContext& c) { return endColony(c, k5, dayOf(2026, 8, 20), EndKind::Dead); });
    EXPECT_EQ(in(), "6 in 6 due 2026-09-12");
    EXPECT_EQ(refusal(out(k5, dayOf(2026, 9, 1))),
              "5 had ended by 2026-09-01, and was not united into another colony.");
    EXPECT_EQ(done(out(k5, dayOf(2026, 8, 20))), "Noted that Hazel strips came out of 5 on 2026-08-20");
}

TEST_F(Strips, WhatDoesNotFitIsRefusedInASentence) {
    EXPECT_EQ(refusal(out(s1, dayOf(2026, 9, 1))),
              "S1 was not treated with Hazel strips on 2026-08-01; expected a colony that was.");
    EXPECT_EQ(refusal(out(k5, dayOf(2026, 7, 31))),
              "The treatment with Hazel strips began on 2026-08-01; 2026-07-31 is before that.");
    session->apply(out(k5, dayOf(2026, 9, 12)));
    EXPECT_EQ(refusal(out(k5, dayOf(2026, 9, 13))),
              "What 5 was treated with on 2026-08-01 is out since 2026-09-12 already.");
    EXPECT_EQ(refusal([](const EditContext& c) { return takeBackTreatment(c, TreatmentId{1}); }),
              "It is recorded that it came out of a hive on 2026-09-12; take that back first.");
    Treatment later = session->treatments().front();
    later.day = dayOf(2026, 9, 13);
    EXPECT_EQ(refusal([&](const EditContext& c) { return changeTreatment(c, later); }),
              "The treatment with Hazel strips began on 2026-09-13; 2026-09-12 is before that.");
    StripsOut now = session->stripsOut().front();
    now.day = dayOf(2026, 9, 11);
    EXPECT_EQ(done([&](const EditContext& c) { return changeStripsOut(c, now); }, slip),
              "Changed that Hazel strips came out of 5 on 2026-09-12");
    EXPECT_EQ(done([&](const EditContext& c) { return takeBackStripsOut(c, now.id); }, slip),
              "Took back that Hazel strips came out of 5 on 2026-09-11");
}

TEST_F(Strips, TakenOutAfterwardsIsInTheMedicineBookToo) {
    EXPECT_EQ(done([&](const EditContext& c) {
                  return logTakenOut(c, k5, dayOf(2026, 9, 12), QStringLiteral("hazel strips"), QStringLiteral("Ana"));
              }),
              "Took hazel strips out of 5 on 2026-09-12");
    EXPECT_EQ(in(), "6 in 6 due 2026-09-12");
}

TEST_F(Strips, WithoutAWithdrawalNothingIsCounted) {
    const Correction why{QStringLiteral("Ana"), QStringLiteral("label not at hand")};
    Treatment t = session->treatments().front();
    t.withdrawalDays.reset();
    done([&](const EditContext& c) { return changeTreatment(c, t); }, why);
    EXPECT_EQ(entry().withdrawal, rules::Withdrawal::NotRecorded);
    EXPECT_FALSE(entry().honeyFrom);
    t.withdrawalDays = 30; // of a tablet with thymol, as an example of its label (USA): 30 days
    t.days.reset();
    done([&](const EditContext& c) { return changeTreatment(c, t); }, why);
    EXPECT_EQ(entry().withdrawal, rules::Withdrawal::LastDayUnknown);
    session->apply(outOfAll(dayOf(2026, 9, 5)));
    EXPECT_EQ(entry().honeyFrom, dayOf(2026, 10, 5)); // own calculation, 30 days after 5 September
}

TEST_F(Strips, AStruckEntryStaysInTheBookWithItsPlaces) {
    const Correction why{QStringLiteral("Ana"), QStringLiteral("given in the other yard")};
    session->apply([](const EditContext& c) { return takeBackTreatment(c, TreatmentId{1}); }, why);
    Treatment t;
    t.colony = s1;
    t.day = dayOf(2026, 8, 2);
    t.product = QStringLiteral("Hazel strips");
    t.substance = QStringLiteral("tau-fluvalinate");
    apply([&](const EditContext& c) { return logTreatment(c, t); }); // takes the free number
    const auto entries = medicineBook(*session).entries();
    ASSERT_EQ(entries.size(), 2u);
    EXPECT_TRUE(entries[0].struck);
    EXPECT_EQ(entries[0].colonies, (std::vector{k5, k6}));
    ASSERT_EQ(entries[0].changes.size(), 1u);
    EXPECT_EQ(entries[0].changes[0].reason, why.reason);
    EXPECT_FALSE(entries[1].struck);
    EXPECT_TRUE(entries[1].changes.empty()) << "of the first of its number, not of this";
    EXPECT_EQ(entries[1].keptUntil, dayOf(2031, 8, 2));
    EXPECT_EQ(medicineBook(*session).entries({.yard = south}).size(), 1u);
    EXPECT_EQ(medicineBook(*session).entries({.until = dayOf(2026, 7, 31)}).size(), 0u);
    EXPECT_EQ(medicineBook(*session).entries({.from = dayOf(2026, 9, 12)}).size(), 1u) << "its last day";
    EXPECT_EQ(medicineBook(*session).entries({.colony = k6}).size(), 1u);
}

} // namespace

} // namespace tests::edit
