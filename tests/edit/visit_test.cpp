#include "tests/edit/edit_fixture.h"

#include "core/edit/edit_context.h"

namespace tests::edit {

namespace {

const Day kDay = dayOf(2026, 9, 1);

class LogVisit : public EditTest {
protected:
    YardId yard = newYard(QStringLiteral("North"));
    ColonyId k5 = newColony(yard, QStringLiteral("5"), {0, 0});

    Visit plain() const {
        Visit v;
        v.colony = k5;
        v.day = kDay;
        return v;
    }
    std::string refusal(const Visit& v) {
        const auto before = rowsText(path());
        const Thrown thrown = thrownBy([&] { visit(v); });
        EXPECT_EQ(thrown.kind, Error::Kind::BadData);
        EXPECT_EQ(rowsText(path()), before);
        return thrown.message;
    }
};

TEST_F(LogVisit, KeepsAllThatWasSeenAndItsSigns) {
    Visit v = plain();
    v.boxes = 2;
    v.beesTop = Quarters{13};
    v.beesBottom = Quarters{40};
    v.upperBeesTop = Quarters{0};
    v.upperStores = Quarters{8};
    v.queen = QueenSeen::DroneLayer;
    v.broodFrames = 4;
    v.broodChecked = 4;
    v.signs.add(Sign::Chalkbrood);
    v.signs.add(Sign::BroodDoubt);
    v.supers = 1;
    v.gross = Decagrams{3250};
    v.mites = 0;
    v.miteSample = 300;
    v.by = QStringLiteral(" Ana ");
    v.note = QStringLiteral("calm");
    const auto line = visit(v);
    ASSERT_TRUE(line);
    EXPECT_EQ(line->text, "Logged the visit of 5 on 2026-09-01");
    const auto stored = session->visitsOf(k5, 5);
    ASSERT_EQ(stored.size(), 1u);
    v.id = stored[0].id;
    v.by = QStringLiteral("Ana");
    EXPECT_EQ(stored[0], v);
}

TEST_F(LogVisit, IsOneAColonyADay) {
    visit(plain());
    EXPECT_EQ(refusal(plain()), "5 has a visit on 2026-09-01 already; expected one visit a colony a day.");
}

TEST_F(LogVisit, IsWithinTheColonysLife) {
    Visit v = plain();
    v.day = dayOf(2026, 4, 30);
    EXPECT_EQ(refusal(v), "5 began on 2026-05-01; 2026-04-30 is before that.");
    v.day = dayOf(2026, 5, 1);
    EXPECT_TRUE(visit(v));
    apply([&](const EditContext& c) { return endColony(c, k5, kDay, EndKind::Dead); });
    v.day = kDay + 1;
    EXPECT_EQ(refusal(v), "5 ended on 2026-09-01; 2026-09-02 is after that.");
    v.day = kDay;
    EXPECT_TRUE(visit(v));
}

struct Limit {
    const char* field;
    std::function<void(Visit&)> tooMuch;
    std::function<void(Visit&)> most;
};

TEST_F(LogVisit, RefusesEachFieldBeyondItsRangeAndTakesItAtTheLimit) {
    const std::vector<Limit> limits = {
        {"Bees seen from above", [](Visit& v) { v.beesTop = Quarters{41}; },
         [](Visit& v) { v.beesTop = Quarters{40}; }},
        {"Bees seen from above", [](Visit& v) { v.beesTop = Quarters{-1}; }, [](Visit& v) { v.beesTop = Quarters{0}; }},
        {"Bees seen from below", [](Visit& v) { v.beesBottom = Quarters{41}; },
         [](Visit& v) { v.beesBottom = Quarters{40}; }},
        {"Frames of stores", [](Visit& v) { v.stores = Quarters{41}; }, [](Visit& v) { v.stores = Quarters{40}; }},
        {"Brood boxes", [](Visit& v) { v.boxes = 3; }, [](Visit& v) { v.boxes = 2; }},
        {"Brood boxes", [](Visit& v) { v.boxes = 0; }, [](Visit& v) { v.boxes = 1; }},
        {"Brood frames", [](Visit& v) { v.broodFrames = 25; }, [](Visit& v) { v.broodFrames = 24; }},
        {"Brood frames examined for disease", [](Visit& v) { v.broodChecked = 25; },
         [](Visit& v) { v.broodChecked = 24; }},
        {"Honey boxes", [](Visit& v) { v.supers = 11; }, [](Visit& v) { v.supers = 10; }},
        {"Weight", [](Visit& v) { v.gross = Decagrams{30001}; }, [](Visit& v) { v.gross = Decagrams{30000}; }},
        {"Mites", [](Visit& v) { v.mites = 10001, v.miteSample = 300; },
         [](Visit& v) { v.mites = 10000, v.miteSample = 300; }},
        {"Bees in the mite sample", [](Visit& v) { v.mites = 1, v.miteSample = 0; },
         [](Visit& v) { v.mites = 1, v.miteSample = 1; }},
        {"Mites", [](Visit& v) { v.mites = 1; }, [](Visit& v) { v.mites = 1, v.miteSample = 10000; }},
    };
    for (const Limit& limit : limits) {
        Visit bad = plain();
        limit.tooMuch(bad);
        EXPECT_EQ(refusal(bad).rfind(std::string(limit.field) + ":", 0), 0u) << limit.field;
        Visit good = plain();
        limit.most(good);
        EXPECT_TRUE(visit(good)) << limit.field;
        session->undo();
    }
}

TEST_F(LogVisit, RefusesMoreBroodExaminedThanThereIs) {
    Visit v = plain();
    v.broodFrames = 3;
    v.broodChecked = 4;
    EXPECT_EQ(refusal(v), "Brood frames examined for disease: 4 is more than the 3 brood frames.");
}

TEST_F(LogVisit, RefusesCountsOfAnUpperBoxAtOneBox) {
    Visit v = plain();
    v.upperBeesTop = Quarters{8};
    EXPECT_EQ(refusal(v), "Upper box: the colony is in one brood box that day; expected no counts of an upper box.");
    Visit two = plain();
    two.day = kDay - 5;
    two.boxes = 2;
    visit(two);
    EXPECT_TRUE(visit(v));
}

TEST_F(LogVisit, RefusesOneBoxWhereALaterVisitCountsTheUpperOne) {
    Visit two = plain();
    two.day = kDay - 5;
    two.boxes = 2;
    visit(two);
    Visit counted = plain();
    counted.upperStores = Quarters{4};
    visit(counted);
    Visit one = plain();
    one.day = kDay - 2;
    one.boxes = 1;
    EXPECT_EQ(refusal(one), "Brood boxes: the visit of 2026-09-01 counts an upper box.");
}

} // namespace

} // namespace tests::edit
