#include "tests/ui/open_window.h"

#include "ui/form/form_panel.h"
#include "ui/table/hive_table.h"
#include "ui/window/commands.h"
#include "ui/window/status_line.h"

#include <QAbstractButton>
#include <QAccessible>
#include <QAction>
#include <QApplication>
#include <QButtonGroup>
#include <QLabel>
#include <QMenu>
#include <QMenuBar>
#include <QPointer>
#include <QPushButton>
#include <QScrollBar>
#include <QShortcut>

#include <map>
#include <set>

namespace {

constexpr int kMostTabs = 700;

std::string nameOf(const QWidget* w) {
    return std::string(w->metaObject()->className()) + " “" + w->accessibleName().toStdString() + "” " +
           w->objectName().toStdString();
}

/// What the keys are to reach: shown, enabled, and no inner part of another.
std::set<QWidget*> reachable(QWidget& window) {
    std::set<QWidget*> out;
    for (QWidget* w : window.findChildren<QWidget*>()) {
        const QWidget* in = w->parentWidget();
        const auto* button = qobject_cast<QAbstractButton*>(w);
        const bool byArrows = button && button->group() && button->group()->exclusive() && !button->isChecked();
        const bool inner = byArrows || w->focusProxy() || qobject_cast<QScrollBar*>(w) ||
                           in->inherits("QAbstractSpinBox") || in->inherits("QComboBox") ||
                           w->objectName().startsWith(QStringLiteral("qt_"));
        if (w->window() == &window && w->isVisible() && w->isEnabled() && (w->focusPolicy() & Qt::TabFocus) && !inner)
            out.insert(w);
    }
    return out;
}

void expectNames(QWidget& window, const std::string& where) {
    for (QWidget* w : reachable(window)) {
        QAccessibleInterface* spoken = QAccessible::queryAccessibleInterface(w);
        ASSERT_NE(spoken, nullptr);
        EXPECT_FALSE(spoken->text(QAccessible::Name).isEmpty()) << where << ": without a name: " << nameOf(w);
    }
}

void expectTabsReachAll(QWidget& window, const std::string& where) {
    std::vector<QPointer<QWidget>> left; // some are made anew as hives are chosen on the way
    for (QWidget* w : reachable(window)) left.emplace_back(w);
    ASSERT_FALSE(left.empty()) << where;
    left.front()->setFocus(Qt::TabFocusReason);
    for (int i = 0; i < kMostTabs && !left.empty(); ++i) {
        QWidget* now = QApplication::focusWidget();
        ASSERT_NE(now, nullptr) << where;
        std::erase_if(left, [now](const QPointer<QWidget>& w) { return !w || w == now; });
        QTest::keyClick(now, Qt::Key_Tab);
    }
    for (const QPointer<QWidget>& w : left)
        if (w && w->isVisible()) ADD_FAILURE() << where << ": Tab never reaches " << nameOf(w);
}

class Taken {
public:
    explicit Taken(std::string where) : m_where(std::move(where)) {}
    void take(const QKeySequence& keys, const QString& by) {
        if (keys.isEmpty()) return;
        const auto [it, first] = m_by.emplace(keys.toString(), by);
        EXPECT_TRUE(first) << m_where << ": " << keys.toString().toStdString() << " is both “"
                           << it->second.toStdString() << "” and “" << by.toStdString() << "”";
    }
    /// Of a page alone: the same keys may turn another page that lies apart from it.
    void takeWithin(const QKeySequence& keys, const QWidget* within) {
        for (const auto& [other, where] : m_within)
            EXPECT_FALSE(other == keys &&
                         (within == where || within->isAncestorOf(where) || where->isAncestorOf(within)))
                << m_where << ": " << keys.toString().toStdString() << " twice";
        EXPECT_FALSE(m_by.contains(keys.toString())) << m_where << ": " << keys.toString().toStdString();
        m_within.emplace_back(keys, within);
    }
    void mnemonic(const QString& text) { take(QKeySequence::mnemonic(text), text); }

private:
    std::string m_where;
    std::map<QString, QString> m_by;
    std::vector<std::pair<QKeySequence, const QWidget*>> m_within;
};

void expectMenuKeys(const QMenu& menu, const std::string& where) {
    Taken letters(where + ", menu " + menu.title().toStdString());
    for (const QAction* a : menu.actions()) {
        if (a->isVisible()) letters.mnemonic(a->text());
        if (a->menu()) expectMenuKeys(*a->menu(), where);
    }
}

void expectKeysOnce(QWidget& window, const std::string& where) {
    Taken keys(where);
    for (const QAction* a : window.findChildren<QAction*>())
        for (const QKeySequence& k : a->shortcuts()) keys.take(k, a->text());
    for (const QShortcut* s : window.findChildren<QShortcut*>()) {
        const auto* within = qobject_cast<QWidget*>(s->parent()); // a page that is not shown takes no keys
        if (s->context() != Qt::WidgetWithChildrenShortcut || !within)
            keys.take(s->key(), QStringLiteral("a shortcut"));
        else if (within->isVisible())
            keys.takeWithin(s->key(), within);
    }
    for (const QMenuBar* bar : window.findChildren<QMenuBar*>()) {
        for (const QAction* a : bar->actions()) {
            keys.mnemonic(a->text());
            if (a->menu()) expectMenuKeys(*a->menu(), where);
        }
    }
    for (QWidget* w : window.findChildren<QWidget*>()) {
        if (!w->isVisible() || w->window() != &window) continue;
        if (const auto* b = qobject_cast<QAbstractButton*>(w)) keys.mnemonic(b->text());
        if (const auto* l = qobject_cast<QLabel*>(w); l && l->buddy()) keys.mnemonic(l->text());
    }
}

void expectUsable(QWidget& window, const std::string& where) {
    for (int i = 0; i < 5; ++i) QCoreApplication::processEvents();
    expectNames(window, where);
    expectTabsReachAll(window, where);
    expectKeysOnce(window, where);
}

struct Access : tests::OpenWindow {
    void choose(const char* label) const { window->desk()->choose(book.idOf(QLatin1StringView(label))); }
};

TEST_F(Access, OfEveryPlace) {
    expectUsable(*window, "yard plan");
    choose("A3");
    expectUsable(*window, "card");
    QTest::keyClick(window.get(), Qt::Key_T, Qt::ControlModifier);
    window->setPlace(ui::window::Place::MergeDay);
    choose("A2");
    expectUsable(*window, "merge day with the table");
    QTest::keyClick(window.get(), Qt::Key_T, Qt::ControlModifier);
    QTest::keyClick(window.get(), Qt::Key_5, Qt::ControlModifier);
    expectUsable(*window, "held");
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_PageDown, Qt::ControlModifier);
    expectUsable(*window, "contacts");
    QTest::keyClick(window.get(), Qt::Key_3, Qt::ControlModifier);
    expectUsable(*window, "write down");
}

TEST_F(Access, OfEveryFormOfTheRecordMenu) {
    choose("A2");
    int forms = 0;
    for (const auto& [what, command] : window->commands()->notes) {
        if (!command->isEnabled()) continue;
        command->trigger();
        if (!window->page()->panel()->isVisible()) continue;
        expectUsable(*window, command->text().toStdString());
        ++forms;
        window->page()->panel()->close();
    }
    EXPECT_GT(forms, 3);
    window->page()->logVisit();
    expectUsable(*window, "visit");
}

TEST_F(Access, OfABookThatCanOnlyBeRead) {
    tests::TestDialogs none;
    ui::window::MainWindow second(book.clock(), none);
    ASSERT_TRUE(second.openBook(book.path()));
    second.show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&second));
    second.activateWindow();
    expectUsable(second, "second window");
}

TEST_F(Access, OfTheHistory) {
    QTest::mouseClick(window->statusLine()->savedButton(), Qt::LeftButton);
    int others = 0;
    for (QWidget* w : QApplication::topLevelWidgets()) {
        if (w == window.get() || !w->isVisible()) continue;
        ASSERT_TRUE(QTest::qWaitForWindowExposed(w));
        w->activateWindow();
        expectUsable(*w, "history");
        w->close();
        ++others;
    }
    EXPECT_EQ(others, 1);
}

TEST_F(Access, OfTheStart) {
    tests::TestDialogs none;
    ui::window::MainWindow start(book.clock(), none);
    start.show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&start));
    start.activateWindow();
    expectUsable(start, "start");
    QTemporaryDir folder;
    ASSERT_TRUE(start.makeBook(folder.filePath(QStringLiteral("new.yardwright"))));
    expectUsable(start, "empty book");
}

} // namespace
