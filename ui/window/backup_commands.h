#pragma once

#include "ui/dialogs.h"

#include <QObject>

class QAction;
class QMenu;

namespace ui::backup {
class Keeping;
}

namespace ui::window {

class MainWindow;

/// Backups of the book, in the menu Book: made by themselves while it is open, shown, and put in its place.
class BackupCommands : public QObject {
    Q_OBJECT
public:
    BackupCommands(QMenu* book, QWidget* window);

    QAction* show;

    void setBookOpen(bool open);
    void wire(MainWindow& window, Dialogs& dialogs);
    /// Of the book on the desk; nullptr while there is none.
    backup::Keeping* keeping() const { return m_keeping; }
    /// Backups are made without being asked for; else only where someone asks.
    void keepByItself() { m_byItself = true; }

private:
    void begin(MainWindow& window);
    void open(MainWindow& window, Dialogs& dialogs);

    backup::Keeping* m_keeping = nullptr;
    bool m_byItself = false;
};

} // namespace ui::window
