#include "tests/support/csv_snapshot.h"
#include "tests/support/csv_tables.h"
#include "ui/board/board_model.h"
#include "ui/table/hive_model.h"
#include "ui/window/yard_list.h"

#include <gtest/gtest.h>

#include <QAbstractItemModelTester>

namespace {

ui::desk::Reading kilnField(core::Day on = core::dayOf(2026, 9, 15)) {
    const QString folder = QStringLiteral(YW_TEST_DATA "/yards/kiln-field");
    return ui::desk::readingOf(tests::support::snapshotOf(tests::support::tablesOfFolder(folder), on));
}

TEST(HiveModel, HoldsToTheContractOfModels) {
    const ui::desk::Reading r = kilnField();
    ui::table::HiveModel model;
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    model.show(r, core::YardIx{0});
    EXPECT_EQ(model.rowCount(), 12);
    model.show(r, std::nullopt);
    EXPECT_EQ(model.rowCount(), 0);
}

TEST(HiveModel, SortsLabelsNaturallyAndFramesByNumber) {
    const ui::desk::Reading r = kilnField();
    ui::table::HiveModel model;
    model.show(r, core::YardIx{0});
    ui::table::HiveSorter sorter;
    const QAbstractItemModelTester tester(&sorter, QAbstractItemModelTester::FailureReportingMode::Fatal);
    sorter.setSourceModel(&model);
    const auto at = [&](int row, ui::table::Column c) { return sorter.index(row, static_cast<int>(c)).data().toString(); };
    sorter.sort(static_cast<int>(ui::table::Column::Label));
    EXPECT_EQ(at(1, ui::table::Column::Label), QStringLiteral("K2")) << "not K10";
    EXPECT_EQ(at(11, ui::table::Column::Label), QStringLiteral("K12"));
    sorter.sort(static_cast<int>(ui::table::Column::Strength), Qt::DescendingOrder);
    EXPECT_EQ(at(0, ui::table::Column::Label), QStringLiteral("K1")) << "9.5 frames";
    EXPECT_EQ(at(11, ui::table::Column::Strength), QStringLiteral("—")) << "not counted comes last";
}

TEST(HiveModel, EachCellIsSpokenWithItsHeading) {
    const ui::desk::Reading r = kilnField();
    ui::table::HiveModel model;
    model.show(r, core::YardIx{0});
    const int row = *model.rowOf(model.colonyAt(3));
    const auto spoken = model.index(row, static_cast<int>(ui::table::Column::Strength)).data(Qt::AccessibleTextRole);
    EXPECT_EQ(spoken.toString(), QStringLiteral("Frames: 5.25"));
}

// Source: the worked yard kiln-field and its expected.json (tests/data/yards).
TEST(BoardModel, HoldsComeFirstThenUnionsInTheirOrder) {
    const ui::desk::Reading r = kilnField();
    ui::board::BoardModel model;
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    model.setRows(ui::board::boardRows(r, {0}));
    std::vector<QString> cards;
    for (int i = 0; i < model.rowCount(); ++i)
        if (model.at(i).kind == ui::board::RowKind::Hold || model.at(i).kind == ui::board::RowKind::Union)
            cards.push_back(model.at(i).title);
    ASSERT_EQ(cards.size(), 4u);
    EXPECT_TRUE(cards[0].startsWith(QStringLiteral("K7"))) << cards[0].toStdString();
    EXPECT_EQ(cards[1], QStringLiteral("K2 → K4"));
    EXPECT_EQ(cards[2], QStringLiteral("K3 → K11"));
    EXPECT_EQ(cards[3], QStringLiteral("K6 → K5"));
}

TEST(BoardModel, AHoldSaysWhatWouldLiftItAndAUnionItsCautions) {
    const ui::desk::Reading r = kilnField();
    const auto rows = ui::board::boardRows(r, {0});
    for (const auto& row : rows) {
        if (row.kind == ui::board::RowKind::Hold) { EXPECT_FALSE(row.more.isEmpty()) << row.title.toStdString(); }
        if (row.title == QStringLiteral("K2 → K4")) { EXPECT_EQ(row.cautions.size(), 2); }
        if (row.title == QStringLiteral("K3 → K11")) { EXPECT_TRUE(row.cautions.isEmpty()); }
    }
}

TEST(BoardModel, EveryColonyOfThePlanIsFoundByItsRow) {
    const ui::desk::Reading r = kilnField();
    ui::board::BoardModel model;
    model.setRows(ui::board::boardRows(r, {0}));
    for (const auto& f : r.facts)
        EXPECT_GE(model.rowAbout(r.snapshot.colony(f.colony).id), 0) << r.snapshot.colony(f.colony).shown.toStdString();
}

TEST(YardModel, TellsWhatIsToBeDone) {
    const ui::desk::Reading r = kilnField();
    ui::window::YardModel model;
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    model.show(r);
    ASSERT_EQ(model.rowCount(), 1);
    EXPECT_EQ(model.at(0).hives, 12);
    EXPECT_EQ(model.at(0).status, QStringLiteral("3 unions · 1 held"));
    const ui::desk::Reading spring = kilnField(core::dayOf(2026, 6, 20));
    model.show(spring);
    EXPECT_TRUE(model.at(0).status.contains(QStringLiteral("not counted"))) << model.at(0).status.toStdString();
}

} // namespace
