#pragma once

#include "core/base/clock.h"
#include "ui/desk/desk.h"
#include "ui/dialogs.h"
#include "ui/window/paper.h"
#include "ui/window/top_bar.h"

#include <QMainWindow>

#include <memory>

class QLabel;
class QStackedWidget;

namespace ui::window {

class Commands;
class Welcome;
class WorkPage;

/// Builds, connects, delegates.
class MainWindow : public QMainWindow {
    Q_OBJECT
public:
    MainWindow(const core::Clock& clock, Dialogs& dialogs);
    ~MainWindow() override;

    /// A book that is open elsewhere is opened for reading only, and says so. False where it cannot be used (the
    /// dialogs have said why).
    /// `remember`: among the recent ones.
    bool openBook(const QString& path, bool remember = true);
    bool makeBook(const QString& path);
    bool importFolder(const QString& folder);
    void setPlace(Place place);
    void setPaper(Paper paper);

    desk::Desk* desk() const { return m_desk.get(); }
    WorkPage* page() const { return m_page; }
    TopBar* topBar() const { return m_top; }
    QString saying() const; ///< the status line

protected:
    bool event(QEvent* event) override;

private:
    void connectCommands();
    void lay(std::unique_ptr<core::edit::Session> session);
    void settle();
    void say(const QString& sentence);
    void toPaper(int way);
    void undo();
    void redo();
    void setCarrying(bool carrying);

    const core::Clock& m_clock;
    Dialogs& m_dialogs;
    Paper m_paper;
    std::unique_ptr<desk::Desk> m_desk;
    TopBar* m_top;
    Commands* m_commands;
    QStackedWidget* m_stack;
    Welcome* m_welcome;
    WorkPage* m_page = nullptr;
    QLabel* m_saying;
    bool m_dressing = false;
};

} // namespace ui::window
