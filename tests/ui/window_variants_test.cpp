#include "tests/ui/arguing.h"

#include "ui/board/board_head.h"
#include "ui/board/variant_table.h"

#include <QHeaderView>
#include <QTableWidget>

// Variants of a merge day side by side.

namespace {

using core::MergeAsk;
using ui::board::RowKind;

struct Variants : tests::Arguing {
    int shown() const { return asked().day.variant; }
    size_t count() const { return board()->merge().variants().size(); }
    QPushButton* number(int n) const { return board()->head()->variant(n); }
    void forbidFirst() const {
        const auto& r = window->desk()->reading();
        press(list()->rows().rowAbout(r.snapshot.colony(r.plan.unions.front().host).id), MergeAsk::Forbid);
    }
};

TEST_F(Variants, ASecondIsACopyAndIsChangedByItself) {
    const std::string proposed = unions();
    key(Qt::Key_V, Qt::ControlModifier | Qt::ShiftModifier);
    ASSERT_EQ(count(), 2U) << said();
    EXPECT_EQ(shown(), 2);
    EXPECT_EQ(unions(), proposed);
    forbidFirst();
    const std::string second = unions();
    EXPECT_NE(second, proposed);
    QTest::mouseClick(number(1), Qt::LeftButton);
    EXPECT_EQ(shown(), 1);
    EXPECT_EQ(unions(), proposed);
    EXPECT_EQ(plan()->scene().unions.size(), window->desk()->reading().plan.unions.size());
    EXPECT_NE(difference().find("Came: "), std::string::npos) << "one variant against the other: " << difference();
    key(Qt::Key_J, Qt::ControlModifier);
    EXPECT_EQ(shown(), 2);
    EXPECT_EQ(unions(), second);
}

TEST_F(Variants, ThreeAtMost) {
    forbidFirst();
    key(Qt::Key_V, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(asked().choices.size(), 1U) << "with what was asked";
    key(Qt::Key_V, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(count(), 3U);
    EXPECT_EQ(shown(), 3);
    key(Qt::Key_V, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(count(), 3U);
    key(Qt::Key_J, Qt::ControlModifier);
    EXPECT_EQ(shown(), 1) << "around the end";
}

TEST_F(Variants, AreComparedSideBySideAndShownFromThere) {
    key(Qt::Key_V, Qt::ControlModifier | Qt::ShiftModifier);
    forbidFirst();
    const auto& r = window->desk()->reading();
    const size_t second = r.plan.unions.size();
    key(Qt::Key_J, Qt::ControlModifier | Qt::ShiftModifier);
    QTableWidget* table = board()->questions()->variants()->table();
    ASSERT_TRUE(table->isVisible());
    ASSERT_EQ(table->columnCount(), 2);
    EXPECT_EQ(table->item(0, 1)->text().toULong(), second);
    EXPECT_GT(table->rowCount(), 6) << "the pairs in which they differ follow";
    EXPECT_TRUE(table->horizontalHeaderItem(1)->text().contains(QStringLiteral("shown")));
    const QHeaderView* head = table->horizontalHeader();
    QTest::mouseClick(head->viewport(), Qt::LeftButton, {}, QPoint(head->sectionPosition(0) + 20, head->height() / 2));
    EXPECT_EQ(shown(), 1);
    ASSERT_TRUE(table->isVisible());
    EXPECT_TRUE(table->horizontalHeaderItem(0)->text().contains(QStringLiteral("shown")));
    table->setFocus();
    QTest::keyClick(table, Qt::Key_Escape);
    EXPECT_FALSE(board()->questions()->variants()->isVisible());
}

TEST_F(Variants, OneIsDroppedAndUndoBringsItBack) {
    key(Qt::Key_V, Qt::ControlModifier | Qt::ShiftModifier);
    forbidFirst();
    board()->merge().dropVariant();
    EXPECT_EQ(count(), 1U);
    EXPECT_EQ(shown(), 1);
    EXPECT_FALSE(number(1)->isVisible()) << "one alone needs no number";
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(count(), 2U);
    const auto reader = core::edit::Session::open(book.path(), book.clock(), core::edit::Session::Access::ReadOnly);
    EXPECT_TRUE(reader->check().isEmpty());
}

TEST_F(Variants, ADayBegunWithAVariantIsOneUndo) {
    key(Qt::Key_V, Qt::ControlModifier | Qt::ShiftModifier);
    ASSERT_EQ(count(), 2U);
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(count(), 0U);
}

} // namespace
