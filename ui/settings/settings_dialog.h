#pragma once

#include "ui/desk/desk.h"
#include "ui/dialogs.h"

#include <QDialog>

class QLabel;
class QLineEdit;
class QListWidget;
class QStackedWidget;

namespace ui::settings {

class SettingsPage;

/// All that is set for the open book: the settings by group, and further pages.
/// Stands beside the window, never over it; each change is saved when made and undone like any other.
class SettingsDialog : public QDialog {
    Q_OBJECT
public:
    /// `desk` outlives it.
    SettingsDialog(desk::Desk& desk, Dialogs& dialogs, QWidget* parent);

    SettingsPage* settings() const { return m_settings; }
    QListWidget* list() const { return m_list; }
    QLineEdit* search() const { return m_search; }
    /// A page of its own below the groups of settings; the dialog owns it.
    void addPage(const QString& title, QWidget* page);
    void showPage(const QWidget* page);

private:
    QWidget* buildLeft();
    void fitLeft();
    void addUndo();
    void goTo(int row);
    void find(const QString& words);
    void settle();

    desk::Desk& m_desk;
    Dialogs& m_dialogs;
    QWidget* m_left;
    QLineEdit* m_search;
    QListWidget* m_list;
    QStackedWidget* m_stack; ///< the settings, then the pages
    SettingsPage* m_settings;
    QLabel* m_saying;
};

} // namespace ui::settings
