#pragma once

#include <QObject>
#include <QPoint>

class QMenu;

namespace ui::window {

class Commands;
class MainWindow;

/// What a right click or the Menu key on the plan or the table offers: of the one hive, of those selected, or of the
/// yard. The commands are the window's own.
class PlanMenu : public QObject {
    Q_OBJECT
public:
    PlanMenu(MainWindow& window, Commands& commands);

private:
    void connectPage();
    void show(const QPoint& globalAt);
    QString title() const;
    void addHive(QMenu& menu);
    void addSeveral(QMenu& menu);
    void addYard(QMenu& menu);

    MainWindow& m_window;
    Commands& m_commands;
};

} // namespace ui::window
