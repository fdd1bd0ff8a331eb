#pragma once

#include <QObject>

class QAction;
class QMenu;

namespace ui::window {

class MainWindow;

/// What looks through the whole book, in the menu Edit.
class FindCommands : public QObject {
    Q_OBJECT
public:
    FindCommands(QMenu* edit, QWidget* window);

    QAction* notes; ///< searched

    void setBookOpen(bool open);
    void wire(MainWindow& window);
};

} // namespace ui::window
