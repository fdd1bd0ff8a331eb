#include "tests/edit/edit_fixture.h"

#include "core/edit/edit_context.h"
#include "core/rules/hold.h"

namespace tests::edit {

namespace {

const Day kDay = dayOf(2026, 9, 10);

class Edits : public EditTest {
protected:
    YardId north = newYard(QStringLiteral("North"));
    ColonyId k5 = newColony(north, QStringLiteral("5"), {0, 0});
    ColonyId k6 = newColony(north, QStringLiteral("6"), {2000, 0});

    std::string refusal(const std::function<ChangeSet(const EditContext&)>& e) {
        const auto before = rowsText(path());
        const Thrown thrown = thrownBy([&] { apply(e); });
        EXPECT_EQ(thrown.kind, Error::Kind::BadData);
        EXPECT_EQ(rowsText(path()), before);
        return thrown.message;
    }
    void check(ColonyId colony, Day day) {
        Visit v;
        v.colony = colony;
        v.day = day;
        v.broodFrames = 4;
        v.broodChecked = 4;
        visit(v);
    }
    static Edit end(ColonyId colony, Day day, EndKind how) {
        return [=](const EditContext& c) { return endColony(c, colony, day, how); };
    }
    static Edit unite(ColonyId colony, ColonyId into, Day day, LineageHow how = LineageHow::United) {
        return [=](const EditContext& c) { return recordUnion(c, {{}, day, how, colony, into, {}, {}}); };
    }
};

TEST_F(Edits, AYardsNameIsUniqueWithoutRegardToCase) {
    Yard yard;
    yard.name = QStringLiteral(" NORTH ");
    EXPECT_EQ(refusal([&](const EditContext& c) { return core::edit::newYard(c, yard); }),
              "There is a yard NORTH already.");
    yard.name = QStringLiteral("  ");
    EXPECT_EQ(refusal([&](const EditContext& c) { return core::edit::newYard(c, yard); }),
              "Yard: expected 1 to 60 characters, found 0.");
    yard.name = QString(61, u'x');
    EXPECT_EQ(refusal([&](const EditContext& c) { return core::edit::newYard(c, yard); }),
              "Yard: expected 1 to 60 characters, found 61.");
    yard.name = QStringLiteral("South");
    yard.latitudeDeg = -90.5;
    EXPECT_EQ(refusal([&](const EditContext& c) { return core::edit::newYard(c, yard); }),
              "Latitude: -90.5 is not from −90 to 90 degrees.");
}

TEST_F(Edits, AStandHasANameAndAPlaceOfItsOwn) {
    EXPECT_EQ(refusal([&](const EditContext& c) {
                  return addStand(c, north, QStringLiteral("5"), {9000, 0});
              }),
              "North has a stand 5 already.");
    EXPECT_EQ(refusal([&](const EditContext& c) {
                  return addStand(c, north, QStringLiteral("x"), {2000, 0});
              }),
              "Stand 6 is there already.");
    EXPECT_EQ(apply([&](const EditContext& c) {
                  return addStand(c, north, {}, {9000, 0});
              })->text,
              "Added stand 7 in North");
}

TEST_F(Edits, ALabelIsFreeFromTheDayAfterItsColonyEnded) {
    apply(end(k5, kDay, EndKind::Sold));
    NewColony fresh;
    fresh.colony.label = QStringLiteral("5");
    fresh.colony.box = BoxKindId{1};
    fresh.colony.since = kDay;
    fresh.stand.yard = north;
    fresh.stand.at = {4000, 0};
    EXPECT_EQ(refusal([&](const EditContext& c) { return addColony(c, fresh); }),
              "5 is the label of a colony that lived from 2026-05-01 to 2026-09-10.");
    fresh.colony.since = kDay + 1;
    EXPECT_TRUE(apply([&](const EditContext& c) { return addColony(c, fresh); }));
    fresh.colony.label = QStringLiteral("a@b");
    EXPECT_EQ(refusal([&](const EditContext& c) { return addColony(c, fresh); }), "Colony: a label holds no @.");
    EXPECT_EQ(problems(), "");
}

TEST_F(Edits, AColonyBeginsOnAStandThatIsFreeFromThatDayOn) {
    NewColony fresh;
    fresh.colony.label = QStringLiteral("8");
    fresh.colony.box = BoxKindId{1};
    fresh.colony.since = kDay;
    fresh.stand = standOf(k5);
    EXPECT_EQ(refusal([&](const EditContext& c) { return addColony(c, fresh); }),
              "5 stands there, on stand 5; hives stand at least 0.3 m apart.");
    apply(end(k5, kDay, EndKind::Dead));
    EXPECT_TRUE(apply([&](const EditContext& c) { return addColony(c, fresh); }));
    EXPECT_EQ(problems(), "");
}

TEST_F(Edits, AnEndFreesTheStandAndComesAfterEveryRecord) {
    check(k5, kDay);
    EXPECT_EQ(refusal(end(k5, kDay - 1, EndKind::Dead)),
              "5 has a visit on 2026-09-10; it cannot have ended before that.");
    EXPECT_EQ(apply(end(k5, kDay, EndKind::Destroyed))->text, "5 was destroyed on 2026-09-10; its kit is quarantined");
    EXPECT_EQ(refusal(end(k5, kDay, EndKind::Dead)), "5 ended on 2026-09-10 already.");
    EXPECT_EQ(session->placementsOf(k5)[0].until, kDay);
    EXPECT_EQ(problems(), "");
}

TEST_F(Edits, AUnionEndsTheColonyAndNamesItsHost) {
    check(k5, kDay - 1);
    check(k6, kDay - 1);
    const auto before = rowsText(path());
    EXPECT_EQ(apply(unite(k5, k6, kDay))->text, "United 5 into 6 on 2026-09-10");
    EXPECT_EQ(session->colony(k5)->end, EndKind::United);
    ASSERT_EQ(session->lineageOf(k6).size(), 1u);
    EXPECT_EQ(problems(), "");
    Visit v;
    v.colony = k6;
    v.day = kDay;
    v.upperBeesTop = Quarters{20}; // two boxes from the union's day on
    EXPECT_TRUE(visit(v));
    session->undo();
    session->undo();
    EXPECT_EQ(rowsText(path()), before);
}

TEST_F(Edits, AUnionOrShakeOutOfAHeldColonyIsRefusedWithTheHoldsSentence) {
    check(k5, kDay - 1); // 6 has no brood check
    for (const auto& [from, into] : {std::pair(k5, k6), std::pair(k6, k5)}) {
        const auto before = rowsText(path());
        const Thrown thrown = thrownBy([&] { apply(unite(from, into, kDay, LineageHow::ShakenOut)); });
        EXPECT_EQ(thrown.kind, Error::Kind::Hold);
        EXPECT_EQ(thrown.message.rfind("6 is held (brood-not-checked). ", 0), 0u) << thrown.message;
        const Snapshot s = session->snapshot(kDay);
        EXPECT_NE(thrown.message.find(rules::holds(s).at(0).because().toStdString()), std::string::npos);
        EXPECT_EQ(rowsText(path()), before);
    }
}

TEST_F(Edits, AUnionIsOfTwoLivingColonies) {
    EXPECT_EQ(refusal(unite(k5, k5, kDay)), "A colony is not united with itself.");
    apply(end(k6, kDay, EndKind::Dead));
    EXPECT_EQ(refusal(unite(k5, k6, kDay)), "6 ended on 2026-09-10; it takes no more bees.");
    EXPECT_EQ(refusal(unite(k6, k5, kDay)), "6 ended on 2026-09-10 already.");
}

TEST_F(Edits, CombOfADeadOutMayStillBeGivenAway) {
    apply(end(k5, kDay, EndKind::Dead));
    const auto give = [&](TransferKind what, ColonyId from, ColonyId to) {
        return [=](const EditContext& c) { return logTransfer(c, {{}, kDay + 1, from, to, what, {}, {}}); };
    };
    EXPECT_TRUE(apply(give(TransferKind::Frames, k5, k6)));
    EXPECT_TRUE(apply(give(TransferKind::Box, k5, k6)));
    EXPECT_TRUE(apply(give(TransferKind::Feed, k5, k6)));
    EXPECT_EQ(refusal(give(TransferKind::Brood, k5, k6)), "5 ended on 2026-09-10; 2026-09-11 is after that.");
    EXPECT_EQ(refusal(give(TransferKind::Bees, k5, k6)), "5 ended on 2026-09-10; 2026-09-11 is after that.");
    EXPECT_EQ(refusal(give(TransferKind::Frames, k6, k5)), "5 ended on 2026-09-10; 2026-09-11 is after that.");
    EXPECT_EQ(refusal(give(TransferKind::Frames, k6, k6)), "A transfer goes from one colony to another.");
    EXPECT_EQ(problems(), "");
}

TEST_F(Edits, AnOrderOrReleaseComesFromAnInspectorWithItsPaper) {
    Result r;
    r.colony = k5;
    r.day = kDay;
    r.verdict = Verdict::Release;
    r.by = QStringLiteral("the inspector");
    const auto log = [&](const EditContext& c) { return logResult(c, r); };
    EXPECT_EQ(refusal(log), "Method: an order or a release comes from an inspector.");
    r.method = Method::Inspector;
    EXPECT_EQ(refusal(log), "Paper: an order or a release needs the number of its paper.");
    r.paper = QStringLiteral("7");
    EXPECT_EQ(apply(log)->text, "Noted afb release (inspector) of 5 on 2026-09-10");
    r.verdict = Verdict::Negative;
    r.yard = north;
    EXPECT_EQ(refusal(log), "Expected either a colony or a yard.");
    r.colony.reset();
    EXPECT_EQ(refusal(log), "Yard: only an order or a release names a whole yard.");
    r.by.clear();
    EXPECT_EQ(refusal(log), "By: expected a text, found nothing.");
}

TEST_F(Edits, ATreatmentNamesItsProductAndSubstance) {
    Treatment t;
    t.colony = k5;
    t.day = kDay;
    t.product = QStringLiteral("strips");
    const auto log = [&](const EditContext& c) { return logTreatment(c, t); };
    EXPECT_EQ(refusal(log), "Substance: expected a text, found nothing.");
    t.substance = QStringLiteral("acid");
    t.days = 1001;
    EXPECT_EQ(refusal(log), "Days: 1001 is not from 0 to 1000.");
    t.days = 1000;
    t.quantity = -0.5;
    EXPECT_EQ(refusal(log), "Quantity: expected 0 or more.");
    t.quantity = 0;
    EXPECT_EQ(apply(log)->text, "Noted the treatment of 5 with strips on 2026-09-10");
}

TEST_F(Edits, ASettingIsKeptCanonicalAndNotAtAllAtItsDefault) {
    const auto set = [](const char* name, const char* value) {
        return
            [=](const EditContext& c) { return setSetting(c, QString::fromLatin1(name), QString::fromLatin1(value)); };
    };
    const auto before = rowsText(path());
    EXPECT_EQ(apply(set("carry.per_m", "2.50"))->text, "Set carry.per_m to 2.5 (was 1)");
    EXPECT_FALSE(apply(set("carry.per_m", "2.5")));
    EXPECT_EQ(apply(set("carry.per_m", "1.0"))->text, "Set carry.per_m to 1 (was 2.5)");
    EXPECT_EQ(rowsText(path()), before);
    EXPECT_EQ(refusal(set("afb.recheck_days", "59")),
              "afb.recheck_days: “59” is out of range, expected 60 to 3650 (only stricter).");
    EXPECT_EQ(refusal(set("afb.recheck", "60")),
              "afb.recheck is no setting; expected a name listed by `yardwright settings`.");
    EXPECT_TRUE(apply(set("afb.recheck_days", "61")));
    EXPECT_EQ(session->settings().afbRecheckDays, 61);
}

TEST_F(Edits, NameTheColonyWithItsDateWhereItsLabelIsAnothers) {
    apply(end(k5, dayOf(2026, 6, 1), EndKind::Dead));
    newColony(north, QStringLiteral("x"), {8000, 0});
    NewColony fresh;
    fresh.colony.label = QStringLiteral("5");
    fresh.colony.box = BoxKindId{1};
    fresh.colony.since = dayOf(2026, 7, 1);
    fresh.stand.yard = north;
    fresh.stand.at = {9000, 0};
    apply([&](const EditContext& c) { return addColony(c, fresh); });
    Result r;
    r.colony = k5;
    r.day = kDay;
    r.by = QStringLiteral("the laboratory");
    EXPECT_EQ(apply([&](const EditContext& c) { return logResult(c, r); })->text,
              "Noted afb negative (laboratory) of 5@2026-05-01 on 2026-09-10");
}

} // namespace

} // namespace tests::edit
