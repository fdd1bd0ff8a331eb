#include "tests/ui/open_window.h"

#include "core/edit/edits.h"
#include "ui/history/change_view.h"
#include "ui/history/filter_bar.h"
#include "ui/history/history_model.h"
#include "ui/history/history_window.h"
#include "ui/window/status_line.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>

namespace {

using ui::history::Column;
using ui::history::HistoryWindow;

struct History : tests::OpenWindow {
    /// Shown and in front, as keys ask for.
    static void inFront(QWidget* w) {
        QCoreApplication::processEvents();
        w->activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(w));
        QCoreApplication::processEvents();
    }
    static HistoryWindow* byKey(ui::window::MainWindow* main) {
        inFront(main);
        QTest::keyClick(main, Qt::Key_H, Qt::ControlModifier);
        auto* history = main->page()->findChild<HistoryWindow*>();
        if (history) inFront(history);
        return history;
    }
    HistoryWindow* open() const {
        QTest::mouseClick(window->statusLine()->savedButton(), Qt::LeftButton);
        auto* history = window->page()->findChild<HistoryWindow*>();
        EXPECT_NE(history, nullptr);
        EXPECT_TRUE(history && QTest::qWaitForWindowExposed(history));
        return history;
    }
    static std::string text(const HistoryWindow& h, int row, Column column = Column::What) {
        return h.model()->index(row, static_cast<int>(column)).data().toString().toStdString();
    }
    static void choose(const HistoryWindow& h, const QString& begins) {
        for (int row = 0; row < h.model()->rowCount(); ++row) {
            const QModelIndex at = h.model()->index(row, static_cast<int>(Column::What));
            if (!at.data().toString().startsWith(begins)) continue;
            h.table()->scrollTo(at);
            return QTest::mouseClick(h.table()->viewport(), Qt::LeftButton, {}, h.table()->visualRect(at).center());
        }
        ADD_FAILURE() << "no line begins with " << begins.toStdString();
    }
    static void type(const HistoryWindow& h, const char* field, const QString& text) {
        auto* edit = h.findChild<QLineEdit*>(QLatin1StringView(field));
        ASSERT_NE(edit, nullptr);
        QTest::mouseClick(edit, Qt::LeftButton);
        edit->selectAll();
        QTest::keyClicks(edit, text);
        QTest::keyClick(edit, Qt::Key_Return);
    }
    /// Every cell of the detail, a line a row.
    static QStringList detail(const HistoryWindow& h) {
        QStringList lines;
        const QAbstractItemModel* m = h.changes()->model();
        for (int r = 0; r < m->rowCount(); ++r) {
            const QModelIndex record = m->index(r, 0);
            lines << record.data().toString();
            for (int f = 0; f < m->rowCount(record); ++f) {
                QStringList cells;
                for (int c = 0; c < 3; ++c) cells << m->index(f, c, record).data().toString();
                lines << cells.join(QStringLiteral(" | "));
            }
        }
        return lines;
    }
    void afb(const char* label) {
        core::Visit v;
        v.colony = book.idOf(QLatin1StringView(label));
        v.day = book.clock().day;
        v.signs.add(core::Sign::Afb);
        ASSERT_TRUE(window->desk()->save(QStringLiteral("Log a visit"),
                                         [&](const core::edit::EditContext& c) { return logVisit(c, v); }));
    }
};

TEST_F(History, AMiddleChangeIsTakenBackWithTheMouse) {
    drag(at("A5"), ground({8000, 3000}));
    drag(at("A6"), ground({10000, 3000}));
    drag(at("A5"), ground({8000, 6000}));
    drag(at("A1"), ground({0, 3000}));
    HistoryWindow* h = open();
    ASSERT_EQ(text(*h, 0).find("Carried A1"), 0u);
    type(*h, "historyColony", QStringLiteral("a6"));
    ASSERT_EQ(h->model()->rowCount(), 3) << "carried, visited, placed";
    choose(*h, QStringLiteral("Carried A6"));
    EXPECT_TRUE(detail(*h).contains(QStringLiteral("Place of A6 from 2026-09-15: added")))
        << detail(*h).join(u'\n').toStdString();
    ASSERT_TRUE(h->takeBackButton()->isEnabled()) << h->takeBackButton()->toolTip().toStdString();
    QTest::mouseClick(h->takeBackButton(), Qt::LeftButton);
    EXPECT_EQ(book.placeOf(QStringLiteral("A6")), (core::MmPoint{10000, 0})) << "read by another session";
    EXPECT_EQ(book.placeOf(QStringLiteral("A1")), (core::MmPoint{0, 3000}));
    EXPECT_EQ(text(*h, 0).find("Taken back: Carried A6"), 0u) << text(*h, 0);
    EXPECT_EQ(text(*h, 1, Column::Note), "taken back");
    EXPECT_FALSE(h->takeBackButton()->isEnabled());
    EXPECT_NE(said().find("Taken back: Carried A6"), std::string::npos) << said();
    QTest::keyClick(h, Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(book.placeOf(QStringLiteral("A6")), (core::MmPoint{10000, 3000})) << "redone from here";
}

TEST_F(History, WhatRestsOnAChangeIsSaid) {
    drag(at("A5"), ground({8000, 3000}));
    HistoryWindow* h = open();
    const size_t before = book.history().size();
    // The hive's own line: its visit and its carry came later.
    for (int row = 0; row < h->model()->rowCount(); ++row)
        if (text(*h, row).find("A5") != std::string::npos && text(*h, row).find("Added") == 0)
            h->table()->selectRow(row);
    if (h->takeBackButton()->isEnabled()) QTest::mouseClick(h->takeBackButton(), Qt::LeftButton);
    EXPECT_FALSE(h->said().isEmpty());
    EXPECT_TRUE(h->said().contains(QStringLiteral("A5"))) << h->said().toStdString();
    EXPECT_TRUE(h->said().startsWith(QStringLiteral("Later changed: Carried A5"))) << h->said().toStdString();
    EXPECT_EQ(book.history().size(), before);
    // The yard: only trying tells.
    choose(*h, QStringLiteral("Added yard"));
    ASSERT_TRUE(h->takeBackButton()->isEnabled());
    QTest::mouseClick(h->takeBackButton(), Qt::LeftButton);
    EXPECT_TRUE(h->said().startsWith(QStringLiteral("A later record rests on it: "))) << h->said().toStdString();
    EXPECT_EQ(book.history().size(), before);
}

TEST_F(History, ARecordThatAHoldRestsOnAsksForReasonAndName) {
    afb("A2");
    drag(at("A5"), ground({8000, 3000}));
    HistoryWindow* h = open();
    choose(*h, QStringLiteral("Logged the visit of A2 on 2026-09-15"));
    EXPECT_TRUE(detail(*h).join(u'\n').contains(QStringLiteral("American foulbrood")));
    dialogs.expectCorrection = true;
    QTest::mouseClick(h->takeBackButton(), Qt::LeftButton);
    ASSERT_EQ(dialogs.asked.size(), 1);
    EXPECT_TRUE(dialogs.asked[0].contains(QStringLiteral("A2: afb"))) << dialogs.asked[0].toStdString();
    EXPECT_EQ(book.visitsOf(QStringLiteral("A2")).size(), 2u) << "nothing was given: nothing is done";
    dialogs.correctionAnswer = core::edit::Correction{QStringLiteral("Ana"), QStringLiteral("wrong hive noted")};
    choose(*h, QStringLiteral("Logged the visit of A2 on 2026-09-15"));
    QTest::mouseClick(h->takeBackButton(), Qt::LeftButton);
    EXPECT_EQ(book.visitsOf(QStringLiteral("A2")).size(), 1u);
    EXPECT_EQ(text(*h, 0, Column::By), "Ana");
    EXPECT_EQ(text(*h, 0, Column::Note), "correction: wrong hive noted");
}

TEST_F(History, ByKeysAlone) {
    drag(at("A5"), ground({8000, 3000}));
    HistoryWindow* h = byKey(window.get());
    ASSERT_NE(h, nullptr);
    EXPECT_TRUE(h->table()->hasFocus());
    QTest::keyClick(h->table(), Qt::Key_Down);
    EXPECT_TRUE(detail(*h).first().startsWith(QStringLiteral("Visit of A6"))) << detail(*h).first().toStdString();
    QTest::keyClick(h->table(), Qt::Key_Up);
    QTest::keyClick(h, Qt::Key_T, Qt::AltModifier);
    const auto back = [&] { return book.placeOf(QStringLiteral("A5")) == core::MmPoint{8000, 0}; };
    EXPECT_TRUE(QTest::qWaitFor(back)) << "a button pressed by its key goes down for a moment first";
    EXPECT_TRUE(h->table()->hasFocus());
    QTest::keyClick(h->table(), Qt::Key_Escape);
    EXPECT_FALSE(h->isVisible());
    EXPECT_EQ(byKey(window.get()), h) << "the same window again";
}

TEST_F(History, IsFilteredByYardAndWordsAndShowsAllAgain) {
    HistoryWindow* h = open();
    const int all = h->model()->rowCount();
    auto* yard = h->findChild<QComboBox*>(QStringLiteral("historyYard"));
    yard->setFocus();
    QTest::keyClick(yard, Qt::Key_Down);
    EXPECT_EQ(yard->currentText(), QStringLiteral("Kiln Field"));
    EXPECT_EQ(h->model()->rowCount(), all) << "there is one yard";
    type(*h, "historyWords", QStringLiteral("visit of a3"));
    EXPECT_EQ(h->model()->rowCount(), 1);
    type(*h, "historyColony", QStringLiteral("Z9"));
    bool said = false;
    for (const QLabel* label : h->filterBar()->findChildren<QLabel*>())
        said = said || (label->isVisible() && label->text() == QStringLiteral("No colony is called Z9."));
    EXPECT_TRUE(said);
    for (QPushButton* button : h->filterBar()->findChildren<QPushButton*>()) QTest::mouseClick(button, Qt::LeftButton);
    EXPECT_EQ(h->model()->rowCount(), all);
}

TEST_F(History, FollowsEditsOfTheMainWindow) {
    HistoryWindow* h = open();
    const int rows = h->model()->rowCount();
    drag(at("A5"), ground({8000, 3000}));
    EXPECT_EQ(h->model()->rowCount(), rows + 1);
    h->hide();
    inFront(window.get());
    plan()->setFocus();
    drag(at("A6"), ground({10000, 3000}));
    byKey(window.get());
    EXPECT_EQ(h->model()->rowCount(), rows + 2);
}

TEST_F(History, InAWindowThatOnlyReadsNothingIsTakenBack) {
    ui::window::MainWindow second(book.clock(), dialogs);
    ASSERT_TRUE(second.openBook(book.path()));
    second.show();
    const HistoryWindow* h = byKey(&second);
    ASSERT_NE(h, nullptr);
    EXPECT_FALSE(h->takeBackButton()->isEnabled());
    EXPECT_TRUE(h->said().contains(QStringLiteral("reading only"))) << h->said().toStdString();
}

TEST_F(History, TabWalksFromTheFiltersOverTheListToTheButton) {
    HistoryWindow* h = open();
    inFront(h);
    h->findChild<QLineEdit*>(QStringLiteral("historyColony"))->setFocus();
    QStringList walked;
    for (int i = 0; i < 6; ++i) {
        walked << QApplication::focusWidget()->accessibleName();
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    }
    EXPECT_EQ(walked.join(u'\n').toStdString(), "Only changes of this colony\n"
                                                "Only changes in this yard\n"
                                                "Only changes with these words\n"
                                                "Changes of the book, newest first\n"
                                                "What the change did, from what to what\n"
                                                "Take back this change");
}

TEST_F(History, EveryPartHasAName) {
    const HistoryWindow* h = open();
    for (const QWidget* w : h->findChildren<QWidget*>()) {
        if (w->focusPolicy() == Qt::NoFocus || !w->isVisible() || !(w->focusPolicy() & Qt::TabFocus)) continue;
        const auto* button = qobject_cast<const QPushButton*>(w);
        EXPECT_FALSE(w->accessibleName().isEmpty() && !(button && !button->text().isEmpty()))
            << w->metaObject()->className() << ' ' << w->objectName().toStdString();
    }
}

} // namespace
