#pragma once

#include "ui/dialogs.h"

#include <QObject>

class QAction;
class QMenu;

namespace ui::salvage {
class SalvageWindow;
}

namespace ui::window {

class MainWindow;

/// A damaged book, in the menu Book: shown by itself where one is opened.
class SalvageCommands : public QObject {
    Q_OBJECT
public:
    SalvageCommands(QMenu* book, QWidget* window);

    QAction* show;

    void wire(MainWindow& window, Dialogs& dialogs);

private:
    void open(MainWindow& window, Dialogs& dialogs, const QString& path, const QString& wrong);
};

} // namespace ui::window
