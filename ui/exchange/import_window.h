#pragma once

#include "core/exchange/import.h"
#include "ui/desk/desk.h"
#include "ui/dialogs.h"
#include "ui/exchange/foreign_draft.h"

#include <QTimer>
#include <QWidget>

class QCheckBox;
class QLabel;
class QProgressBar;
class QPushButton;
class QVBoxLayout;

namespace ui::exchange {

class ColumnsPanel;
class Findings;
class FormsBar;
class KeptBar;

/// A file of any program on its way into the book, in a window beside the book's: how it is written, which of its
/// columns are which of ours, what would come in and what is wrong with it, at once after each choice; then all of it,
/// or nothing. Reading and writing run on this thread, watched by a bar that can stop them (ui/busy).
class ImportWindow : public QWidget {
    Q_OBJECT
public:
    ImportWindow(desk::Desk& desk, Dialogs& dialogs, QWidget* parent);

    /// Shows what can be told of the file; one sentence under the window where it cannot be used.
    void openFile(const QString& path);
    const ForeignDraft& draft() const { return m_draft; }
    FormsBar* forms() const { return m_forms; }
    KeptBar* kept() const { return m_kept; }
    ColumnsPanel* columns() const { return m_columns; }
    Findings* findings() const { return m_findings; }
    QPushButton* chooseButton() const { return m_choose; }
    QPushButton* checkButton() const { return m_check; }
    QPushButton* importButton() const { return m_import; }
    QPushButton* stopButton() const { return m_stop; }
    QCheckBox* leaveOut() const { return m_leaveOut; }
    QString counted() const; ///< what would come in, or did
    QString said() const;

    /// Files up to this are looked through after each choice, larger ones when asked.
    static constexpr qint64 kAtOnceBytes = 2 << 20;

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void build();
    QWidget* head();
    void foot(QVBoxLayout& down);
    QPushButton* button(const QString& text, const QString& tip, void (ImportWindow::*act)());
    void follow();
    void choose();
    void showDraft();
    void changed();
    void look();
    void check();
    void bringIn();
    core::exchange::ImportFiles files() const;
    void showReport();
    void settle();
    void say(const QString& sentence, bool warns = false);

    desk::Desk& m_desk;
    Dialogs& m_dialogs;
    ForeignDraft m_draft;
    core::exchange::ImportReport m_report; ///< of the last look or check
    bool m_checked = false;                ///< all rows, as the choices are now
    bool m_done = false;                   ///< it came in
    QTimer m_soon;
    QLabel* m_file;
    FormsBar* m_forms;
    KeptBar* m_kept;
    ColumnsPanel* m_columns;
    Findings* m_findings;
    QCheckBox* m_leaveOut;
    QLabel* m_counts;
    QLabel* m_saying;
    QProgressBar* m_bar;
    QPushButton *m_choose, *m_check, *m_import, *m_stop;
};

/// Asks for a file and shows it in front; one window a book, kept by `page` and gone with it.
ImportWindow* showImport(desk::Desk& desk, Dialogs& dialogs, QWidget* page);

} // namespace ui::exchange
