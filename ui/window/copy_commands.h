#pragma once

#include "ui/copies/offers.h"
#include "ui/desk/beside.h"
#include "ui/dialogs.h"

#include <QObject>

#include <optional>

class QAction;
class QMenu;
class QPushButton;

namespace ui::copies {
class CopiesNotice;
class FileWatch;
} // namespace ui::copies

namespace ui::window {

class MainWindow;

/// What others do to the book's file and beside it: copies that lie there, in the menu Book; the file that was
/// replaced, taken away or written over under the open book, said in the banner with what can be done.
class CopyCommands : public QObject {
    Q_OBJECT
public:
    CopyCommands(QMenu* book, QWidget* window);

    QAction* show;
    // Offered in the banner while they are of use.
    QAction* openThere;  ///< what lies at the book's path now
    QAction* openMoved;  ///< the same file where it lies by now
    QAction* writeAgain; ///< to the path where nothing lies any more
    QAction* overrule;   ///< another machine's note

    void wire(MainWindow& window, Dialogs& dialogs);
    /// Looks for copies after each opening without being asked for.
    void lookByItself() { m_byItself = true; }
    /// The book is left: what nobody else has of it is kept.
    void finish();
    copies::CopiesNotice* notice() const { return m_notice; }
    QPushButton* buttonOf(const QAction* offered) const; ///< in the banner; nullptr: not offered

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void connectOffers();
    void begin();
    void look();
    void open();
    void settle();
    QString whatIsKept();

    MainWindow* m_window = nullptr;
    Dialogs* m_dialogs = nullptr;
    std::optional<copies::Offers> m_offers;
    copies::FileWatch* m_watch = nullptr; ///< of the open book
    copies::CopiesNotice* m_notice = nullptr;
    desk::Beside m_beside;
    bool m_byItself = false;
    bool m_kept = false; ///< of this trouble
};

CopyCommands* copiesOf(const MainWindow& window);

} // namespace ui::window
