#pragma once

#include "core/base/clock.h"
#include "ui/desk/desk.h"
#include "ui/dialogs.h"
#include "ui/window/paper.h"
#include "ui/window/top_bar.h"

#include <QMainWindow>

#include <functional>
#include <memory>

class QStackedWidget;

namespace ui::people {
class WhoKeeps;
}

namespace ui::window {

class Commands;
class ReadBanner;
class StatusLine;
class Welcome;
class WorkPage;

/// The frame around one open book: builds, delegates. Commands are connected in wiring.h.
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
    /// Closes the book, lets `work` change the file at its path, and opens it again; false where either cannot be.
    bool replaceBook(const std::function<void(const QString& book)>& work);
    void setPlace(Place place);
    void setPaper(Paper paper);
    void undo();
    void redo();
    /// Where the book can only be read: whether it can be written now.
    void tryAgain();
    /// All text of the program, in percent of the system's size (look/text_size.h).
    void setTextPercent(int percent);
    void say(const QString& sentence);
    /// The name that this book is written under, remembered on this machine.
    void writeAs(const QString& name);

    const core::Clock& clock() const { return m_clock; }
    desk::Desk* desk() const { return m_desk.get(); }
    WorkPage* page() const { return m_page; }
    TopBar* topBar() const { return m_top; }
    Welcome* welcome() const { return m_welcome; }
    Commands* commands() const { return m_commands; }
    people::WhoKeeps* whoKeeps() const { return m_whoKeeps; } ///< asked of a new book
    StatusLine* statusLine() const { return m_status; }
    ReadBanner* banner() const { return m_banner; }
    const Paper& paper() const { return m_paper; }
    QString saying() const; ///< the status line

signals:
    void bookOpened();                                           ///< and shown
    void bookDamaged(const QString& path, const QString& wrong); ///< it cannot be opened; some of it may be read
    void bookLeaving();                                          ///< before another takes its place
    void placeChanged();
    void textSizeChanged();

protected:
    bool event(QEvent* event) override;
    void closeEvent(QCloseEvent* event) override;

private:
    void buildFrame();
    void lay(std::unique_ptr<core::edit::Session> session, const QString& onlyRead = {});
    bool mayLeave();
    void putAway();
    void connectBook();
    void settle();
    void settleUndo();
    void settleAuthor();
    void keptBy(const QString& name);
    void setCarrying(bool carrying);

    const core::Clock& m_clock;
    Dialogs& m_dialogs;
    Paper m_paper;
    std::unique_ptr<desk::Desk> m_desk;
    TopBar* m_top;
    Commands* m_commands;
    ReadBanner* m_banner;
    QStackedWidget* m_stack;
    Welcome* m_welcome;
    people::WhoKeeps* m_whoKeeps;
    WorkPage* m_page = nullptr;
    StatusLine* m_status;
};

} // namespace ui::window
