#include "tests/support/rounds.h"
#include "tests/ui/random_typist.h"
#include "tests/ui/recording.h"
#include "tests/ui/shown_text.h"

#include "core/edit/edit_context.h"
#include "ui/visit/visit_form.h"

#include <QCheckBox>
#include <QLineEdit>

// What the window shows after any edits by hand, it shows because the book says so.

namespace {

using namespace tests;
using core::edit::Session;

const int kSteps = rounds(500);
constexpr int kCheckEvery = 25;
constexpr int kCompareWindowsEvery = 20;

struct HandEdits : Recording {
    RandomTypist typist{20260915, core::dayOf(2026, 5, 20), core::dayOf(2026, 9, 15)};
    int saved = 0;
    int refused = 0;
    int corrected = 0;

    Session& session() const { return window->desk()->session(); }

    QStringList labels() const {
        QStringList out;
        session().read([&](const core::edit::EditContext& c) {
            c.each<core::Colony>([&](const core::Colony& colony) { out << colony.label; });
        });
        return out;
    }
    core::ColonyId anyColony() {
        std::vector<core::ColonyId> all;
        session().read([&](const core::edit::EditContext& c) {
            c.each<core::Colony>([&](const core::Colony& colony) { all.push_back(colony.id); });
        });
        return all[static_cast<size_t>(typist.below(static_cast<int>(all.size())))];
    }
    qint64 lines() const {
        const auto newest = session().history(1);
        return newest.empty() ? 0 : newest.front().seq;
    }

    /// Fills the open form's fields, all or one, then Enter; a question is answered by Enter again.
    void fillAndSave(bool all) {
        const auto fields = panel()->form()->fields();
        const int one = typist.below(static_cast<int>(fields.size()));
        for (int i = 0; i < static_cast<int>(fields.size()); ++i) {
            const bool optional = !all || typist.chance(30);
            if (all ? optional && fields[static_cast<size_t>(i)].kind == ui::form::Kind::Text : i != one) continue;
            panel()->setValue(fields[static_cast<size_t>(i)].key,
                              typist.text(fields[static_cast<size_t>(i)], labels()));
        }
        const ui::form::Values typed = panel()->values();
        for (int enters = 0; enters < 3 && formShown(); ++enters) QTest::keyClick(panel(), Qt::Key_Return);
        if (!formShown()) return;
        ++refused;
        EXPECT_EQ(panel()->values(), typed) << "a refusal changed what was typed";
        for (int escapes = 0; escapes < 2 && formShown(); ++escapes) QTest::keyClick(panel(), Qt::Key_Escape);
        EXPECT_FALSE(formShown());
    }

    void noteSomething() {
        using ui::records::NewRecord;
        window->page()->showColony(anyColony());
        constexpr int kKinds = 11;
        window->page()->note(static_cast<NewRecord>(typist.below(kKinds)));
        if (formShown()) fillAndSave(true);
    }

    void visitSomething() {
        window->page()->showColony(anyColony());
        window->page()->logVisit();
        fillVisit();
    }

    void fillVisit() {
        ui::visit::VisitForm* form = window->page()->form();
        if (!form->isVisible()) return;
        for (int field : {0, 1, 4}) // seen from above, from below, stores
            if (typist.chance(60))
                form->findChild<QLineEdit*>(QStringLiteral("visitField%1").arg(field))->setText(typist.frames());
        for (QCheckBox* sign : form->findChildren<QCheckBox*>())
            if (typist.chance(4)) sign->toggle();
        for (int enters = 0; enters < 3 && form->isVisible(); ++enters) QTest::keyClick(form, Qt::Key_Return);
        for (int escapes = 0; escapes < 2 && form->isVisible(); ++escapes) QTest::keyClick(form, Qt::Key_Escape);
        EXPECT_FALSE(form->isVisible());
    }

    void workOnARecord(Qt::Key key) {
        window->page()->showColony(anyColony());
        const int rows = records()->model().rowCount();
        if (rows == 0) return;
        records()->list()->setCurrentIndex(records()->model().index(typist.below(rows)));
        QTest::keyClick(records()->list(), key);
        if (formShown()) fillAndSave(false);
        fillVisit();
    }

    /// One thing done by hand; `undoing` among them.
    void step(bool undoing) {
        const qint64 before = lines();
        dialogs.correctionAnswer.reset();
        if (typist.chance(70)) dialogs.correctionAnswer = core::edit::Correction{"Vera", "typed into the wrong hive"};
        const qsizetype asked = dialogs.asked.size();
        const int what = typist.below(undoing ? 100 : 72);
        if (what < 30)
            noteSomething();
        else if (what < 50)
            visitSomething();
        else if (what < 62)
            workOnARecord(Qt::Key_Return);
        else if (what < 72)
            workOnARecord(Qt::Key_Delete);
        else if (what < 90)
            QTest::keyClick(window.get(), Qt::Key_Z, Qt::ControlModifier);
        else
            QTest::keyClick(window.get(), Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
        if (lines() > before) ++saved;
        if (dialogs.asked.size() > asked && lines() > before) ++corrected;
        EXPECT_LE(lines(), before + 1) << "one step, one line";
    }

    /// A window of its own, opened now on the same book, at the same yard and hive.
    QStringList freshlyShown() {
        TestDialogs quiet;
        ui::window::MainWindow fresh(book.clock(), quiet);
        EXPECT_TRUE(fresh.openBook(book.path(), false));
        if (window->desk()->yard()) fresh.desk()->setYard(*window->desk()->yard());
        fresh.page()->setPlace(window->page()->place());
        if (const auto chosen = window->desk()->chosen()) fresh.page()->showColony(*chosen);
        return shownIn(fresh);
    }
};

TEST_F(HandEdits, TheWindowShowsWhatAFreshOpeningShows) {
    dialogs.expectCorrection = true;
    for (int i = 1; i <= kSteps && !HasFailure(); ++i) {
        step(true);
        if (i % kCompareWindowsEvery == 0) {
            window->page()->showColony(anyColony());
            EXPECT_EQ(shownIn(*window).join('\n').toStdString(), freshlyShown().join('\n').toStdString())
                << "step " << i;
        }
        if (i % kCheckEvery != 0) continue;
        EXPECT_EQ(session().check().join('\n').toStdString(), "") << "step " << i;
    }
    EXPECT_EQ(session().check().join('\n').toStdString(), "");
    // The dice must have reached what the test is about.
    EXPECT_GT(saved, kSteps / 3);
    EXPECT_GT(refused, kSteps / 25);
    EXPECT_GT(corrected, 2);
    RecordProperty("saved", saved);
    RecordProperty("refused", refused);
    RecordProperty("corrected", corrected);
}

TEST_F(HandEdits, AllOfItCanBeUndone) {
    dialogs.expectCorrection = true;
    const core::ColonyId first = book.idOf(QStringLiteral("A1"));
    window->page()->showColony(first);
    const QStringList before = shownIn(*window);
    for (int i = 0; i < kSteps / 10; ++i) step(false);
    dialogs.correctionAnswer = core::edit::Correction{"Vera", "all of it"};
    bool back = false;
    for (int i = 0; i < kSteps && !back && session().undoText(); ++i) {
        QTest::keyClick(window.get(), Qt::Key_Z, Qt::ControlModifier);
        window->page()->showColony(first);
        back = shownIn(*window) == before;
    }
    EXPECT_TRUE(back) << shownIn(*window).join('\n').toStdString();
    EXPECT_EQ(session().check().join('\n').toStdString(), "");
}

} // namespace
