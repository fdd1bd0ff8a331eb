#include "tests/ui/hand.h"

#include "ui/form/form_panel.h"
#include "ui/plan/plan_view.h"
#include "ui/window/work_page.h"

#include <QApplication>
#include <QComboBox>
#include <QCompleter>
#include <QLabel>
#include <QLineEdit>
#include <QMouseEvent>
#include <QTest>

#include <gtest/gtest.h>

namespace tests {

Hand::Hand(ui::window::MainWindow& window) : m_window(window) { qApp->installEventFilter(this); }

Hand::~Hand() { qApp->removeEventFilter(this); }

/// An event that nobody takes goes on to the parents: it is counted at its first receiver alone.
bool Hand::eventFilter(QObject* watched, QEvent* event) {
    if (!watched->isWidgetType()) return false;
    if (event->type() == QEvent::ShortcutOverride && watched == receiver()) ++m_presses;
    if (event->type() == QEvent::MouseButtonPress) {
        const quint64 at = static_cast<QMouseEvent*>(event)->timestamp();
        if (at != m_lastClick) ++m_clicks;
        m_lastClick = at;
    }
    return false;
}

/// A hand is slower than the window.
static void wait() { QCoreApplication::processEvents(); }

void Hand::click(QWidget* on) {
    ASSERT_NE(on, nullptr);
    ASSERT_TRUE(on->isVisible()) << on->objectName().toStdString();
    QTest::mouseClick(on, Qt::LeftButton);
    wait();
}

void Hand::clickGround(core::MmPoint at) {
    pointAt(at);
    ui::plan::PlanView* plan = m_window.page()->plan();
    QTest::mouseClick(plan, Qt::LeftButton, {}, plan->camera().toView(at).toPoint());
    wait();
}

void Hand::pointAt(core::MmPoint at) {
    ui::plan::PlanView* plan = m_window.page()->plan();
    QTest::mouseMove(plan, plan->camera().toView(at).toPoint());
}

void Hand::drag(core::MmPoint from, core::MmPoint to) {
    ui::plan::PlanView* plan = m_window.page()->plan();
    const QPoint a = plan->camera().toView(from).toPoint();
    const QPoint b = plan->camera().toView(to).toPoint();
    QTest::mousePress(plan, Qt::LeftButton, {}, a);
    for (int i = 1; i <= 5; ++i) QTest::mouseMove(plan, a + (b - a) * i / 5);
    QTest::mouseRelease(plan, Qt::LeftButton, {}, b);
    wait();
}

/// As the window system gives them: to an open list first.
QWidget* Hand::receiver() const {
    if (QWidget* list = QApplication::activePopupWidget()) return list->focusWidget() ? list->focusWidget() : list;
    QWidget* focus = QApplication::focusWidget();
    return focus ? focus : &m_window;
}

void Hand::key(Qt::Key key, Qt::KeyboardModifiers with) {
    QTest::keyClick(receiver(), key, with);
    wait();
}

void Hand::type(const QString& text) {
    for (const QChar ch : text) {
        QTest::keyClicks(receiver(), QString(ch));
        wait();
    }
}

void Hand::tabTo(QWidget* widget) {
    constexpr int kFarthest = 120;
    for (int i = 0; i < kFarthest && QApplication::focusWidget() != widget; ++i) key(Qt::Key_Tab);
    EXPECT_EQ(QApplication::focusWidget(), widget) << widget->objectName().toStdString();
}

QWidget* Hand::field(const QString& key) const {
    auto* found = m_window.page()->panel()->findChild<QWidget*>(QStringLiteral("field.") + key);
    EXPECT_TRUE(found && found->isVisible()) << key.toStdString();
    return found;
}

QString Hand::problemOf(const QString& key) const {
    const auto* label = m_window.page()->panel()->findChild<QLabel*>(QStringLiteral("problem.") + key);
    return label && label->isVisible() ? label->text() : QString();
}

QString Hand::noteOf(const QString& key) const {
    const auto* label = m_window.page()->panel()->findChild<QLabel*>(QStringLiteral("note.") + key);
    return label && label->isVisible() ? label->text() : QString();
}

void Hand::fill(const QString& key, const QString& text) { fillWidget(field(key), text); }

void Hand::fillWidget(QWidget* editor, const QString& text) {
    ASSERT_NE(editor, nullptr);
    if (auto* box = qobject_cast<QComboBox*>(editor)) return choose(box, text);
    click(editor);
    key(Qt::Key_A, Qt::ControlModifier);
    key(Qt::Key_Delete);
    if (!text.isEmpty()) type(text);
    const auto* line = qobject_cast<QLineEdit*>(editor);
    if (line && line->completer()) key(Qt::Key_Tab); // its list closes
}

/// By the arrow keys, as far as its list is long.
void Hand::choose(QComboBox* box, const QString& text) {
    tabTo(box);
    key(Qt::Key_Home);
    for (int i = 0; i < box->count() && box->currentText() != text && box->currentData() != text; ++i)
        key(Qt::Key_Down);
    EXPECT_TRUE(box->currentText() == text || box->currentData() == text) << text.toStdString();
}

} // namespace tests
