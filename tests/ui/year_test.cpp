#include "core/rules/ledger.h"
#include "demo/demo_book.h"
#include "tests/ui/book_of_test.h"
#include "tests/ui/test_dialogs.h"
#include "ui/after/after_page.h"
#include "ui/board/board.h"
#include "ui/close/close_page.h"
#include "ui/form/form_panel.h"
#include "ui/ledger/ledger_window.h"
#include "ui/merge/merge_place.h"
#include "ui/ready/ready_page.h"
#include "ui/spring/divide_close_form.h"
#include "ui/spring/divide_panel.h"
#include "ui/visit/visit_form.h"
#include "ui/window/main_window.h"
#include "ui/window/work_page.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QLineEdit>
#include <QListView>
#include <QListWidget>
#include <QPushButton>
#include <QTableWidget>
#include <QTest>

// A year of one yard of the demo, in the real window, as its keeper goes through it: what is missing is counted, the
// plan argued with, printed, written back, looked at, and in spring divided. After each step the book is in order.

namespace {

using core::StripOutcome;
using ui::visit::Field;

constexpr const char* kYard = "Larkspur Bottom";
constexpr const char* kUncounted[] = {"A12", "A13"}; // counted too long ago; never opened in September

struct Year : ::testing::Test {
    QTemporaryDir folder;
    tests::FixedClock clock;
    tests::TestDialogs dialogs;
    std::unique_ptr<ui::window::MainWindow> window;
    size_t sheets = 0; ///< printed

    void SetUp() override {
        clock.day = demo::demoMergeDay();
        const auto made = core::edit::Session::create(path(), clock);
        demo::fillDemoBook(*made, {});
    }
    QString path() const { return folder.filePath(QStringLiteral("year.yardwright")); }
    /// The program as it is begun on that day, at the yard.
    void open(core::Day day) {
        window.reset();
        clock.day = day;
        window = std::make_unique<ui::window::MainWindow>(clock, dialogs);
        ASSERT_TRUE(window->openBook(path()));
        ui::window::Paper paper = window->paper();
        paper.print = [this](QWidget*, const ui::window::PaperJob&) { return ++sheets > 0; };
        window->setPaper(paper);
        window->resize(1440, 900);
        window->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(window.get()));
        window->activateWindow();
        for (const core::SnapYard& yard : reading().snapshot.yards)
            if (yard.name == QLatin1StringView(kYard)) window->desk()->setYard(yard.id);
    }

    core::edit::Session& book() const { return window->desk()->session(); }
    const ui::desk::Reading& reading() const { return window->desk()->reading(); }
    core::YardIx yard() const { return *reading().find(*window->desk()->yard()); }
    template <class Page> Page* step(ui::merge::Step step) const {
        return dynamic_cast<Page*>(window->page()->merge()->page(step));
    }
    void key(Qt::Key key, Qt::KeyboardModifiers with = {}) const {
        QWidget* to = QApplication::focusWidget();
        QTest::keyClick(to ? to : window.get(), key, with);
        QCoreApplication::processEvents();
    }
    void type(const QString& text) const { QTest::keyClicks(QApplication::focusWidget(), text); }
    std::string said() const { return window->saying().toStdString(); }
    void expectInOrder() const { EXPECT_EQ(book().check(), QStringList()); }

    core::ColonyId idOf(const QString& label) const {
        return reading().snapshot.colony(*reading().snapshot.livingNamed(label)).id;
    }
    QString labelOf(core::ColonyIx c) const { return reading().snapshot.colony(c).shown; }
    std::vector<const core::rules::Union*> unions() const {
        std::vector<const core::rules::Union*> out;
        for (const core::rules::Union& u : reading().plan.unions)
            if (u.yard == yard()) out.push_back(&u);
        return out;
    }
    /// The pairs of the plan, "A1>A2".
    QStringList pairs() const {
        QStringList out;
        for (const auto* u : unions()) out << labelOf(u->moved) + u'>' + labelOf(u->host);
        return out;
    }

    bool heldOnlyUnchecked(core::ColonyIx c) const {
        for (const core::rules::Hold& h : reading().holdsOf(c))
            if (h.kind != core::rules::HoldKind::BroodNotChecked) return false;
        return true;
    }

    /// Types a visit of the hive; what is odd is confirmed once.
    void visit(const QString& label, const std::map<Field, QString>& typed) const {
        window->desk()->choose(idOf(label));
        key(Qt::Key_L, Qt::ControlModifier);
        ui::visit::VisitForm* form = window->page()->form();
        ASSERT_TRUE(form->isVisible()) << said();
        for (const auto& [field, text] : typed) {
            auto* edit = form->findChild<QLineEdit*>(QStringLiteral("visitField%1").arg(static_cast<int>(field)));
            edit->setFocus();
            edit->selectAll();
            type(text);
        }
        key(Qt::Key_Return);
        if (form->isVisible()) key(Qt::Key_Return);
        EXPECT_FALSE(form->isVisible()) << said();
    }

    void countWhatIsMissing() const;
    void argueAndPrint() const;
    void writeBack() const;
    void lookAfterwards() const;
    void divide() const;
    void balance(int united) const;
};

bool countMissing(const ui::ready::ReadyPage& page, const core::Snapshot& s, const QString& label) {
    for (const auto& row : page.missing())
        if (s.colony(row.colony).label == label)
            for (const auto& what : row.what)
                if (what.kind == core::rules::MissingKind::Count || what.kind == core::rules::MissingKind::CountOld)
                    return true;
    return false;
}

void Year::countWhatIsMissing() const {
    key(Qt::Key_1, Qt::AltModifier);
    auto* page = step<ui::ready::ReadyPage>(ui::merge::Step::GetReady);
    ASSERT_TRUE(page->isVisible());
    for (const char* label : kUncounted) {
        ASSERT_TRUE(countMissing(*page, reading().snapshot, QLatin1StringView(label))) << label;
        visit(QLatin1StringView(label), {{Field::BeesTop, QStringLiteral("4.5")}});
        EXPECT_FALSE(countMissing(*page, reading().snapshot, QLatin1StringView(label))) << label;
    }
    expectInOrder();
}

/// The first union is pinned, the second forbidden; then the sheet goes to paper.
void Year::argueAndPrint() const {
    key(Qt::Key_2, Qt::AltModifier);
    auto* board = step<ui::board::Board>(ui::merge::Step::Plan);
    ASSERT_TRUE(board->isVisible());
    const QStringList before = pairs();
    ASSERT_GE(before.size(), 6);
    const auto press = [&](const core::rules::Union& u, Qt::Key by) {
        board->list()->setFocus();
        const int row = board->list()->rows().rowAbout(reading().snapshot.colony(u.host).id);
        board->list()->setCurrentIndex(board->list()->rows().index(row));
        key(by);
    };
    press(*unions()[0], Qt::Key_P);
    press(*unions()[1], Qt::Key_N);
    const QStringList now = pairs();
    EXPECT_TRUE(now.contains(before[0]));
    EXPECT_FALSE(now.contains(before[1]));
    EXPECT_TRUE(unions()[now.indexOf(before[0])]->pinned);
    const auto days = book().mergeDays(*window->desk()->yard());
    ASSERT_EQ(days.size(), 1U);
    EXPECT_EQ(book().choicesOf(days[0].id).size(), 2U);
    key(Qt::Key_P, Qt::ControlModifier);
    EXPECT_EQ(sheets, 1U);
    EXPECT_GE(book().stripsOf(days[0].id).size(), static_cast<size_t>(now.size()));
    expectInOrder();
}

/// The first strip was not done, the second changed, all others done.
void Year::writeBack() const {
    const core::YardId here = *window->desk()->yard();
    const auto strips = book().stripsOf(book().mergeDays(here).at(0).id);
    ASSERT_GE(strips.size(), 4U);
    key(Qt::Key_3, Qt::AltModifier);
    auto* page = step<ui::close::ClosePage>(ui::merge::Step::WriteBack);
    ASSERT_TRUE(page->isVisible());
    page->list()->setFocus();
    page->list()->setCurrentIndex(page->list()->model()->index(0, 0));
    key(Qt::Key_N);
    type(QStringLiteral("the barrow broke"));
    key(Qt::Key_Return);
    key(Qt::Key_C);
    type(QStringLiteral("set side by side, to be united tomorrow"));
    key(Qt::Key_Return);
    for (size_t i = 2; i < strips.size(); ++i) key(Qt::Key_D);
    ASSERT_TRUE(page->writeButton()->isEnabled()) << said();
    page->writeButton()->setFocus();
    key(Qt::Key_Return);
    std::map<StripOutcome, size_t> outcomes;
    for (const core::MergeStrip& strip : book().stripsOf(book().mergeDays(here).at(0).id)) {
        ASSERT_TRUE(strip.outcome) << said();
        ++outcomes[*strip.outcome];
    }
    EXPECT_EQ(outcomes[StripOutcome::NotDone], 1U);
    EXPECT_EQ(outcomes[StripOutcome::Changed], 1U);
    EXPECT_EQ(outcomes[StripOutcome::Done], strips.size() - 2);
    EXPECT_FALSE(book().colony(strips[0].moved)->ended);
    EXPECT_FALSE(book().colony(strips[1].moved)->ended);
    EXPECT_TRUE(book().colony(strips[2].moved)->ended);
    expectInOrder();
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_FALSE(book().colony(strips[2].moved)->ended) << "the whole day is one undo";
    expectInOrder();
    key(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_TRUE(book().colony(strips[2].moved)->ended);
}

int unionChecks(const ui::desk::Reading& r, core::YardIx yard) {
    int n = 0;
    for (const core::rules::Due& due : r.plan.due)
        n += due.what == core::rules::DueKind::UnionCheck && r.factsOf(due.colony).yard == yard ? 1 : 0;
    return n;
}

/// Each union is looked at: the paper gone, a queen, eggs.
void Year::lookAfterwards() const {
    const int due = unionChecks(reading(), yard());
    ASSERT_GT(due, 0);
    key(Qt::Key_4, Qt::AltModifier);
    auto* page = step<ui::after::AfterPage>(ui::merge::Step::Afterwards);
    ASSERT_TRUE(page->isVisible());
    for (int i = 0; i < due; ++i) {
        int row = -1;
        for (const core::rules::Due& d : reading().plan.due)
            if (d.what == core::rules::DueKind::UnionCheck && reading().factsOf(d.colony).yard == yard())
                row = page->model().rowAbout(reading().snapshot.colony(d.colony).id);
        ASSERT_GE(row, 0) << said();
        page->list()->setFocus();
        page->list()->setCurrentIndex(page->list()->model()->index(row, 0));
        key(Qt::Key_P);
        key(Qt::Key_Q);
        key(Qt::Key_E);
        key(Qt::Key_Return);
    }
    EXPECT_EQ(unionChecks(reading(), yard()), 0) << said();
    expectInOrder();
}

/// A strong colony is counted in May, and divided.
void Year::divide() const {
    QString strong;
    for (const auto& f : reading().facts)
        if (f.yard == yard() && f.boxes == 1 && !f.lacksQueen && heldOnlyUnchecked(f.colony))
            strong = labelOf(f.colony);
    ASSERT_FALSE(strong.isEmpty());
    visit(strong, {{Field::BeesTop, QStringLiteral("10")},
                   {Field::Brood, QStringLiteral("8")},
                   {Field::Checked, QStringLiteral("8")}});
    key(Qt::Key_2, Qt::AltModifier);
    const auto divides = [&] {
        int n = 0;
        for (const core::rules::Divide& d : reading().plan.divides)
            n += reading().factsOf(d.colony).yard == yard() ? 1 : 0;
        return n;
    };
    QStringList held;
    for (const core::rules::Hold& h : reading().holdsOf(*reading().snapshot.livingNamed(strong))) held << h.because();
    ASSERT_EQ(divides(), 1) << strong.toStdString() << ' ' << held.join(u' ').toStdString();
    const core::ColonyId mother = idOf(strong);
    key(Qt::Key_D, Qt::ControlModifier | Qt::AltModifier);
    ui::form::FormPanel* form = window->page()->panel();
    ASSERT_TRUE(form->isVisible() && form->form()) << said();
    form->setValue(ui::spring::labelKey(0), QStringLiteral("Daughter"));
    form->setValue(ui::spring::kQueens, core::word(core::DivideQueens::Cells));
    form->save();
    ASSERT_FALSE(form->form()) << said();
    bool made = false;
    for (const core::Lineage& l : book().lineageOf(mother))
        made = made || (l.how == core::LineageHow::Divided && l.colony == mother);
    EXPECT_TRUE(made);
    expectInOrder();
}

/// Every season of the ledger balances, and has what was done.
void Year::balance(int united) const {
    int unitedInFall = 0, divided = 0;
    for (const core::rules::LedgerYear& year : core::rules::ledger(reading().snapshot)) {
        for (const core::rules::LedgerPeriod& p : year.periods) {
            EXPECT_EQ(p.count.start + p.count.in() - p.count.out(), p.count.end);
            if (!year.yard || *year.yard != yard()) continue;
            if (year.year == 2026 && p.season == core::rules::LedgerSeason::Fall) unitedInFall += p.count.givenUp();
            divided += p.from >= core::dayOf(2027, 1, 1) ? p.count.divided : 0;
        }
    }
    EXPECT_EQ(unitedInFall, united);
    EXPECT_EQ(divided, 1);
    key(Qt::Key_B, Qt::ControlModifier | Qt::ShiftModifier);
    const auto* shown = window->findChild<ui::ledger::LedgerWindow*>();
    ASSERT_TRUE(shown && shown->isVisible()) << said();
    EXPECT_GT(shown->table()->rowCount(), 0);
    expectInOrder();
}

TEST_F(Year, OfOneYardFromTheFirstCountToTheLedger) {
    ASSERT_NO_FATAL_FAILURE(open(demo::demoMergeDay()));
    ASSERT_NO_FATAL_FAILURE(countWhatIsMissing());
    ASSERT_NO_FATAL_FAILURE(argueAndPrint());
    ASSERT_NO_FATAL_FAILURE(writeBack());
    const auto strips = book().stripsOf(book().mergeDays(*window->desk()->yard()).at(0).id);
    ASSERT_NO_FATAL_FAILURE(open(demo::demoMergeDay() + 6));
    ASSERT_NO_FATAL_FAILURE(lookAfterwards());
    ASSERT_NO_FATAL_FAILURE(open(core::dayOf(2027, 5, 12)));
    ASSERT_NO_FATAL_FAILURE(divide());
    balance(static_cast<int>(strips.size()) - 2);
}

} // namespace
