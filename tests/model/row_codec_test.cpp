#include "core/model/row_codec.h"

#include "core/base/error.h"

#include <gtest/gtest.h>

using namespace core;

namespace {

Yard fullYard() { return {{3}, "Østre 7", 47.125, -179.5, Millimetres{-2125}, Millimetres{0}, "by the brook", true}; }
Stand fullStand() { return {{4}, {3}, "7b", {-1500, 2250}, true}; }
BoxKind fullBoxKind() { return {{5}, "Deep-10", 10, 413, 505, 244, Decagrams{425}}; }
Colony fullColony() {
    return {{6}, "N7", dayOf(2025, 5, 1), dayOf(2026, 8, 1), EndKind::ShakenOut, {5}, 2, 2024, "gentle"};
}
Placement fullPlacement() { return {{7}, {6}, {4}, 0, dayOf(2025, 5, 1), dayOf(2026, 8, 1), true}; }
Visit fullVisit() {
    Visit v{{8},
            {6},
            dayOf(2026, 7, 1),
            2,
            Quarters{13},
            Quarters{0},
            Quarters{40},
            Quarters{1},
            Quarters{20},
            Quarters{0},
            QueenSeen::DroneLayer,
            9,
            7,
            {},
            0,
            Decagrams{3255},
            0,
            300,
            "A. Keeper",
            "first line\nsecond"};
    return v;
}
Transfer fullTransfer() { return {{9}, dayOf(2026, 6, 1), {6}, {5}, TransferKind::Feed, 3, "comb"}; }
Result fullResult() {
    return {
        {10},        ColonyId{6}, std::nullopt, dayOf(2026, 7, 10), Disease::Efb, Verdict::Release, Method::Inspector,
        "inspector", "12/26",     "seen"};
}
Treatment fullTreatment() {
    Treatment t;
    t.id = {11};
    t.yard = YardId{3};
    t.day = dayOf(2026, 7, 1);
    t.product = "strips";
    t.substance = "thymol";
    t.antibiotic = true;
    t.batch = "B1";
    t.quantity = 0.1;
    t.unit = "g";
    t.method = "hung";
    t.supplier = "shop";
    t.supplierAddress = "road 1";
    t.bought = dayOf(2026, 6, 1);
    t.quantityBought = 1e-9;
    t.proof = "bill";
    t.prescriber = "vet";
    t.prescriberContact = "phone";
    t.days = 0;
    t.withdrawalDays = 1000;
    t.disposed = dayOf(2026, 9, 1);
    t.disposedQuantity = 0.0;
    t.disposedHow = "returned";
    t.by = "A. Keeper";
    t.reason = "mites";
    return t;
}
Lineage fullLineage() { return {{12}, dayOf(2026, 8, 1), LineageHow::ShakenOut, {6}, {5}, "A. Keeper", "weak"}; }
Kit fullKit() { return {13, YardId{3}, "lid", "quarantined", ColonyId{6}, 2}; }

MergeDay fullMergeDay() { return {{14}, {3}, dayOf(2026, 9, 20), 3, 0, 90, 7, "with Ana", DivideQueens::Bought}; }
MergeChoice fullMergeChoice() { return {{15}, {14}, MergeAsk::Host, {6}, ColonyId{5}, "why"}; }
MergeStrip fullMergeStrip() {
    return {{16}, {14}, 2, LineageHow::United, {6}, {5}, ColonyId{6}, StripOutcome::NotDone, "rain"};
}

DivideChoice fullDivideChoice() { return {{17}, {14}, {6}, 3, "its queen is old"}; }
DivideStrip fullDivideStrip() {
    return {{18}, {14}, 2, {6}, 3, DivideQueens::Cells, StripOutcome::Changed, "one part only"};
}

Feeding fullFeeding(bool weighed) {
    Feeding f{{19},        {6},   dayOf(2026, 9, 1), FeedKind::Syrup, "3:2", Millilitres{5000}, std::nullopt,
              "A. Keeper", "warm"};
    if (weighed) f = {{20}, {6}, dayOf(2026, 9, 1), FeedKind::Fondant, "", std::nullopt, Decagrams{250}, "", ""};
    return f;
}
Queen fullQueen() {
    return {{21},
            {6},
            dayOf(2025, 6, 1),
            dayOf(2026, 8, 1),
            QueenFate::Replaced,
            2025,
            QueenMark::Blue,
            "red5",
            QueenOrigin::Raised,
            "hill line",
            ColonyId{5},
            "calm"};
}
FileMapping fullFileMapping() { return {{22}, "scale app", "visits", "day;hive;kg", "{}"}; }
Phrase fullPhrase() { return {{23}, "q+", "Queen seen, laying well."}; }
Question fullQuestion() { return {{24}, "Light in fall", "colonies", "{}", true}; }
Sample fullSample(bool answered) {
    Sample s{{25},
             {6},
             dayOf(2026, 8, 1),
             Disease::Afb,
             SampleMaterial::Debris,
             "bee laboratory",
             "S-12",
             dayOf(2026, 8, 2),
             {},
             dayOf(2026, 9, 30),
             "A. Keeper",
             "from the floor"};
    if (answered)
        s = {{26},
             {6},
             dayOf(2026, 8, 1),
             Disease::Efb,
             SampleMaterial::Brood,
             "bee laboratory",
             "",
             {},
             ResultId{7},
             {},
             "",
             ""};
    return s;
}
MiteFall fullMiteFall() { return {{27}, {6}, dayOf(2026, 7, 20), 5, 20, "A. Keeper", "windy"}; }
StripsOut fullStripsOut() { return {{28}, {8}, {6}, dayOf(2026, 9, 20), "A. Keeper", "one was gone"}; }
KitEnd fullKitEnd() {
    return {{29}, dayOf(2026, 6, 1), YardId{1},   "floor", ColonyId{6},
            2,    KitEndHow::Dipped, "A. Keeper", "P-9",   "wax bath"};
}
Notifiable fullNotifiable() { return {{30}, "Åland", Reportable::SmallHiveBeetle, true, "the office", "its leaflet"}; }
Keeper fullKeeper() { return {{31}, "A. Keeper", "1 Lane", "telephone", "R-1", "Åland"}; }

template <class T> void expectRoundTrip(const T& row) {
    const Row cells = toRow(row);
    ASSERT_EQ(cells.size(), columnsOf(tableOf<T>()).size()) << tableName(tableOf<T>());
    EXPECT_EQ(fromRow<T>(T(row).id.value, cells), row) << tableName(tableOf<T>());
}

TEST(RowCodec, GivesBackWhatItTook) {
    expectRoundTrip(fullYard());
    expectRoundTrip(fullStand());
    expectRoundTrip(fullBoxKind());
    expectRoundTrip(fullColony());
    expectRoundTrip(fullPlacement());
    expectRoundTrip(fullVisit());
    expectRoundTrip(fullTransfer());
    expectRoundTrip(fullResult());
    expectRoundTrip(fullTreatment());
    expectRoundTrip(fullLineage());
    EXPECT_EQ(fromRow<Kit>(13, toRow(fullKit())), fullKit());
    expectRoundTrip(fullMergeDay());
    expectRoundTrip(fullMergeChoice());
    expectRoundTrip(fullMergeStrip());
    expectRoundTrip(fullDivideChoice());
    expectRoundTrip(fullDivideStrip());
    expectRoundTrip(fullFeeding(false));
    expectRoundTrip(fullFeeding(true));
    expectRoundTrip(fullQueen());
    expectRoundTrip(fullFileMapping());
    expectRoundTrip(fullPhrase());
    expectRoundTrip(fullQuestion());
    expectRoundTrip(fullSample(false));
    expectRoundTrip(fullSample(true));
    expectRoundTrip(fullMiteFall());
    expectRoundTrip(fullStripsOut());
    expectRoundTrip(fullKitEnd());
    expectRoundTrip(fullNotifiable());
    expectRoundTrip(fullKeeper());
    expectRoundTrip(Person{{14}, "Ana", true});
    expectRoundTrip(Person{{15}, "Åse", false});
    expectRoundTrip(FixedThing{{16}, {3}, FixedKind::Track, "", {{0, 0}, {-1500, 250}}, std::nullopt});
    expectRoundTrip(FixedThing{{17}, {3}, FixedKind::Tree, "the lime", {{-1, 2}}, Millimetres{1800}});
}

TEST(RowCodec, FillsEveryCellOfAFullRow) {
    // A field that toRow forgot would leave its cell empty.
    const auto expectFull = [](Table table, const Row& cells) {
        for (size_t i = 0; i < cells.size(); ++i)
            EXPECT_FALSE(std::holds_alternative<std::monostate>(cells[i])) << tableName(table) << columnsOf(table)[i];
    };
    expectFull(Table::Yard, toRow(fullYard()));
    expectFull(Table::Stand, toRow(fullStand()));
    expectFull(Table::BoxKind, toRow(fullBoxKind()));
    expectFull(Table::Colony, toRow(fullColony()));
    expectFull(Table::Placement, toRow(fullPlacement()));
    expectFull(Table::Visit, toRow(fullVisit()));
    expectFull(Table::Transfer, toRow(fullTransfer()));
    expectFull(Table::Lineage, toRow(fullLineage()));
    expectFull(Table::Kit, toRow(fullKit()));
    expectFull(Table::MergeDay, toRow(fullMergeDay()));
    expectFull(Table::MergeChoice, toRow(fullMergeChoice()));
    expectFull(Table::MergeStrip, toRow(fullMergeStrip()));
    expectFull(Table::DivideChoice, toRow(fullDivideChoice()));
    expectFull(Table::DivideStrip, toRow(fullDivideStrip()));
    expectFull(Table::Queen, toRow(fullQueen()));
    expectFull(Table::FileMapping, toRow(fullFileMapping()));
    expectFull(Table::Phrase, toRow(fullPhrase()));
    expectFull(Table::Question, toRow(fullQuestion()));
    expectFull(Table::MiteFall, toRow(fullMiteFall()));
    expectFull(Table::StripsOut, toRow(fullStripsOut()));
    expectFull(Table::KitEnd, toRow(fullKitEnd()));
    expectFull(Table::Notifiable, toRow(fullNotifiable()));
    expectFull(Table::Keeper, toRow(fullKeeper()));
    EXPECT_EQ(toRow(fullResult())[1], Value());    // one of colony and yard
    EXPECT_EQ(toRow(fullTreatment())[0], Value()); // likewise
}

TEST(RowCodec, KeepsNotRecordedApartFromZero) {
    Visit blank;
    blank.id = {1};
    blank.colony = {2};
    blank.day = dayOf(2026, 7, 1);
    const Row cells = toRow(blank);
    for (size_t i = 2; i < cells.size(); ++i) EXPECT_EQ(cells[i], Value()) << columnsOf(Table::Visit)[i];
    expectRoundTrip(blank);
    Visit zero = blank;
    zero.beesTop = Quarters{0};
    zero.mites = 0;
    EXPECT_NE(toRow(zero), cells);
    expectRoundTrip(zero);
}

TEST(RowCodec, FilesNamesUnderTheirFoldedKey) {
    EXPECT_EQ(std::get<QString>(toRow(fullYard())[1]), QString::fromUtf8("østre 7"));
    EXPECT_EQ(std::get<QString>(toRow(fullColony())[1]), "n7");
}

TEST(RowCodec, RefusesACellThatIsNotWhatItsColumnHolds) {
    const auto refuses = [](size_t cell, const Value& value) {
        Row row = toRow(fullVisit());
        row[cell] = value;
        try {
            fromRow<Visit>(8, row);
            return false;
        } catch (const Error& e) {
            return e.kind() == Error::Kind::Book && e.detail().contains(QLatin1String(columnsOf(Table::Visit)[cell]));
        }
    };
    EXPECT_TRUE(refuses(0, Value()));
    EXPECT_TRUE(refuses(1, QString("2026-02-30")));
    EXPECT_TRUE(refuses(1, qint64(5)));
    EXPECT_TRUE(refuses(3, QString("13")));
    EXPECT_TRUE(refuses(3, qint64(1) << 40));
    EXPECT_TRUE(refuses(9, QString("gone")));
    EXPECT_TRUE(refuses(17, qint64(5)));
    Row tooShort = toRow(fullVisit());
    tooShort.pop_back();
    EXPECT_THROW(fromRow<Visit>(8, tooShort), Error);
}

TEST(Tables, AreFoundByTheirNames) {
    for (int i = 0; i < kTableCount; ++i) {
        const auto table = static_cast<Table>(i);
        EXPECT_EQ(tableNamed(QString::fromLatin1(tableName(table))), table);
        EXPECT_FALSE(columnsOf(table).empty());
    }
    EXPECT_EQ(tableNamed(u"history"), std::nullopt);
}

} // namespace
