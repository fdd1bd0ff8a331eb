#include "tests/ui/open_window.h"

#include "core/edit/edits.h"
#include "ui/board/board.h"
#include "ui/look/text_size.h"
#include "ui/table/hive_table.h"
#include "ui/time/time_desk.h"
#include "ui/window/commands.h"
#include "ui/window/furniture.h"
#include "ui/window/yard_list.h"

#include <QAction>
#include <QApplication>
#include <QHeaderView>
#include <QLabel>
#include <QListView>
#include <QMenu>
#include <QPushButton>
#include <QSettings>
#include <QSplitter>

namespace {

using ui::table::Column;
using ui::window::Furniture;
using ui::window::MainWindow;
using ui::window::Place;

/// A window that is closed and opened again, as a user does.
struct Furnished : ::testing::Test {
    tests::BookOfTest book;
    tests::TestDialogs dialogs;
    tests::FixedClock clock = book.clock();
    std::unique_ptr<MainWindow> window;
    std::unique_ptr<Furniture> furniture;

    void SetUp() override {
        QSettings().clear();
        begin();
    }
    void TearDown() override {
        end();
        ui::look::setTextPercent(ui::look::kUsualText);
        QSettings().clear();
    }
    void begin() {
        window = std::make_unique<MainWindow>(clock, dialogs);
        furniture = std::make_unique<Furniture>(*window);
        ASSERT_TRUE(window->openBook(book.path()));
        window->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(window.get()));
        window->activateWindow();
    }
    void end() {
        if (window) window->close();
        furniture.reset();
        window.reset();
    }
    void again() {
        end();
        begin();
    }
    void key(Qt::Key key, Qt::KeyboardModifiers with = {}) const {
        QTest::keyClick(window.get(), key, with);
        QCoreApplication::processEvents(); // the text's size reaches the windows by an event
    }
    ui::table::HiveTable* table() const { return window->page()->table(); }
};

TEST_F(Furnished, SizeAndSplittersStay) {
    window->resize(1111, 777);
    window->page()->across()->setSizes({300, 411, 400});
    const QList<int> sizes = window->page()->across()->sizes();
    again();
    EXPECT_EQ(window->size(), QSize(1111, 777));
    EXPECT_EQ(window->page()->across()->sizes(), sizes);
}

TEST_F(Furnished, TheTableAndItsColumnsStay) {
    key(Qt::Key_T, Qt::ControlModifier);
    ASSERT_TRUE(table()->isVisible());
    QHeaderView* head = table()->horizontalHeader();
    head->resizeSection(static_cast<int>(Column::Queen), 137);
    head->moveSection(head->visualIndex(static_cast<int>(Column::Boxes)), 1);
    table()->setColumnHidden(static_cast<int>(Column::Stand), true);
    table()->sortByColumn(static_cast<int>(Column::Strength), Qt::DescendingOrder);
    again();
    ASSERT_TRUE(table()->isVisible());
    head = table()->horizontalHeader();
    EXPECT_EQ(head->sectionSize(static_cast<int>(Column::Queen)), 137);
    EXPECT_EQ(head->visualIndex(static_cast<int>(Column::Boxes)), 1);
    EXPECT_TRUE(table()->isColumnHidden(static_cast<int>(Column::Stand)));
    EXPECT_EQ(table()->model()->index(0, 0).data().toString(), QStringLiteral("A6")) << "the strongest first";
    EXPECT_EQ(table()->model()->index(5, 0).data().toString(), QStringLiteral("A1"));
}

TEST_F(Furnished, ColumnsThatAreNotThisTablesChangeNothing) {
    QSettings().setValue(QStringLiteral("table/columns"), QByteArray("not columns at all"));
    key(Qt::Key_T, Qt::ControlModifier);
    QSettings().setValue(QStringLiteral("table/columns"), QByteArray("not columns at all"));
    furniture.reset();
    window.reset();
    begin();
    EXPECT_EQ(table()->model()->index(0, 0).data().toString(), QStringLiteral("A1"));
    EXPECT_FALSE(table()->isColumnHidden(0));
}

TEST_F(Furnished, OpensInThePresentUnlessThatWasMergeDay) {
    const core::Day later = clock.day + 5;
    window->setPlace(Place::MergeDay);
    emit window->page()->board()->dayAsked(later);
    window->setPlace(Place::YardPlan);
    again();
    EXPECT_EQ(window->page()->place(), Place::YardPlan);
    EXPECT_EQ(window->desk()->day(), clock.day);
    key(Qt::Key_4, Qt::ControlModifier);
    EXPECT_EQ(window->page()->place(), Place::MergeDay);
    EXPECT_EQ(window->desk()->day(), later) << "the merge day is remembered for when it is opened";
    again();
    EXPECT_EQ(window->page()->place(), Place::MergeDay);
    EXPECT_EQ(window->desk()->day(), later);
    key(Qt::Key_1, Qt::ControlModifier);
    EXPECT_EQ(window->desk()->day(), clock.day);
}

TEST_F(Furnished, LastSeasonsMergeDayIsForgotten) {
    window->setPlace(Place::MergeDay);
    emit window->page()->board()->dayAsked(clock.day + 5);
    end();
    clock.day = clock.day + 31;
    begin();
    EXPECT_EQ(window->page()->place(), Place::YardPlan);
    EXPECT_EQ(window->desk()->day(), clock.day);
}

TEST_F(Furnished, TheYardStaysWithItsBook) {
    core::Yard south;
    south.name = QStringLiteral("South");
    window->desk()->session().apply([&](const core::edit::EditContext& c) { return core::edit::newYard(c, south); });
    window->page()->yards()->list()->setFocus();
    QTest::keyClick(window->page()->yards()->list(), Qt::Key_Down);
    const auto chosen = window->desk()->yard();
    again();
    EXPECT_EQ(window->desk()->yard(), chosen);
    const tests::BookOfTest other;
    ASSERT_TRUE(window->openBook(other.path()));
    EXPECT_EQ(window->desk()->yard(), core::YardId{1}) << "another book has its own";
}

TEST_F(Furnished, TextGrowsAndShrinksByKeysAndStays) {
    const double usual = window->font().pointSizeF();
    const auto title = [this] {
        double most = 0;
        for (const QLabel* l : window->page()->findChildren<QLabel*>()) most = std::max(most, l->font().pointSizeF());
        return most;
    };
    const double usualTitle = title();
    key(Qt::Key_Plus, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(ui::look::textPercent(), 110);
    EXPECT_NEAR(window->font().pointSizeF(), usual * 1.1, 0.01);
    EXPECT_NEAR(window->page()->plan()->font().pointSizeF(), usual * 1.1, 0.01) << "the labels of the plan too";
    EXPECT_NEAR(title(), usualTitle * 1.1, 0.01) << "titles too";
    for (int i = 0; i < 10; ++i) key(Qt::Key_Plus, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(ui::look::textPercent(), 200);
    EXPECT_NEAR(QApplication::font("QMenu").pointSizeF(), usual * 2, 0.01);
    for (int i = 0; i < 20; ++i) key(Qt::Key_Minus, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(ui::look::textPercent(), 80);
    again();
    EXPECT_NEAR(window->font().pointSizeF(), usual * 0.8, 0.01);
    key(Qt::Key_0, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_NEAR(window->font().pointSizeF(), usual, 0.01);
    const double zoom = window->page()->plan()->camera().pixelsPerMetre;
    key(Qt::Key_Plus, Qt::ControlModifier);
    EXPECT_GT(window->page()->plan()->camera().pixelsPerMetre, zoom) << "without Shift it is still the plan's zoom";
    EXPECT_EQ(ui::look::textPercent(), 100);
}

TEST_F(Furnished, NoLabelIsCutAtHalfAsLargeAgain) {
    window->resize(1440, 900);
    window->setTextPercent(150);
    window->desk()->choose(book.idOf(QStringLiteral("A3")));
    window->page()->logVisit();
    for (int i = 0; i < 5; ++i) QCoreApplication::processEvents();
    for (const QLabel* label : window->findChildren<QLabel*>()) {
        if (!label->isVisible() || label->wordWrap() || label->text().isEmpty()) continue;
        EXPECT_GE(label->width(), label->sizeHint().width()) << label->text().toStdString();
    }
    for (const QPushButton* button : window->findChildren<QPushButton*>())
        EXPECT_TRUE(!button->isVisible() || button->width() >= button->minimumSizeHint().width())
            << button->text().toStdString();
}

TEST_F(Furnished, F6GoesAroundThePanes) {
    key(Qt::Key_T, Qt::ControlModifier);
    window->setPlace(Place::MergeDay);
    const auto* page = window->page();
    QWidget* const panes[] = {page->plan(), page->time()->bar(), page->table(), page->board(), page->yards()};
    const auto in = [](const QWidget* pane) {
        const QWidget* now = QApplication::focusWidget();
        return now && (pane == now || pane->isAncestorOf(now));
    };
    ASSERT_TRUE(in(panes[0]));
    for (int i = 1; i <= 5; ++i) {
        key(Qt::Key_F6);
        EXPECT_TRUE(in(panes[i % 5])) << i;
    }
    for (int i = 4; i >= 0; --i) {
        key(Qt::Key_F6, Qt::ShiftModifier);
        EXPECT_TRUE(in(panes[i])) << i;
    }
    key(Qt::Key_T, Qt::ControlModifier);
    key(Qt::Key_F6);
    key(Qt::Key_F6);
    EXPECT_TRUE(in(page->board())) << "a pane that is not shown is passed over";
}

TEST_F(Furnished, ColumnsAreMovedHiddenAndSortedByKeys) {
    key(Qt::Key_T, Qt::ControlModifier);
    table()->setFocus();
    table()->setCurrentIndex(table()->model()->index(0, static_cast<int>(Column::Stand)));
    QTest::keyClick(table(), Qt::Key_Right, Qt::AltModifier);
    EXPECT_EQ(table()->horizontalHeader()->visualIndex(static_cast<int>(Column::Stand)), 2);
    QMenu* menu = window->commands()->columns;
    emit menu->aboutToShow();
    const auto command = [&](const QMenu& of, const QString& text) {
        for (QAction* a : of.actions())
            if (a->text() == text) return a;
        return static_cast<QAction*>(nullptr);
    };
    ASSERT_TRUE(command(*menu, QStringLiteral("Queen")));
    command(*menu, QStringLiteral("Queen"))->trigger();
    EXPECT_TRUE(table()->isColumnHidden(static_cast<int>(Column::Queen)));
    EXPECT_FALSE(command(*menu, QStringLiteral("Hive"))->isEnabled()) << "the name is always shown";
    const QMenu* sort = menu->findChild<QMenu*>();
    ASSERT_TRUE(sort);
    QAction* frames = command(*sort, QStringLiteral("Frames"));
    ASSERT_TRUE(frames);
    frames->trigger();
    frames->trigger();
    EXPECT_EQ(table()->model()->index(0, 0).data().toString(), QStringLiteral("A6"));
}

} // namespace
