#include "tests/edit/edit_fixture.h"

#include "core/edit/edit_context.h"
#include "core/rules/hold.h"

namespace tests::edit {

namespace {

const Day kDay = dayOf(2026, 9, 20);

class CarryMany : public EditTest {
protected:
    YardId yard = newYard(QStringLiteral("North"));
    ColonyId a = newColony(yard, QStringLiteral("A"), {0, 0});
    ColonyId b = newColony(yard, QStringLiteral("B"), {1000, 0});
    ColonyId z = newColony(yard, QStringLiteral("Z"), {9000, 0});

    std::optional<HistoryLine> all(const std::vector<std::pair<ColonyId, MmPoint>>& to, Day day = kDay) {
        std::vector<CarryTo> carries;
        for (const auto& [colony, at] : to) carries.push_back({colony, yard, at, {}, day});
        return apply([&](const EditContext& c) { return carryHives(c, carries); });
    }
    std::optional<HistoryLine> swap(ColonyId one, ColonyId other, Day day = kDay) {
        return apply([&](const EditContext& c) { return swapHives(c, one, other, day); });
    }
    MmPoint at(ColonyId id) const { return standOf(id).at; }
};

TEST_F(CarryMany, EachTakesThePlaceThatTheOtherLeaves) {
    const auto before = rowsText(path());
    const auto line = all({{a, {1000, 0}}, {b, {2000, 0}}});
    ASSERT_TRUE(line);
    EXPECT_EQ(line->text, "Carried A and B 1 m east");
    EXPECT_EQ(at(a), (MmPoint{1000, 0}));
    EXPECT_EQ(at(b), (MmPoint{2000, 0}));
    EXPECT_EQ(stands(yard).size(), 4u);
    EXPECT_EQ(problems(), "");
    session->undo();
    EXPECT_EQ(rowsText(path()), before);
    session->redo();
    EXPECT_EQ(at(b), (MmPoint{2000, 0}));
    EXPECT_EQ(problems(), "");
}

TEST_F(CarryMany, ASecondTimeThatDayReplacesTheFirst) {
    all({{a, {1000, 0}}, {b, {2000, 0}}});
    const auto first = rowsText(path());
    all({{a, {2000, 0}}, {b, {3000, 0}}});
    EXPECT_EQ(session->placementsOf(a).size(), 2u);
    EXPECT_EQ(at(a), (MmPoint{2000, 0}));
    EXPECT_EQ(at(b), (MmPoint{3000, 0}));
    EXPECT_EQ(problems(), "");
    session->undo();
    EXPECT_EQ(rowsText(path()), first);
}

TEST_F(CarryMany, BackHomeTogetherTheCarriesAreGone) {
    const auto before = rowsText(path());
    all({{a, {1000, 0}}, {b, {2000, 0}}});
    all({{a, {0, 0}}, {b, {1000, 0}}});
    EXPECT_EQ(rowsText(path()), before) << "and the stand that was made is gone";
}

TEST_F(CarryMany, IsRefusedWholeWhereOneCannotStand) {
    const auto before = rowsText(path());
    const auto other = thrownBy([&] { all({{a, {8800, 0}}, {b, {9800, 0}}}); });
    EXPECT_EQ(other.message, "Z stands there, on stand Z; hives stand at least 0.3 m apart.");
    const auto each = thrownBy([&] { all({{a, {5000, 0}}, {b, {5200, 0}}}); });
    EXPECT_EQ(each.message, "A and B would stand on one another; hives stand at least 0.3 m apart.");
    EXPECT_EQ(thrownBy([&] { all({{a, {5000, 0}}, {a, {6000, 0}}}); }).kind, Error::Kind::BadData);
    EXPECT_EQ(rowsText(path()), before);
}

TEST_F(CarryMany, ManyAreCountedAndDifferentWaysAreNotSaid) {
    std::vector<std::pair<ColonyId, MmPoint>> to;
    for (int i = 0; i < 5; ++i) {
        const ColonyId id = newColony(yard, QStringLiteral("M%1").arg(i), {i * 1000, 5000});
        to.emplace_back(id, MmPoint{i * 1000, 7000});
    }
    EXPECT_EQ(all(to)->text, "Carried 5 hives 2 m north");
    EXPECT_EQ(all({{a, {0, 1000}}, {b, {2000, 1000}}})->text, "Carried A and B");
    EXPECT_FALSE(all({{a, {0, 1000}}})) << "stands there already";
}

TEST_F(CarryMany, ToAnotherYardTogether) {
    const YardId south = newYard(QStringLiteral("South"));
    const auto line = apply([&](const EditContext& c) {
        return carryHives(c, {{a, south, {0, 0}, {}, kDay}, {b, south, {1000, 0}, {}, kDay}});
    });
    EXPECT_EQ(line->text, "Carried A and B to South");
    EXPECT_EQ(standOf(b).yard, south);
    EXPECT_EQ(problems(), "");
}

TEST_F(CarryMany, ASwapIsOneLineAndOneUndo) {
    const auto before = rowsText(path());
    EXPECT_EQ(swap(a, z)->text, "Swapped A and Z, 9 m apart");
    EXPECT_EQ(at(a), (MmPoint{9000, 0}));
    EXPECT_EQ(at(z), (MmPoint{0, 0}));
    EXPECT_EQ(stands(yard).size(), 3u);
    EXPECT_EQ(problems(), "");
    session->undo();
    EXPECT_EQ(rowsText(path()), before);
}

TEST_F(CarryMany, SwappedTwiceThatDayNothingHappened) {
    const auto before = rowsText(path());
    swap(a, z);
    swap(z, a);
    EXPECT_EQ(rowsText(path()), before);
}

TEST_F(CarryMany, ASwapAfterACarryOfThatDay) {
    carry(a, {4000, 0}, kDay);
    swap(a, b);
    EXPECT_EQ(at(a), (MmPoint{1000, 0}));
    EXPECT_EQ(at(b), (MmPoint{4000, 0})) << "on the stand that A's carry made";
    EXPECT_EQ(problems(), "");
    session->undo();
    EXPECT_EQ(at(a), (MmPoint{4000, 0}));
    EXPECT_EQ(problems(), "");
}

TEST_F(CarryMany, AnEarlierSwapIsRefusedAfterACarry) {
    carry(b, {4000, 0}, kDay);
    EXPECT_EQ(thrownBy([&] { swap(a, b, kDay - 1); }).kind, Error::Kind::BadData);
    EXPECT_EQ(thrownBy([&] { swap(a, a); }).kind, Error::Kind::BadData);
    const YardId south = newYard(QStringLiteral("South"));
    const ColonyId s = newColony(south, QStringLiteral("S"), {0, 0});
    EXPECT_EQ(thrownBy([&] { swap(a, s); }).message, "Hives are swapped within one yard.");
}

class YardToYard : public CarryMany {
protected:
    YardId south = newYard(QStringLiteral("South"));
    ColonyId s = newColony(south, QStringLiteral("S"), {0, 0});

    void note(Disease disease, Verdict verdict, std::optional<ColonyId> colony, std::optional<YardId> of, Day day) {
        Result r;
        r.day = day;
        r.colony = colony;
        r.yard = of;
        r.disease = disease;
        r.verdict = verdict;
        r.method = Method::Inspector;
        r.by = QStringLiteral("inspector");
        r.paper = QStringLiteral("12");
        apply([&](const EditContext& c) { return logResult(c, r); });
    }
    void sign(ColonyId colony, Sign sign, Day day) {
        Visit v;
        v.colony = colony;
        v.day = day;
        v.signs.add(sign);
        visit(v);
    }
    Edit carryAToSouth(Day day = kDay) {
        return [this, day](const EditContext& c) { return carryTo(c, {a, south, {5000, 0}, {}, day}); };
    }
    Thrown refusal(Day day = kDay) {
        return thrownBy([&] { session->apply(carryAToSouth(day)); });
    }
};

TEST_F(YardToYard, WithoutAHoldOrWithABroodNotCheckedAloneItGoes) {
    EXPECT_TRUE(session->apply(carryAToSouth())); // no brood was checked in this book
}

TEST_F(YardToYard, AHoldInEitherYardRefuses) {
    sign(z, Sign::Afb, kDay - 3); // stays in the yard that A would leave
    const auto before = rowsText(path());
    const auto refused = refusal();
    EXPECT_EQ(refused.kind, Error::Kind::Correction);
    EXPECT_NE(refused.message.find("Refused: Held in North: "), std::string::npos) << refused.message;
    EXPECT_NE(refused.message.find("Z (afb-suspected)"), std::string::npos) << refused.message;
    EXPECT_EQ(rowsText(path()), before);
}

TEST_F(YardToYard, EveryKindOfHoldInTheOtherYardRefuses) {
    const auto kinds = {Sign::Afb, Sign::Efb, Sign::BroodDoubt};
    for (const Sign seen : kinds) {
        sign(s, seen, kDay - 3);
        EXPECT_EQ(refusal().kind, Error::Kind::Correction) << word(seen).toStdString();
        session->undo(Correction{QStringLiteral("I. Berg"), QStringLiteral("the next kind")});
    }
    note(Disease::Efb, Verdict::Order, {}, south, kDay - 3);
    EXPECT_NE(refusal().message.find("S (order)"), std::string::npos) << refusal().message;
}

TEST_F(YardToYard, AnOrderOnAnEmptyYardRefuses) {
    note(Disease::Afb, Verdict::Order, {}, south, kDay - 30);
    apply([&](const EditContext& c) { return endColony(c, s, kDay - 20, EndKind::Destroyed); });
    const auto refused = refusal();
    EXPECT_EQ(refused.kind, Error::Kind::Correction);
    EXPECT_NE(refused.message.find("It would bring a hold on A (order)."), std::string::npos) << refused.message;
}

TEST_F(YardToYard, AnEarlierDayDoesNotGoAroundIt) {
    sign(s, Sign::Efb, kDay - 3);
    EXPECT_EQ(refusal(kDay - 10).kind, Error::Kind::Correction) << "not held then, but today";
}

TEST_F(YardToYard, AsAFactItIsRecordedWithReasonAndNameAndHeldFromThenOn) {
    note(Disease::Afb, Verdict::Order, {}, south, kDay - 3);
    const auto line =
        session->apply(carryAToSouth(), Correction{QStringLiteral("I. Berg"), QStringLiteral("by truck")});
    ASSERT_TRUE(line);
    EXPECT_EQ(line->by, "I. Berg");
    EXPECT_EQ(line->reason, "by truck");
    EXPECT_EQ(standOf(a).yard, south);
    std::string held;
    const Snapshot snapshot = session->snapshot(kDay);
    for (const rules::Hold& hold : rules::holds(snapshot))
        if (snapshot.colony(hold.colony).id == a) held += rules::holdWord(hold.kind).toStdString() + ' ';
    EXPECT_NE(held.find("order"), std::string::npos) << held;
    EXPECT_EQ(thrownBy([&] { session->undo(); }).kind, Error::Kind::Correction) << "a hold rests on it now";
    EXPECT_EQ(problems(), "");
}

} // namespace

} // namespace tests::edit
