#pragma once

#include "ui/desk/desk.h"

#include <QObject>

#include <functional>

class QWidget;

namespace ui::desk {

/// Has a widget read the desk anew whenever the reading or the yard is another, but only while it is shown; what came
/// meanwhile is read when it appears. Belongs to the widget.
class WhileShown : public QObject {
public:
    WhileShown(QWidget& widget, Desk& desk, Dialogs& dialogs, std::function<void()> read);

    /// Something else that it reads has changed.
    void again();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void settle();

    QWidget& m_widget;
    Dialogs& m_dialogs;
    std::function<void()> m_read;
    bool m_stale = true;
};

} // namespace ui::desk
