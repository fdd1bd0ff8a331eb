#pragma once

#include "core/edit/book_copies.h"
#include "ui/desk/beside.h"
#include "ui/desk/desk.h"
#include "ui/dialogs.h"

#include <QWidget>

#include <memory>
#include <optional>
#include <vector>

class QLabel;
class QPushButton;
class QTreeWidget;

namespace ui::history {
class ChangeView;
}
namespace ui::look {
class WrappedLabel;
}

namespace ui::copies {

class LinesList;

/// The copies of a book that lie beside it, in a window: how each stands to the book, what either has that the other
/// has not, and what can be done. Nothing is merged; nothing is deleted. Files are read beside the window.
class CopiesWindow : public QWidget {
    Q_OBJECT
public:
    CopiesWindow(desk::Desk& desk, Dialogs& dialogs, QWidget* parent);

    QTreeWidget* list() const { return m_list; }
    LinesList* onlyHere() const { return m_onlyHere; }
    LinesList* onlyThere() const { return m_onlyThere; }
    history::ChangeView* change() const { return m_change; }
    QPushButton* openButton() const { return m_open; }
    QPushButton* asideButton() const { return m_aside; }
    QPushButton* textButton() const { return m_text; }
    QString compared() const; ///< how the chosen one stands, in words
    QString said() const;
    bool busy() const { return m_busy; }

signals:
    /// To go on in the copy instead.
    void openAsked(const QString& path);
    void looked(); ///< the list is read

private:
    void build();
    QWidget* comparedPart();
    QWidget* buttonPart();
    void read();
    void take(std::vector<core::edit::BookCopyFound> copies);
    void compare();
    void showCompared(const core::edit::BooksCompared& compared);
    void showChange(const LinesList& list, bool here);
    void putAside();
    void copyText();
    void settle();
    const core::edit::BookCopyFound* chosen() const;

    desk::Desk& m_desk;
    Dialogs& m_dialogs;
    std::vector<core::edit::BookCopyFound> m_copies;
    std::optional<core::edit::BooksCompared> m_compared;
    std::unique_ptr<core::edit::Session> m_there; ///< the chosen copy; none where it is of an older version
    bool m_busy = false;
    QTreeWidget* m_list;
    look::WrappedLabel* m_how;
    LinesList* m_onlyHere;
    LinesList* m_onlyThere;
    QLabel* m_whose;
    history::ChangeView* m_change;
    QPushButton* m_open;
    QPushButton* m_aside;
    QPushButton* m_text;
    look::WrappedLabel* m_said;
    desk::Beside m_beside; ///< last: its work names none of the others
};

} // namespace ui::copies
