#pragma once

#include "ui/desk/desk.h"

#include <QWidget>

class QListWidget;

namespace ui::spring {

/// The looks at new colonies of divides that are due in the yard shown, at the foot of Afterwards. Choosing one chooses
/// its hive: what is seen is logged as a visit (Ctrl+L), and that answers it. Not shown where nothing is due.
class DivideLooks : public QWidget {
    Q_OBJECT
public:
    explicit DivideLooks(desk::Desk& desk, QWidget* parent = nullptr);

    QListWidget* list() const { return m_list; }

private:
    void follow();

    desk::Desk& m_desk;
    QListWidget* m_list;
    bool m_telling = false; ///< the list is being told; it does not tell back
};

/// At the foot of the page.
DivideLooks* addDivideLooks(QWidget* page, desk::Desk& desk);

} // namespace ui::spring
