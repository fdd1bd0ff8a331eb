#pragma once

#include "ui/pick/by_rule.h"

#include <QObject>

#include <utility>
#include <vector>

class QAction;
class QMenu;

namespace ui {
struct Dialogs;
}

namespace ui::window {

class MainWindow;

/// What finds and selects hives on the plan, in the menu Edit.
class PickCommands : public QObject {
    Q_OBJECT
public:
    PickCommands(QMenu* edit, QWidget* window);
    void addVisits(QMenu* record);

    QAction *find, *all, *others, *none;
    QAction* visits = nullptr;     ///< of those selected, one after the other
    QAction* visitEach = nullptr;  ///< the same visit of each of them
    QAction* changeEach = nullptr; ///< their data, all at once
    std::vector<std::pair<pick::RuleWords, QAction*>> byRule;
    QMenu* select; ///< all of these but `find`

    void setBookOpen(bool open, bool writable);
    void wire(MainWindow& window, Dialogs& dialogs);

private:
    QWidget* m_window;
};

} // namespace ui::window
