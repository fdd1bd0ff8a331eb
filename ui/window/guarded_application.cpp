#include "ui/window/guarded_application.h"

namespace ui::window {

bool GuardedApplication::notify(QObject* receiver, QEvent* event) {
    if (!m_dialogs) return QApplication::notify(receiver, event);
    bool taken = true;
    guarded(*m_dialogs, [&] { taken = QApplication::notify(receiver, event); });
    return taken;
}

} // namespace ui::window
