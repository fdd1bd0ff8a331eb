#pragma once

#include "ui/pick/by_rule.h"

#include <QObject>

#include <utility>
#include <vector>

class QAction;
class QMenu;

namespace ui::window {

class MainWindow;

/// What finds and selects hives on the plan, in the menu Edit.
class PickCommands : public QObject {
    Q_OBJECT
public:
    PickCommands(QMenu* edit, QWidget* window);

    QAction *find, *all, *others, *none;
    std::vector<std::pair<pick::RuleWords, QAction*>> byRule;
    QMenu* select; ///< all of these but `find`

    void setBookOpen(bool open);
    void wire(MainWindow& window);
};

} // namespace ui::window
