#include "tests/edit/edit_fixture.h"

#include "core/edit/hive_row.h"

namespace tests::edit {

namespace {

std::string labels(const std::vector<RowSpot>& spots) {
    std::string text;
    for (const RowSpot& spot : spots) text += (text.empty() ? "" : " ") + spot.label.toStdString();
    return text;
}

HiveRow rowOf(const char* first, int count, int step = 1) {
    HiveRow row;
    row.firstLabel = QString::fromLatin1(first);
    row.count = count;
    row.labelStep = step;
    return row;
}

TEST(LabelAfter, CountsTheNumberAtTheEndAndKeepsItsWidthWhereItBeganWithAZero) {
    EXPECT_EQ(labelAfter(QStringLiteral("K9"), 1), "K10");
    EXPECT_EQ(labelAfter(QStringLiteral("K09"), 1), "K10");
    EXPECT_EQ(labelAfter(QStringLiteral("K09"), 91), "K100");
    EXPECT_EQ(labelAfter(QStringLiteral("K010"), -1), "K009");
    EXPECT_EQ(labelAfter(QStringLiteral("K10"), -1), "K9");
    EXPECT_EQ(labelAfter(QStringLiteral("7"), 3), "10");
    EXPECT_EQ(labelAfter(QStringLiteral("2-1 "), 1), "2-2");
    EXPECT_EQ(labelAfter(QStringLiteral("0"), 1), "1");
    EXPECT_EQ(labelAfter(QStringLiteral("K1"), -2), std::nullopt);
    EXPECT_EQ(labelAfter(QStringLiteral("9999999999999999"), 1), std::nullopt);
}

TEST(LabelAfter, GoesOnFromOneLetterToZ) {
    EXPECT_EQ(labelAfter(QStringLiteral("B"), 1), "C");
    EXPECT_EQ(labelAfter(QStringLiteral("b"), 2), "d");
    EXPECT_EQ(labelAfter(QStringLiteral("East A"), 25), "East Z");
    EXPECT_EQ(labelAfter(QStringLiteral("4c"), 1), "4d");
    EXPECT_EQ(labelAfter(QStringLiteral("Z"), 1), std::nullopt);
    EXPECT_EQ(labelAfter(QStringLiteral("A"), -1), std::nullopt);
    EXPECT_EQ(labelAfter(QStringLiteral("East"), 1), std::nullopt) << "a word is no letter";
    EXPECT_EQ(labelAfter(QStringLiteral("É"), 1), std::nullopt);
    EXPECT_EQ(labelAfter(QString(), 1), std::nullopt);
}

TEST(RowSpots, NameTwentyFourHives) {
    EXPECT_EQ(labels(rowSpots(rowOf("K1", 24))),
              "K1 K2 K3 K4 K5 K6 K7 K8 K9 K10 K11 K12 K13 K14 K15 K16 K17 K18 K19 K20 K21 K22 K23 K24");
    EXPECT_EQ(labels(rowSpots(rowOf("K01", 11))), "K01 K02 K03 K04 K05 K06 K07 K08 K09 K10 K11");
    EXPECT_EQ(labels(rowSpots(rowOf("A", 24))), "A B C D E F G H I J K L M N O P Q R S T U V W X");
    EXPECT_EQ(labels(rowSpots(rowOf("K9", 4, -2))), "K9 K7 K5 K3");
    EXPECT_EQ(labels(rowSpots(rowOf("X", 24))), "X Y Z") << "fewer where the labels end";
    EXPECT_EQ(labels(rowSpots(rowOf("East", 1))), "East");
    EXPECT_EQ(rowSpots(rowOf("1", 0)).size(), 0u);
}

TEST(RowSpots, LieAlongTheBearingToTheMillimetre) {
    HiveRow row = rowOf("1", 4);
    row.start = {1000, -500};
    row.spacingMm = 1500;
    row.bearingDeg = 90;
    EXPECT_EQ(rowSpots(row)[3].at, (MmPoint{5500, -500}));
    row.bearingDeg = 0;
    EXPECT_EQ(rowSpots(row)[3].at, (MmPoint{1000, 4000}));
    row.bearingDeg = 225;
    // own calculation, 4500 mm · sin 45° = 3181.98 mm
    EXPECT_EQ(rowSpots(row)[3].at, (MmPoint{1000 - 3182, -500 - 3182}));
    row.bearingDeg = 30;
    // own calculation, 1500 mm · (sin 30°, cos 30°) = (750, 1299.04) mm
    EXPECT_EQ(rowSpots(row)[1].at, (MmPoint{1750, 799}));
}

class AddHiveRow : public EditTest {
protected:
    YardId north = newYard(QStringLiteral("North"));

    HiveRow row(const char* first = "K1", int count = 24) const {
        HiveRow r = rowOf(first, count);
        r.yard = north;
        r.box = BoxKindId{1};
        r.since = dayOf(2026, 5, 1);
        return r;
    }
    std::string refusal(const HiveRow& r) {
        const auto before = rowsText(path());
        const Thrown thrown = thrownBy([&] { add(r); });
        EXPECT_EQ(thrown.kind, Error::Kind::BadData);
        EXPECT_EQ(rowsText(path()), before);
        return thrown.message;
    }
    std::optional<HistoryLine> add(const HiveRow& r) {
        return apply([&](const EditContext& c) { return addHiveRow(c, r); });
    }
};

TEST_F(AddHiveRow, IsOneEditAndOneUndo) {
    const auto before = rowsText(path());
    HiveRow r = row();
    r.broodBoxes = 2;
    r.headingDeg = 200;
    EXPECT_EQ(add(r)->text, "Added a row of 24 hives in North: K1 to K24");
    const Snapshot s = session->snapshot(dayOf(2026, 5, 1));
    ASSERT_EQ(s.colonies.size(), 24u);
    EXPECT_EQ(s.colonies[23].label, "K24");
    EXPECT_EQ(s.colonies[23].broodBoxes, 2);
    const SnapStay* last = s.placeOf(ColonyIx{23});
    EXPECT_EQ(last->standName, "24");
    EXPECT_EQ(last->at, (MmPoint{23 * 1500, 0}));
    EXPECT_EQ(last->headingDeg, 200);
    EXPECT_EQ(problems(), "");
    EXPECT_EQ(session->undo()->text, "Undone: Added a row of 24 hives in North: K1 to K24");
    EXPECT_EQ(rowsText(path()), before);
    session->redo();
    EXPECT_EQ(problems(), "");
}

TEST_F(AddHiveRow, UsesAStandThatIsThereAndBare) {
    apply([&](const EditContext& c) { return addStand(c, north, QStringLiteral("oak"), {1500, 0}); });
    add(row("1", 2));
    EXPECT_EQ(stands(north).size(), 2u);
    EXPECT_EQ(session->snapshot(dayOf(2026, 5, 1)).placeOf(ColonyIx{1})->standName, "oak");
    EXPECT_EQ(problems(), "");
}

TEST_F(AddHiveRow, RefusesAsAWholeWhatCannotBe) {
    newColony(north, QStringLiteral("k3"), {49'700, 0});
    EXPECT_EQ(refusal(row()), "k3 is the label of a colony that lives since 2026-05-01.");
    EXPECT_EQ(refusal(row("A", 27)),
              "First label: after Z the labels do not go on to 27 hives; expected a number at its end, or one letter.");
    HiveRow r = row("1", 40);
    EXPECT_EQ(refusal(r), "k3 stands there, on stand k3; hives stand at least 0.3 m apart.") << "34th hive at 49.5 m";
    r = row("1", 401);
    EXPECT_EQ(refusal(r), "Hives: 401 is not from 1 to 400.");
    r = row("1", 2);
    r.spacingMm = 299;
    EXPECT_EQ(refusal(r), "Spacing in millimetres: 299 is not from 300 to 100000.");
    r = row("1", 2);
    r.bearingDeg = 360;
    EXPECT_EQ(refusal(r), "Bearing: 360 is not from 0 to 359.");
    r = row("1", 2);
    r.headingDeg = -1;
    EXPECT_EQ(refusal(r), "Heading: -1 is not from 0 to 359.");
    r = row("1", 2);
    r.labelStep = 0;
    EXPECT_EQ(refusal(r), "Labels: expected a step up or down, found 0.");
    r = row("1", 2);
    r.box = BoxKindId{99};
    EXPECT_EQ(refusal(r), "That box kind is not in the book.");
    r = row("1", 2);
    r.start = {9'999'000, 0};
    EXPECT_EQ(refusal(r), "Position: expected at most 10000 m from the yard's origin.");
    r = row(" ", 1);
    EXPECT_EQ(refusal(r), "Colony: expected 1 to 60 characters, found 0.");
}

} // namespace

} // namespace tests::edit
