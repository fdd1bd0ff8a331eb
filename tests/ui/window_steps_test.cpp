#include "tests/ui/open_window.h"
#include "ui/merge/merge_place.h"
#include "ui/window/commands.h"

#include <QAbstractItemView>
#include <QAction>
#include <QApplication>
#include <QMenu>
#include <QTabBar>

// The steps of a merge day, by keys, menu and tabs.

namespace {

using ui::merge::MergePlace;
using ui::merge::Step;
using ui::window::Place;

struct Steps : tests::OpenWindow {
    MergePlace* merge() const { return window->page()->merge(); }
    QTabBar* tabs() const { return merge()->findChild<QTabBar*>(QStringLiteral("mergeSteps")); }
    void alt(Qt::Key key) const { QTest::keyClick(window->focusWidget(), key, Qt::AltModifier); }
};

TEST_F(Steps, AKeyGoesToAStepFromAnyPlace) {
    ASSERT_EQ(window->page()->place(), Place::YardPlan);
    alt(Qt::Key_1);
    EXPECT_EQ(window->page()->place(), Place::MergeDay);
    EXPECT_EQ(merge()->step(), Step::GetReady);
    EXPECT_TRUE(merge()->page(Step::GetReady)->isVisible());
    alt(Qt::Key_2);
    EXPECT_EQ(merge()->step(), Step::Plan);
    EXPECT_TRUE(merge()->page(Step::Plan)->isVisible());
    EXPECT_TRUE(qobject_cast<QAbstractItemView*>(QApplication::focusWidget())) << "the keys of a plan are its list's";
    EXPECT_FALSE(merge()->page(Step::GetReady)->isVisible());
    alt(Qt::Key_3);
    EXPECT_EQ(merge()->step(), Step::WriteBack);
}

TEST_F(Steps, MergeDayOpensAtThePlanAndStaysWhereItWas) {
    QTest::keyClick(plan(), Qt::Key_2, Qt::ControlModifier);
    EXPECT_EQ(merge()->step(), Step::Plan);
    alt(Qt::Key_3);
    QTest::keyClick(window->focusWidget(), Qt::Key_1, Qt::ControlModifier);
    ASSERT_EQ(window->page()->place(), Place::YardPlan);
    QTest::keyClick(window->focusWidget(), Qt::Key_2, Qt::ControlModifier);
    EXPECT_EQ(merge()->step(), Step::WriteBack);
}

TEST_F(Steps, TheTabsGoByMouseAndArrows) {
    QTest::keyClick(plan(), Qt::Key_2, Qt::ControlModifier);
    QTest::mouseClick(tabs(), Qt::LeftButton, {}, tabs()->tabRect(0).center());
    EXPECT_EQ(merge()->step(), Step::GetReady);
    tabs()->setFocus();
    QTest::keyClick(tabs(), Qt::Key_Right);
    EXPECT_EQ(merge()->step(), Step::Plan);
}

TEST_F(Steps, WhatTheMenuHadOfAStepHasNoKeysWhereItIsNotShown) {
    alt(Qt::Key_2);
    QMenu* menu = window->commands()->steps;
    emit menu->aboutToShow(); // a real popup takes the activation along on this platform
    ASSERT_TRUE(menu->actions().contains(merge()->page(Step::Plan)->actions().front()));
    emit menu->aboutToHide();
    QCoreApplication::processEvents();
    alt(Qt::Key_4);
    ASSERT_TRUE(merge()->page(Step::Afterwards)->isVisible());
    QTest::keyClick(window->focusWidget(), Qt::Key_Y, Qt::ControlModifier); // why not, of the plan
    EXPECT_TRUE(window->focusWidget()->isVisible());
    EXPECT_TRUE(merge()->page(Step::Afterwards)->isAncestorOf(window->focusWidget()));
}

TEST_F(Steps, TheMenuHasEveryStepAndWhatTheOneShownCanDo) {
    QTest::keyClick(plan(), Qt::Key_2, Qt::ControlModifier);
    QMenu* menu = window->commands()->steps;
    emit menu->aboutToShow();
    for (const QAction* step : merge()->stepActions())
        EXPECT_EQ(menu->actions().contains(step), step->isEnabled()) << step->text().toStdString();
    EXPECT_GE(menu->actions().size(), 3 + merge()->page(Step::Plan)->actions().size());
    for (const QAction* step : merge()->stepActions())
        EXPECT_EQ(step->isChecked(), step->text() == QLatin1String("Plan"));
}

} // namespace
