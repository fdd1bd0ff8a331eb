#include "ui/desk/while_shown.h"

#include <QEvent>
#include <QWidget>

#include <utility>

namespace ui::desk {

WhileShown::WhileShown(QWidget& widget, Desk& desk, Dialogs& dialogs, std::function<void()> read)
    : QObject(&widget), m_widget(widget), m_dialogs(dialogs), m_read(std::move(read)) {
    widget.installEventFilter(this);
    connect(&desk, &Desk::read, this, &WhileShown::again);
    connect(&desk, &Desk::yardChanged, this, &WhileShown::again);
}

void WhileShown::again() {
    m_stale = true;
    if (m_widget.isVisible()) settle();
}

void WhileShown::settle() {
    if (!std::exchange(m_stale, false)) return;
    guarded(m_dialogs, m_read);
}

bool WhileShown::eventFilter(QObject* watched, QEvent* event) {
    if (watched == &m_widget && event->type() == QEvent::Show) settle();
    return QObject::eventFilter(watched, event);
}

} // namespace ui::desk
