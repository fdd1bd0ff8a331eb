#pragma once

#include "demo/demo_book.h"
#include "tests/ui/book_of_test.h"
#include "tests/ui/test_dialogs.h"
#include "ui/backup/backups_window.h"
#include "ui/backup/keeping.h"
#include "ui/backup/where.h"
#include "ui/busy/panel.h"
#include "ui/look/colours.h"
#include "ui/window/backup_commands.h"
#include "ui/window/commands.h"
#include "ui/window/main_window.h"
#include "ui/window/work_page.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QDir>
#include <QFile>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>

// Long work in the real window: a book large enough, and who looks at its panel.

namespace tests {

constexpr int kColonies = 400;

inline QByteArray bytesAt(const QString& path) {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

/// What is seen of long work while it runs; presses a key once it is under way.
class Looker : public QObject {
public:
    explicit Looker(int press = 0) : m_press(press) {
        m_tick.start(1);
        connect(&m_tick, &QTimer::timeout, this, &Looker::look);
    }

    int ticks = 0;
    int shares = 0; ///< different ones
    QStringList doing;
    std::function<void()> meanwhile; ///< once

private:
    void look() {
        for (const QWidget* w : QApplication::topLevelWidgets())
            if (auto* panel = w->findChild<ui::busy::Panel*>(QString(), Qt::FindDirectChildrenOnly)) return see(*panel);
    }
    void see(ui::busy::Panel& panel) {
        ++ticks;
        EXPECT_TRUE(panel.isVisible());
        if (panel.bar()->value() != m_last) ++shares;
        m_last = panel.bar()->value();
        if (!panel.doing().isEmpty() && !doing.contains(panel.doing())) doing << panel.doing();
        if (m_last == 0 || panel.busy().stopped()) return;
        if (!std::exchange(m_kept, true)) keepPicture(*panel.window());
        if (meanwhile) std::exchange(meanwhile, {})();
        if (m_press != 0) QTest::keyClick(panel.stopButton(), static_cast<Qt::Key>(m_press));
    }

    /// For looking at: YW_WORK_PICTURES=DIR, as it is, or dark with YW_WORK_DARK=1.
    static void keepPicture(QWidget& window) {
        const QString to = qEnvironmentVariable("YW_WORK_PICTURES");
        if (to.isEmpty()) return;
        const QString name = QString::fromLatin1(testing::UnitTest::GetInstance()->current_test_info()->name());
        EXPECT_TRUE(window.grab().save(QDir(to).filePath(name + QStringLiteral(".png"))));
    }

    QTimer m_tick;
    bool m_kept = false;
    int m_press;
    int m_last = 0;
};

/// Presses Esc at once on each panel that is shown, before the work begins or goes on; notes what panels say.
class AtOnce : public QObject {
public:
    explicit AtOnce(bool stops) : m_stops(stops) { qApp->installEventFilter(this); }

    int panels = 0;
    QStringList said; ///< by those that are not stopped
    bool greyed = false;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override {
        auto* panel = event->type() == QEvent::Show ? qobject_cast<ui::busy::Panel*>(watched) : nullptr;
        if (!panel) return false;
        ++panels;
        QMetaObject::invokeMethod(
            panel, [this, panel] { meet(*panel); }, Qt::QueuedConnection);
        return false;
    }

private:
    void meet(ui::busy::Panel& panel) {
        said << panel.doing();
        connect(&panel.busy(), &ui::busy::Busy::told, this, [this, &panel](const QString& what) {
            if (!said.contains(what)) said << what;
            greyed = greyed || !panel.stopButton()->isEnabled();
        });
        if (m_stops) QTest::keyClick(panel.stopButton(), Qt::Key_Escape);
    }
    bool m_stops;
};

struct LongWork : testing::Test {
    static void SetUpTestSuite() {
        shared = std::make_unique<QTemporaryDir>();
        const FixedClock now;
        const auto session = core::edit::Session::create(shared->filePath(QStringLiteral("large.yardwright")), now);
        demo::DemoSize size;
        size.colonies = kColonies;
        demo::fillDemoBook(*session, size);
    }
    static void TearDownTestSuite() { shared.reset(); }

    void SetUp() override {
        ASSERT_TRUE(QFile::copy(shared->filePath(QStringLiteral("large.yardwright")), book()));
        const bool dark = qEnvironmentVariableIsSet("YW_WORK_DARK");
        QApplication::setPalette(ui::look::paletteOf(ui::look::colours(dark)));
        window = std::make_unique<ui::window::MainWindow>(clock, dialogs);
        window->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(window.get()));
        window->activateWindow();
    }
    void open() { ASSERT_TRUE(window->openBook(book(), false)); }
    void press(Qt::Key key) const { QTest::keyClick(window.get(), key, Qt::ControlModifier | Qt::AltModifier); }
    QString book() const { return folder.filePath(QStringLiteral("book.yardwright")); }
    QString out(const char* name) const { return folder.filePath(QLatin1StringView(name)); }
    std::string said() const { return window->saying().toStdString(); }
    bool anyPanel() const { return window->findChild<ui::busy::Panel*>() != nullptr; }

    static inline std::unique_ptr<QTemporaryDir> shared;
    QTemporaryDir folder;
    FixedClock clock;
    TestDialogs dialogs;
    std::unique_ptr<ui::window::MainWindow> window;
};

struct LongBackups : LongWork {
    LongBackups() { ui::backup::setFolder(shelf.path()); }
    ~LongBackups() override { ui::backup::setFolder({}); }
    void SetUp() override {
        LongWork::SetUp();
        open();
        press(Qt::Key_U);
        shown = window->page()->findChild<ui::backup::BackupsWindow*>();
        ASSERT_NE(shown, nullptr);
        shown->activateWindow();
    }
    void make() const {
        QTest::keyClick(shown->makeButton(), Qt::Key_Space);
        auto* keeping = window->commands()->backups()->keeping();
        EXPECT_TRUE(QTest::qWaitFor([&] { return !keeping->running(); }, 20'000));
    }
    QTemporaryDir shelf;
    ui::backup::BackupsWindow* shown = nullptr;
};

} // namespace tests
