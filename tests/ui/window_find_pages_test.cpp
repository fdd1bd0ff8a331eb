#include "core/base/natural_order.h"
#include "core/edit/edits.h"
#include "tests/ui/hand.h"
#include "tests/ui/open_window.h"
#include "ui/card/colony_card.h"
#include "ui/find/colonies_page.h"
#include "ui/find/colony_table.h"
#include "ui/find/note_model.h"
#include "ui/find/notes_page.h"
#include "ui/find/visit_model.h"
#include "ui/find/visits_page.h"
#include "ui/form/form_panel.h"
#include "ui/look/paged.h"
#include "ui/records/record_list.h"
#include "ui/table/hive_table.h"
#include "ui/visit/visit_form.h"

#include <QAction>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QMenu>
#include <QSettings>
#include <QToolButton>

namespace {

using namespace core;

struct FindPages : tests::OpenWindow {
    void SetUp() override {
        {
            const auto session = edit::Session::open(book.path(), book.clock());
            note(*session, "A2", dayOf(2026, 8, 20), "two queen cells at the edge", 3150);
            note(*session, "A5", dayOf(2026, 9, 10), "calm, no queen seen", 2900);
        }
        QSettings().remove(QStringLiteral("find"));
        tests::OpenWindow::SetUp();
    }
    void note(edit::Session& session, const char* label, Day day, const char* text, int gross) const {
        Visit v;
        v.colony = book.idOf(QLatin1StringView(label));
        v.day = day;
        v.note = QString::fromLatin1(text);
        v.gross = Decagrams{gross};
        session.apply([&](const edit::EditContext& c) { return edit::logVisit(c, v); });
    }
    template <class T> T* page() const { return window->findChild<T*>(); }
    ui::find::ColoniesPage* colonies() const { return page<ui::find::ColoniesPage>(); }
    ui::find::VisitsPage* visits() const { return page<ui::find::VisitsPage>(); }
    ui::find::NotesPage* notes() const { return page<ui::find::NotesPage>(); }
    std::string labels() const {
        QStringList out;
        const auto* model = colonies()->model();
        for (int row = 0; row < model->rowCount(); ++row) out << model->index(row, 0).data().toString();
        return out.join(u' ').toStdString();
    }
    std::string visitsShown() const {
        QStringList out;
        const auto* model = visits()->model();
        for (int row = 0; row < model->rowCount(); ++row) out << model->index(row, 0).data().toString();
        return out.join(u' ').toStdString();
    }
    std::string chosen() const {
        const auto id = window->desk()->chosen();
        return id ? window->desk()->session().colony(*id)->label.toStdString() : std::string();
    }
    void ask(const QString& name) const {
        QComboBox* list = colonies()->question();
        for (int i = 0; i < list->count(); ++i)
            if (list->itemText(i).startsWith(name)) return list->setCurrentIndex(i);
        FAIL() << "no question " << name.toStdString();
    }
    /// Through the menu of the button, as it is when it opens.
    void pick(const QString& text) const {
        for (const QToolButton* button : colonies()->findChildren<QToolButton*>()) {
            if (!button->menu() || button->text() != QLatin1String("&Question")) continue;
            emit button->menu()->aboutToShow();
            for (QAction* action : button->menu()->actions())
                if (action->text().remove(u'&').startsWith(text)) {
                    EXPECT_TRUE(action->isEnabled()) << text.toStdString();
                    return action->trigger();
                }
        }
        FAIL() << "no command " << text.toStdString();
    }
    void key(Qt::Key k, Qt::KeyboardModifiers with = {}) const {
        QTest::keyClick(window->focusWidget() ? window->focusWidget() : window.get(), k, with);
    }
    void type(QWidget* into, const char* text) const {
        into->setFocus();
        QTest::keyClicks(into, QString::fromLatin1(text));
    }
};

TEST_F(FindPages, ColoniesAreListedFilteredAndChosenByKeys) {
    key(Qt::Key_2, Qt::ControlModifier);
    ASSERT_TRUE(colonies()->isVisible());
    EXPECT_TRUE(colonies()->table()->hasFocus());
    EXPECT_EQ(labels(), "A1 A2 A3 A4 A5 A6");
    EXPECT_TRUE(colonies()->foot()->text().startsWith("6 of 6 colonies"));
    EXPECT_EQ(chosen(), "") << "opening the list chooses nothing";
    key(Qt::Key_Down);
    EXPECT_EQ(chosen(), "A2");
    EXPECT_TRUE(colonies()->table()->hasFocus()) << "the keys stay in the list";
    type(colonies()->text(), "a4");
    EXPECT_EQ(labels(), "A4");
    EXPECT_TRUE(colonies()->foot()->text().startsWith("1 of 6 colonies"));
    colonies()->text()->clear();
    EXPECT_EQ(labels(), "A1 A2 A3 A4 A5 A6");
    auto* table = colonies()->table();
    QTest::mouseClick(table->viewport(), Qt::LeftButton, {}, table->visualRect(table->model()->index(3, 1)).center());
    EXPECT_EQ(chosen(), "A4");
    window->desk()->choose(book.idOf("A6"));
    EXPECT_EQ(colonies()->table()->currentIndex().row(), 5) << "what is chosen elsewhere";
}

TEST_F(FindPages, WhatIsNotRecordedComesLastEitherWay) {
    key(Qt::Key_2, Qt::ControlModifier);
    const int weight = static_cast<int>(ui::find::ColonyColumn::Weight);
    colonies()->table()->sortByColumn(weight, Qt::AscendingOrder);
    EXPECT_EQ(labels(), "A5 A2 A1 A3 A4 A6");
    colonies()->table()->sortByColumn(weight, Qt::DescendingOrder);
    EXPECT_EQ(labels(), "A2 A5 A1 A3 A4 A6");
    EXPECT_EQ(colonies()->model()->index(2, weight).data().toString(), "—");
}

TEST_F(FindPages, AQuestionIsAListAndMarksOnThePlan) {
    key(Qt::Key_2, Qt::ControlModifier);
    ask("No brood check this season");
    EXPECT_EQ(labels(), "A3");
    EXPECT_TRUE(colonies()->foot()->text().contains("assumption")) << colonies()->foot()->text().toStdString();
    pick("Mark on the plan");
    EXPECT_EQ(window->desk()->session().questions().size(), 1u);
    EXPECT_EQ(labels(), "A3") << "the same question stays asked";
    window->setPlace(ui::window::Place::YardPlan);
    const auto& scene = plan()->scene();
    ASSERT_EQ(scene.asked.size(), 1u);
    EXPECT_EQ(scene.asked[0].name, "No brood check this season");
    EXPECT_EQ(scene.asked[0].found, 1);
    for (const auto& hive : scene.hives) {
        EXPECT_EQ(hive.asked, hive.label == "A3" ? "1" : "") << hive.label.toStdString();
        EXPECT_EQ(hive.spoken.contains("found by the question"), hive.label == "A3");
    }
    window->undo();
    EXPECT_TRUE(plan()->scene().asked.empty());
    EXPECT_TRUE(window->desk()->session().questions().empty());
}

TEST_F(FindPages, ColoniesWithoutAFigureAreCountedNotFound) {
    key(Qt::Key_2, Qt::ControlModifier);
    ask("Lighter than 32 kg in September");
    EXPECT_EQ(labels(), "A5") << "A2 was weighed in August";
    EXPECT_TRUE(colonies()->foot()->text().contains("Of 4 more a figure asked for is not recorded."))
        << colonies()->foot()->text().toStdString();
}

TEST_F(FindPages, AQuestionOfOnesOwnIsPutTogetherAndKept) {
    key(Qt::Key_2, Qt::ControlModifier);
    pick("New question");
    tests::Hand hand(*window);
    hand.fill("name", "Light");
    hand.fill("what0", "last weight, kg");
    hand.fill("how0", "at most");
    hand.fill("than0", "31,5");
    hand.key(Qt::Key_Return, Qt::ControlModifier);
    const auto kept = window->desk()->session().questions();
    ASSERT_EQ(kept.size(), 1u);
    EXPECT_EQ(kept[0].name, "Light");
    EXPECT_EQ(kept[0].ask, R"({"all":[{"how":"at-most","than":31.5,"what":"weight"}]})");
    ask("Light");
    EXPECT_EQ(labels(), "A2 A5");
    pick("Take back");
    EXPECT_TRUE(window->desk()->session().questions().empty());
}

TEST_F(FindPages, VisitsAreFilteredSortedAndOpened) {
    key(Qt::Key_3, Qt::ControlModifier);
    auto* pages = qobject_cast<ui::look::Paged*>(window->page()->middleOf(ui::window::Place::Visits));
    ASSERT_TRUE(pages);
    pages->show(visits());
    ASSERT_TRUE(visits()->isVisible());
    const int all = visits()->model()->rowCount();
    EXPECT_GE(all, 8);
    EXPECT_TRUE(visits()->foot()->text().contains("2 with a note")) << visits()->foot()->text().toStdString();
    type(visits()->words(), "queen");
    QTest::keyClick(visits()->words(), Qt::Key_Return);
    EXPECT_EQ(visitsShown(), "A5 A2") << "newest first";
    visits()->table()->sortByColumn(static_cast<int>(ui::find::VisitColumn::Weight), Qt::DescendingOrder);
    EXPECT_EQ(visitsShown(), "A2 A5");
    type(visits()->label(), "a5");
    QTest::keyClick(visits()->label(), Qt::Key_Return);
    EXPECT_EQ(visitsShown(), "A5");
    visits()->table()->setFocus();
    visits()->table()->selectRow(0);
    EXPECT_EQ(visits()->selectedVisits().size(), 1u);
    QTest::keyClick(visits()->table(), Qt::Key_Return);
    EXPECT_TRUE(window->page()->form()->isVisible());
    EXPECT_EQ(window->page()->form()->place().colony, book.idOf("A5"));
}

TEST_F(FindPages, NotesAreSearchedFromAnywhere) {
    key(Qt::Key_F3);
    ASSERT_TRUE(notes()->isVisible());
    EXPECT_TRUE(notes()->line()->hasFocus());
    QTest::keyClicks(notes()->line(), "queen ce");
    QTest::keyClick(notes()->line(), Qt::Key_Return);
    ASSERT_EQ(notes()->model()->rowCount(), 1);
    EXPECT_TRUE(notes()->list()->hasFocus());
    const QModelIndex found = notes()->list()->currentIndex();
    EXPECT_EQ(found.data(ui::find::NoteModel::TitleRole).toString(), "A2 · Visit");
    EXPECT_EQ(ui::find::marksOf(found).size(), 2u);
    QTest::keyClick(notes()->list(), Qt::Key_Return);
    EXPECT_EQ(chosen(), "A2");
    auto* records = window->page()->card()->records();
    ASSERT_TRUE(records->list()->currentIndex().isValid());
    EXPECT_EQ(records->model().at(records->list()->currentIndex().row()).day, dayOf(2026, 8, 20));
    EXPECT_TRUE(records->list()->hasFocus());
}

TEST_F(FindPages, ColumnsAreRememberedOnThisMachine) {
    key(Qt::Key_2, Qt::ControlModifier);
    colonies()->table()->setColumnHidden(static_cast<int>(ui::find::ColonyColumn::Mites), true);
    colonies()->table()->setColumnWidth(0, 123);
    window->setPlace(ui::window::Place::YardPlan);
    window.reset();
    tests::OpenWindow::SetUp();
    key(Qt::Key_2, Qt::ControlModifier);
    EXPECT_TRUE(colonies()->table()->isColumnHidden(static_cast<int>(ui::find::ColonyColumn::Mites)));
    EXPECT_EQ(colonies()->table()->columnWidth(0), 123);
}

} // namespace
