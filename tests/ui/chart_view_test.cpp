#include "charting.h"
#include "test_dialogs.h"

#include "ui/chart/chart_panel.h"

#include <gtest/gtest.h>

#include <QAccessible>
#include <QAction>
#include <QApplication>
#include <QFile>
#include <QMenu>
#include <QPushButton>
#include <QTableView>
#include <QTemporaryDir>
#include <QTest>

namespace {

using namespace charting;

struct Panel {
    tests::TestDialogs dialogs;
    ChartPanel panel{dialogs};
    explicit Panel(const Chart& chart) {
        panel.setChart(chart);
        panel.resize(760, 480);
        panel.show();
        panel.activateWindow();
        panel.view()->setFocus();
        QApplication::processEvents();
    }
    void key(Qt::Key k) { QTest::keyClick(QApplication::focusWidget(), k); }
};

TEST(ChartView, IsReadByKeys) {
    Panel p(mites());
    EXPECT_EQ(p.panel.reading(), spoken(mites(), day(2026, 9, 10).number)); // the latest, once the keys are there
    p.key(Qt::Key_Left);
    EXPECT_EQ(p.panel.reading(), QStringLiteral("1 Aug 2026: 4 in 100 (2.1 to 6.9), 12 in 300 bees"));
    p.key(Qt::Key_Home);
    p.key(Qt::Key_Left); // stays at the first
    EXPECT_EQ(p.panel.reading(), spoken(mites(), day(2026, 5, 2).number));
    p.key(Qt::Key_Right);
    EXPECT_EQ(p.panel.reading(), spoken(mites(), day(2026, 6, 20).number));
    QAccessibleInterface* told = QAccessible::queryAccessibleInterface(p.panel.view());
    ASSERT_TRUE(told);
    EXPECT_EQ(told->role(), QAccessible::Chart);
    EXPECT_EQ(told->text(QAccessible::Value), p.panel.reading());
    EXPECT_EQ(told->text(QAccessible::Name), QStringLiteral("Mites"));
    EXPECT_EQ(told->text(QAccessible::Description), summary(mites()));
}

TEST(ChartView, IsReadByTheMouseAndGoesBackToTheKeysAfterIt) {
    Panel p(mites());
    const ChartLayout& l = p.panel.view()->layedOut();
    const QPointF at = l.points[0][1].where + QPointF(4, 4);
    QTest::mouseMove(p.panel.view(), at.toPoint());
    QApplication::processEvents();
    EXPECT_EQ(p.panel.reading(), spoken(mites(), day(2026, 6, 20).number));
    QEvent leave(QEvent::Leave);
    QApplication::sendEvent(p.panel.view(), &leave);
    EXPECT_EQ(p.panel.reading(), spoken(mites(), day(2026, 9, 10).number));
}

TEST(ChartView, TurnsToItsTableAtTheSameDay) {
    Panel p(mites());
    p.key(Qt::Key_Left);
    p.key(Qt::Key_T);
    ASSERT_TRUE(p.panel.tableShown());
    EXPECT_EQ(QApplication::focusWidget(), p.panel.table());
    EXPECT_EQ(p.panel.table()->currentIndex().row(), 2);
    p.key(Qt::Key_Up);
    p.key(Qt::Key_T);
    EXPECT_FALSE(p.panel.tableShown());
    EXPECT_EQ(QApplication::focusWidget(), p.panel.view());
    EXPECT_EQ(p.panel.reading(), spoken(mites(), day(2026, 6, 20).number));
}

TEST(ChartView, HasNothingToReadWhereNothingIsRecorded) {
    Panel p(none());
    p.key(Qt::Key_Right);
    p.key(Qt::Key_T);
    EXPECT_FALSE(p.panel.tableShown());
    EXPECT_FALSE(p.panel.findChild<QPushButton*>(QStringLiteral("chartSave"))->isEnabled());
    EXPECT_EQ(p.panel.view()->accessibleDescription(), none().none);
}

TEST(ChartView, IsSavedWhereItIsAsked) {
    Panel p(mites());
    QTemporaryDir dir;
    const auto actions = p.panel.findChild<QPushButton*>(QStringLiteral("chartSave"))->menu()->actions();
    ASSERT_EQ(actions.size(), 3);
    for (QAction* action : actions) {
        p.dialogs.file = dir.filePath(QStringLiteral("chart"));
        QFile::remove(*p.dialogs.file);
        action->trigger();
        EXPECT_TRUE(QFile::exists(*p.dialogs.file));
        EXPECT_TRUE(p.dialogs.suggested.startsWith(QStringLiteral("Mites.")));
        EXPECT_TRUE(p.panel.reading().contains(*p.dialogs.file));
    }
}

} // namespace
