#pragma once

#include <QObject>

class QAction;
class QMenuBar;

namespace ui {
struct Dialogs;
}

namespace ui::window {

class MainWindow;

/// The menu of yards and of what is set up in them.
class YardCommands : public QObject {
    Q_OBJECT
public:
    YardCommands(QMenuBar* bar, QWidget* window);

    QAction *newYard, *changeYard, *hiveRow, *placeHives, *carry, *swap, *survey, *kit, *ledger;

    void setBookOpen(bool open, bool writable);
    void setYards(bool any); ///< those of a yard need one
    void wire(MainWindow& window, Dialogs& dialogs);

private:
    void wireSurvey(MainWindow& window);

    bool m_writable = false;
    bool m_any = false;
};

} // namespace ui::window
