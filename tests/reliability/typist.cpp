#include "tests/reliability/typist.h"

#include "tests/ui/test_dialogs.h"
#include "ui/backup/keeping.h"
#include "ui/entry/entry_desk.h"
#include "ui/plan/plan_view.h"
#include "ui/visit/visit_form.h"
#include "ui/window/backup_commands.h"
#include "ui/window/commands.h"
#include "ui/window/main_window.h"
#include "ui/window/work_page.h"

#include <QApplication>
#include <QLineEdit>
#include <QTest>

#include <random>
#include <unistd.h>

namespace tests::reliability {

namespace {

using ui::visit::Field;

struct LoudDialogs : TestDialogs {
    void showError(const core::Error& error) override {
        fprintf(stderr, "typist: %s\n", error.what());
        _exit(4);
    }
};

class Typist {
public:
    Typist(const QString& book, const FixedClock& clock, unsigned seed, int out)
        : m_dice(seed), m_out(out), m_clock(clock), m_window(clock, m_dialogs) {
        m_window.commands()->backups()->keepByItself();
        m_window.resize(900, 700);
        m_window.show();
        if (!m_window.openBook(book, false)) _exit(4);
        m_window.activateWindow();
        constexpr int kSoon = 5;
        m_window.commands()->backups()->keeping()->setPatience(kSoon, kSoon);
        for (const auto& half : m_window.page()->entry()->drafts().all())
            say("shown", half.colony.value, half.draft[Field::Note]);
        QObject::connect(&session(), &core::edit::Session::changed, &m_window, [this] { saySaved(); });
        say("ready");
    }

    void doSomething() {
        switch (m_dice() % 10) {
        case 0:
            return undo();
        case 1:
            return undoKey(Qt::ControlModifier | Qt::ShiftModifier);
        case 2:
        case 3:
            return carry();
        default:
            return visit();
        }
    }

private:
    core::edit::Session& session() const { return m_window.desk()->session(); }
    ui::plan::PlanView& plan() const { return *m_window.page()->plan(); }
    ui::visit::VisitForm& form() const { return *m_window.page()->form(); }
    int below(int n) { return static_cast<int>(m_dice() % static_cast<unsigned>(n)); }
    core::ColonyId anyColony() { return core::ColonyId{1 + below(6)}; }
    QPoint at(core::ColonyId colony) const { return plan().viewPointOf(colony).toPoint(); }
    void wait() const { QCoreApplication::processEvents(); }

    void say(const char* what, qint64 number = 0, const QString& note = {}) const {
        const QByteArray line = QByteArray(what) + ' ' + QByteArray::number(number) + ' ' +
                                (note.isEmpty() ? QByteArray("-") : note.toUtf8()) + '\n';
        if (write(m_out, line.constData(), static_cast<size_t>(line.size())) != line.size()) _exit(2);
    }

    void saySaved() const {
        const auto newest = session().history(1);
        if (!newest.empty()) say("saved", newest.front().seq);
    }

    /// In a field that is typed into the key takes back what was typed there.
    void undoKey(Qt::KeyboardModifiers with) const {
        const bool typing = form().isVisible() && !form().place().was;
        const qint64 colony = form().place().colony.value;
        if (typing) say("leaving", colony);
        QWidget* focus = QApplication::focusWidget();
        QTest::keyClick(focus ? focus : &plan(), Qt::Key_Z, with);
        wait();
        if (typing && form().isVisible() && !form().note()->text().isEmpty())
            say("typing", colony, form().note()->text());
    }

    /// What this book began with stays.
    void undo() const {
        const QString text = session().undoText().value_or(QString());
        const bool ours = text.startsWith(QStringLiteral("Carried")) ||
                          (text.startsWith(QStringLiteral("Logged")) && !text.contains(QStringLiteral("2026-09-14")));
        if (ours) undoKey(Qt::ControlModifier);
    }

    void carry() {
        const QPoint from = at(anyColony());
        const QPoint to = plan().camera().toView({below(12) * 1000, 3000 + below(9) * 1000}).toPoint();
        QTest::mousePress(&plan(), Qt::LeftButton, {}, from);
        for (int i = 1; i <= 3; ++i) QTest::mouseMove(&plan(), from + (to - from) * i / 3);
        QTest::mouseRelease(&plan(), Qt::LeftButton, {}, to);
        wait();
    }

    void visit() {
        QTest::mouseClick(&plan(), Qt::LeftButton, {}, at(anyColony()));
        wait();
        QTest::keyClick(&m_window, Qt::Key_L, Qt::ControlModifier);
        wait();
        if (!form().isVisible() || form().place().was) return;
        m_colony = form().place().colony;
        QLineEdit* note = form().note();
        note->setFocus();
        note->end(false);
        for (int i = 3 + below(8); i > 0; --i) {
            QTest::keyClick(note, static_cast<char>('a' + below(26)));
            wait();
            say("typing", m_colony.value, note->text());
        }
        leaveForm(note);
    }

    void leaveForm(QLineEdit* note) {
        const int how = below(10);
        if (how < 6) {
            say("saving", m_colony.value);
            for (int enters = 0; enters < 3 && form().isVisible(); ++enters) {
                QTest::keyClick(note, Qt::Key_Return);
                wait();
            }
        } else if (how < 8) {
            say("leaving", m_colony.value);
            for (int escapes = 0; escapes < 3 && form().isVisible(); ++escapes) {
                QTest::keyClick(note, Qt::Key_Escape);
                wait();
            }
        }
    }

    std::mt19937 m_dice;
    int m_out;
    const FixedClock& m_clock;
    LoudDialogs m_dialogs;
    ui::window::MainWindow m_window;
    core::ColonyId m_colony;
};

} // namespace

void typeUntilKilled(const QString& book, const FixedClock& clock, unsigned seed, int out) {
    Typist typist(book, clock, seed, out);
    for (;;) typist.doSomething();
}

} // namespace tests::reliability
