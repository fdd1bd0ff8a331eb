#pragma once

#include <QObject>

class QAction;
class QMenu;

namespace ui::window {

class MainWindow;

/// The commands of the date bar, in the menu of what is shown.
class TimeCommands : public QObject {
    Q_OBJECT
public:
    TimeCommands(QMenu* view, QWidget* window);

    QAction *goToDay, *today, *play;

    void setBookOpen(bool open);
    void wire(MainWindow& window);
};

} // namespace ui::window
