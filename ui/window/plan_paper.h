#pragma once

#include <QObject>

class QAction;
class QMenu;

namespace ui {
struct Dialogs;
}

namespace ui::window {

class MainWindow;

/// The plan of the yard shown, alone, to paper and files: in the menu Book.
class PlanPaper : public QObject {
    Q_OBJECT
public:
    PlanPaper(QMenu* book, QWidget* window);

    QAction *print, *pdf, *svg, *png;

    void setBookOpen(bool open);
    void wire(MainWindow& window, Dialogs& dialogs);

private:
    QMenu* m_menu;
};

} // namespace ui::window
