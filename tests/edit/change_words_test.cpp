#include "core/edit/change_fields.h"
#include "core/edit/change_words.h"
#include "core/edit/row_change.h"

#include <gtest/gtest.h>

namespace tests::edit {

namespace {

using namespace core;
using namespace core::edit;
using How = ChangeWords::How;

struct PlainNames : RowNames {
    QString colony(ColonyId id, std::optional<Day>) const override { return QStringLiteral("K%1").arg(id.value); }
    QString yard(YardId) const override { return QStringLiteral("North"); }
    QString stand(StandId id) const override { return QStringLiteral("%1 in North").arg(id.value); }
    QString boxKind(BoxKindId) const override { return QStringLiteral("dadant-12"); }
    QString visit(VisitId) const override { return QStringLiteral("K5 on 2026-09-14"); }
};

std::string told(const ChangeWords& words) {
    QStringList lines(words.what);
    const auto side = [](const std::optional<QString>& text) { return text.value_or(QStringLiteral("·")); };
    for (const FieldWords& f : words.fields) lines << f.field + ": " + side(f.from) + " → " + side(f.to);
    return lines.join(u'\n').toStdString();
}
std::string told(const RowChange& change) { return told(changeWords(change, PlainNames())); }

Visit visitOf5() {
    Visit v;
    v.id = {9};
    v.colony = {5};
    v.day = dayOf(2026, 9, 14);
    v.beesTop = Quarters{13};
    v.gross = Decagrams{3250};
    v.queen = QueenSeen::DroneLayer;
    return v;
}

TEST(ChangeWords, TellOfAChangedRecordWhatDiffers) {
    Visit now = visitOf5();
    now.beesTop = Quarters{4};
    now.queen.reset();
    now.supers = 2;
    EXPECT_EQ(told(changed(visitOf5(), now)), "Visit of K5 on 2026-09-14\n"
                                              "Bees seen from above: 3.25 frames → 1 frame\n"
                                              "Queen: drone layer → not recorded\n"
                                              "Supers: not recorded → 2");
    EXPECT_EQ(changeWords(changed(visitOf5(), now), PlainNames()).how, How::Changed);
}

TEST(ChangeWords, TellOfANewOrLostRecordWhatIsRecorded) {
    const auto fresh = changeWords(added(visitOf5()), PlainNames());
    EXPECT_EQ(fresh.how, How::Added);
    EXPECT_EQ(told(fresh), "Visit of K5 on 2026-09-14\n"
                           "Colony: · → K5\n"
                           "Day: · → 2026-09-14\n"
                           "Bees seen from above: · → 3.25 frames\n"
                           "Queen: · → drone layer\n"
                           "Weight: · → 32.5 kg");
    const auto gone = changeWords(deleted(visitOf5()), PlainNames());
    EXPECT_EQ(gone.how, How::TakenAway);
    EXPECT_EQ(gone.fields.back(), (FieldWords{QStringLiteral("Weight"), QStringLiteral("32.5 kg"), std::nullopt}));
}

TEST(ChangeWords, NameEachKindOfRecord) {
    const Day day = dayOf(2026, 9, 14);
    const auto what = [](const RowChange& change) { return changeWords(change, PlainNames()).what.toStdString(); };
    Yard yard;
    yard.name = QStringLiteral("Hill");
    EXPECT_EQ(what(added(yard)), "Yard Hill");
    EXPECT_EQ(what(added(Stand{{7}, {1}, QStringLiteral("7"), {}, false})), "Stand 7 of North");
    EXPECT_EQ(what(added(Placement{{1}, {5}, {7}, {}, day, {}, true})), "First place of K5, from 2026-09-14");
    EXPECT_EQ(what(added(Placement{{1}, {5}, {7}, {}, day, {}, false})), "Place of K5 from 2026-09-14");
    EXPECT_EQ(what(added(Transfer{{1}, day, {5}, {6}, TransferKind::Bees, {}, {}})),
              "Transfer from K5 to K6 on 2026-09-14");
    EXPECT_EQ(what(added(Lineage{{1}, day, LineageHow::United, {5}, {6}, {}, {}})),
              "Union of K5 into K6 on 2026-09-14");
    EXPECT_EQ(what(added(Lineage{{1}, day, LineageHow::ShakenOut, {5}, {6}, {}, {}})),
              "Shake-out of K5 into K6 on 2026-09-14");
    EXPECT_EQ(what(added(Lineage{{1}, day, LineageHow::Divided, {5}, {6}, {}, {}})), "Divide of K5: K6 on 2026-09-14");
    Result result;
    result.yard = YardId{1};
    result.day = day;
    result.verdict = Verdict::Order;
    EXPECT_EQ(what(added(result)), "Official order for yard North on 2026-09-14");
    result.yard.reset();
    result.colony = ColonyId{5};
    result.verdict = Verdict::Positive;
    EXPECT_EQ(what(added(result)), "Result (positive) of K5 on 2026-09-14");
    Treatment treatment;
    treatment.colony = ColonyId{5};
    treatment.day = day;
    EXPECT_EQ(what(added(treatment)), "Treatment of K5 on 2026-09-14");
    EXPECT_EQ(what(added(Kit{1, YardId{1}, QStringLiteral("lid"), QStringLiteral("to-clean"), {}, 3})),
              "Kit of North: lid");
    EXPECT_EQ(what(added(Person{{1}, QStringLiteral("Ana"), true})), "Ana, of the people of the book");
    EXPECT_EQ(what(added(FixedThing{{1}, {1}, FixedKind::Water, {}, {{0, 0}, {1, 0}, {0, 1}}, {}})),
              "In the drawing of North: water");
    EXPECT_EQ(
        what(added(FixedThing{{1}, {1}, FixedKind::Tree, QStringLiteral("the lime"), {{0, 0}}, Millimetres{900}})),
        "In the drawing of North: the lime (tree)");
    BoxKind kind;
    kind.name = QStringLiteral("nuc-5");
    EXPECT_EQ(what(added(kind)), "Box kind nuc-5");
}

TEST(ChangeWords, TellNamesPlacesAndSizesInWords) {
    EXPECT_EQ(told(changed(Placement{{1}, {5}, {7}, 90, dayOf(2026, 9, 1), {}, false},
                           Placement{{1}, {5}, {8}, {}, dayOf(2026, 9, 1), dayOf(2026, 9, 14), false})),
              "Place of K5 from 2026-09-01\n"
              "Stand: 7 in North → 8 in North\n"
              "Faces: 90° → not recorded\n"
              "Until: not recorded → 2026-09-14");
    EXPECT_EQ(told(changed(Stand{{7}, {1}, QStringLiteral("7"), {1500, -250}, false},
                           Stand{{7}, {1}, QStringLiteral("7"), {2000, -250}, true})),
              "Stand 7 of North\nEast: 1.5 m → 2 m\nTaken off the plan: no → yes");
    Yard yard;
    yard.name = QStringLiteral("Hill");
    Yard there = yard;
    there.latitudeDeg = 47.25;
    EXPECT_EQ(told(changed(yard, there)), "Yard Hill\nLatitude: not recorded → 47.25°");
    EXPECT_EQ(told({Table::VisitSign, 3, std::nullopt, Row{qint64(9), QStringLiteral("afb")}}),
              "Sign at the visit of K5 on 2026-09-14\nSign: · → American foulbrood");
}

TEST(ChangeWords, TellASettingWithoutARowAsItsDefault) {
    EXPECT_EQ(told({Table::Setting, 1, std::nullopt, Row{QStringLiteral("gain.min"), QStringLiteral("75")}}),
              "Setting gain.min\nValue: 50 (the default) → 75");
    EXPECT_EQ(told({Table::Setting, 1, Row{QStringLiteral("gain.min"), QStringLiteral("75")}, std::nullopt}),
              "Setting gain.min\nValue: 75 → 50 (the default)");
}

TEST(ChangeWords, TellAShapeInMetresAndCutALongOne) {
    FixedThing hedge{{1}, {1}, FixedKind::Hedge, {}, {{0, 0}, {12500, -250}}, {}};
    FixedThing longer = hedge;
    for (int i = 0; i < 6; ++i) longer.points.push_back({20'000, 1000 * i});
    EXPECT_EQ(told(changed(hedge, longer)),
              "In the drawing of North: hedge\n"
              "Points: 0, 0; 12.5, -0.25 (m east, m north) → 0, 0; 12.5, -0.25; 20, 0; 20, 1; 20, 2; 20, 3; … 8 points "
              "(m east, m north)");
}

TEST(ChangeWords, CountRanges) {
    EXPECT_EQ(rangeWords(Table::Visit, 1420, How::Added).what, QStringLiteral("1420 visits"));
    EXPECT_EQ(rangeWords(Table::Colony, 1, How::TakenAway).what, QStringLiteral("1 colony"));
}

/// Every column is told or left out on purpose: none was forgotten when a table grew.
TEST(ChangeFields, AreOneAColumn) {
    for (int i = 0; i < kTableCount; ++i) {
        const auto table = static_cast<Table>(i);
        EXPECT_EQ(fieldsOf(table).size(), columnsOf(table).size()) << tableName(table);
        for (size_t f = 0; f < fieldsOf(table).size(); ++f)
            EXPECT_EQ(fieldsOf(table)[f].kind == CellKind::Hidden,
                      std::string_view(columnsOf(table)[f]) == "key" || (table == Table::Setting && f == 0) ||
                          std::string_view(columnsOf(table)[f]) == "first" || (table == Table::VisitSign && f == 0) ||
                          std::string_view(columnsOf(table)[f]) == "merge_day" ||
                          (table == Table::Sample && std::string_view(columnsOf(table)[f]) == "result") ||
                          (table == Table::StripsOut && std::string_view(columnsOf(table)[f]) == "treatment") ||
                          (table == Table::FileMapping && std::string_view(columnsOf(table)[f]) == "form") ||
                          (table == Table::Question && std::string_view(columnsOf(table)[f]) == "ask"))
                << tableName(table) << ' ' << columnsOf(table)[f];
    }
}

} // namespace

} // namespace tests::edit
