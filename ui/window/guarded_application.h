#pragma once

#include "ui/dialogs.h"

#include <QApplication>

namespace ui::window {

/// Where a key, a click or a timer meets a book that cannot be read, and nothing has caught that, it is said and the
/// window lives on.
class GuardedApplication : public QApplication {
public:
    using QApplication::QApplication;

    bool notify(QObject* receiver, QEvent* event) override;
    void setDialogs(Dialogs* dialogs) { m_dialogs = dialogs; }

private:
    Dialogs* m_dialogs = nullptr;
};

} // namespace ui::window
