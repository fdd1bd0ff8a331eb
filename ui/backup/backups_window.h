#pragma once

#include "core/edit/backups.h"
#include "ui/desk/desk.h"
#include "ui/dialogs.h"

#include <QWidget>

#include <optional>
#include <vector>

class QLineEdit;
class QPlainTextEdit;
class QProgressBar;
class QPushButton;
class QTreeWidget;

namespace ui::look {
class WrappedLabel;
}

namespace ui::backup {

class Keeping;

/// The backups of the book in a window beside it: where they lie, what one of them lacks, and putting one in the book's
/// place once that was looked at.
class BackupsWindow : public QWidget {
    Q_OBJECT
public:
    BackupsWindow(desk::Desk& desk, Keeping& keeping, Dialogs& dialogs, QWidget* parent);

    QTreeWidget* list() const { return m_list; }
    QLineEdit* folderField() const { return m_folder; }
    QPushButton* makeButton() const { return m_make; }
    QPushButton* compareButton() const { return m_compare; }
    QPushButton* placeButton() const { return m_place; }
    QString differences() const; ///< of the backup compared last
    QString said() const;

signals:
    /// It was compared, and is to become the book; `why`: where holds go with that.
    void placeAsked(const core::edit::Backup& backup, const std::optional<core::edit::PutBack>& why);

private:
    void build();
    QWidget* folderPart();
    QWidget* buttonPart();
    void read();
    void settle();
    void takeFolder();
    void compare();
    void forgetCompared();
    void place();
    std::optional<core::edit::Backup> chosen() const;

    desk::Desk& m_desk;
    Keeping& m_keeping;
    Dialogs& m_dialogs;
    std::vector<core::edit::Backup> m_backups;
    QString m_compared;  ///< the path of that whose differences are shown
    QStringList m_holds; ///< that would go with it
    QLineEdit* m_folder;
    QTreeWidget* m_list;
    QPlainTextEdit* m_differences;
    QPushButton* m_make;
    QPushButton* m_compare;
    QPushButton* m_place;
    QProgressBar* m_bar;
    look::WrappedLabel* m_said;
};

} // namespace ui::backup
