// A colony over time, its family and its places, in the real window, by keys.

#include "tests/ui/hand.h"
#include "tests/ui/test_dialogs.h"
#include "tests/ui/time_book.h"

#include "ui/card/colony_card.h"
#include "ui/chart/chart_panel.h"
#include "ui/chart/chart_view.h"
#include "ui/chart/chart_window.h"
#include "ui/close/key_list.h"
#include "ui/life/card_pages.h"
#include "ui/life/family_list.h"
#include "ui/life/family_page.h"
#include "ui/life/over_time_page.h"
#include "ui/life/places_page.h"
#include "ui/plan/plan_view.h"
#include "ui/records/record_model.h"
#include "ui/window/main_window.h"
#include "ui/window/work_page.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QElapsedTimer>
#include <QListView>
#include <QTest>

namespace {

using tests::BookWithPast;
using ui::life::CardPages;

struct Life : ::testing::Test {
    BookWithPast book;
    tests::TestDialogs dialogs;
    std::unique_ptr<ui::window::MainWindow> window;

    void SetUp() override {
        window = std::make_unique<ui::window::MainWindow>(book.clock(), dialogs);
        ASSERT_TRUE(window->openBook(book.path()));
        window->resize(1440, 900);
        window->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(window.get()));
        window->activateWindow();
        window->desk()->setYard(book.yard());
    }
    CardPages& pages() const { return *window->page()->cardPages(); }
    void key(Qt::Key k, Qt::KeyboardModifiers with = {}) const {
        QTest::keyClick(QApplication::focusWidget(), k, with);
    }
    /// The card of a colony, then so many pages on.
    void open(const char* label, int pagesOn) const {
        window->page()->showColony(book.idOf(label));
        for (int i = 0; i < pagesOn; ++i) key(Qt::Key_PageDown, Qt::ControlModifier);
    }
};

TEST_F(Life, ChartsAreReadAndOpenedLargeByKeys) {
    open("B1", 1);
    ASSERT_EQ(pages().shown(), pages().overTime());
    const auto& charts = pages().overTime()->charts();
    ASSERT_EQ(charts.size(), 5u);
    EXPECT_EQ(QApplication::focusWidget(), charts[0]);
    EXPECT_EQ(pages().overTime()->reading(), QStringLiteral("Strength, 20 Aug 2026: 7 frames"));
    key(Qt::Key_Home);
    EXPECT_EQ(pages().overTime()->reading(), QStringLiteral("Strength, 3 Jun 2026: 5 frames"));
    key(Qt::Key_Return);
    auto* large = pages().overTime()->findChild<ui::chart::ChartWindow*>();
    ASSERT_TRUE(large && large->isVisible());
    ASSERT_TRUE(QTest::qWaitForWindowActive(large));
    EXPECT_EQ(large->panel()->view()->chart().title, QStringLiteral("B1: Strength"));
    EXPECT_EQ(large->panel()->reading(), QStringLiteral("3 Jun 2026: 5 frames")) << "at the same stop";
    QTest::keyClick(large->panel()->view(), Qt::Key_T);
    EXPECT_TRUE(large->panel()->tableShown());
    QTest::keyClick(large, Qt::Key_Escape);
    EXPECT_FALSE(large->isVisible());
}

TEST_F(Life, HoldsAreWorkedOutBesideAndMarked) {
    open("B1", 1);
    const auto holds = [this] {
        QStringList out;
        for (const auto& m : pages().overTime()->charts()[0]->chart().marks)
            if (m.kind == ui::chart::MarkKind::Hold) out << ui::chart::markText(m);
        return out;
    };
    ASSERT_TRUE(QTest::qWaitFor([&] { return !holds().isEmpty(); }, 10000));
    EXPECT_TRUE(holds().contains(
        QStringLiteral("held: American foulbrood suspected, 3 Jul 2026 to 15 Sep 2026"))) // the sign of that day
        << holds().join(u'|').toStdString();
}

TEST_F(Life, ChartsFollowTheBookAndTheColonyChosen) {
    open("B1", 1);
    core::Visit v;
    v.colony = book.idOf("B1");
    v.day = core::dayOf(2026, 9, 10);
    v.beesTop = core::Quarters{30};
    window->desk()->save(QString(), [&](const core::edit::EditContext& c) { return core::edit::logVisit(c, v); });
    const auto& charts = pages().overTime()->charts();
    EXPECT_TRUE(charts[0]->accessibleDescription().contains(QStringLiteral("last 7.5 frames")))
        << charts[0]->accessibleDescription().toStdString();
    window->desk()->choose(book.idOf("B4"));
    EXPECT_EQ(charts[0]->accessibleDescription(), QStringLiteral("Its bees were never counted."));
}

TEST_F(Life, TheFamilyIsWalkedByKeysAndOpensAnEndedColony) {
    open("B3", 2);
    ASSERT_EQ(pages().shown(), pages().family());
    ASSERT_EQ(QApplication::focusWidget(), pages().family()->list());
    EXPECT_EQ(pages().family()->model().rowCount(), 2);
    EXPECT_EQ(pages().family()->reading(), QStringLiteral("B3, since 10 May 2026; B2 united into it on 20 Jun 2026"));
    key(Qt::Key_Left);
    EXPECT_EQ(pages().family()->reading(),
              QStringLiteral("B2, 10 May 2026 to 20 Jun 2026, united; united into B3 on 20 Jun 2026"));
    key(Qt::Key_Right);
    EXPECT_TRUE(pages().family()->reading().startsWith(QStringLiteral("B3")));
    key(Qt::Key_Left);
    key(Qt::Key_Return);
    EXPECT_EQ(pages().shown(), window->page()->card());
    EXPECT_EQ(pages().family()->colony(), book.idOf("B2"));
    key(Qt::Key_PageDown, Qt::ControlModifier);
    ASSERT_EQ(pages().shown(), pages().overTime());
    EXPECT_TRUE(pages().overTime()->charts()[0]->accessibleDescription().startsWith(QStringLiteral("one value")));
}

TEST_F(Life, PlacesListEachStandWithMetresCarried) {
    open("B4", 3);
    ASSERT_EQ(pages().shown(), pages().places());
    ASSERT_EQ(QApplication::focusWidget(), pages().places()->list());
    const auto* model = pages().places()->list()->model();
    ASSERT_EQ(model->rowCount(), 2);
    const QString newest = model->index(0, 0).data(ui::records::RecordModel::WordsRole).toString();
    // from 6.000, 0.000 to 6.000, 3.000: 3 m
    EXPECT_EQ(newest, QStringLiteral("until now · entrance south · carried 3.0 m"));
    EXPECT_EQ(model->index(1, 0).data(ui::records::RecordModel::WordsRole).toString(),
              QStringLiteral("until 1 Jul 2026 · entrance south"));
}

TEST_F(Life, AskTheBookOnlyWhileTheyAreShown) {
    open("B1", 0);
    EXPECT_EQ(pages().overTime()->charts()[0]->accessibleDescription(), QString()) << "not yet asked for";
    EXPECT_EQ(pages().family()->model().rowCount(), 0);
}

TEST_F(Life, NothingChosenIsSaidInASentence) {
    open("B1", 1);
    window->desk()->choose(std::nullopt);
    EXPECT_FALSE(pages().overTime()->charts()[0]->isVisible());
}

} // namespace
