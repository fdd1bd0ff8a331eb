#pragma once

#include "core/report/contact_pages.h"
#include "ui/desk/while_shown.h"

#include <QWidget>

#include <optional>

class QComboBox;
class QLineEdit;
class QPushButton;
class QScrollArea;
class QTableView;

namespace ui::form {
class DayEdit;
}

namespace ui::look {
class WrappedLabel;
}

namespace ui::health {

class ContactModel;
class ContactView;

/// Contacts of a colony, living or ended: what it passed on or what came to it within a window, drawn in time and as a
/// list; the chain that leads to the chosen one; who would be held were it positive. Nothing is written.
class ContactsPage : public QWidget {
    Q_OBJECT
public:
    ContactsPage(desk::Desk& desk, Dialogs& dialogs, QWidget* parent = nullptr);

    /// Traces this colony.
    void trace(core::ColonyId colony);
    QTableView* table() const { return m_table; }
    QLineEdit* colonyField() const { return m_colony; }
    QPushButton* whatIfButton() const { return m_whatIf; }
    QPushButton* pdfButton() const { return m_pdf; }
    QString summary() const; ///< or what is wrong with what was typed
    QString chain() const;   ///< how the chosen line is linked
    QString supposed() const;

signals:
    void cardAsked(core::ColonyId colony);

private:
    void build();
    QWidget* head();
    void read();
    void ask();
    void tell(core::ColonyIx colony, core::Day from, core::Day until);
    void showCurrent();
    void openCurrent();
    void suppose();
    void writePdf();
    void refuse(const QString& why);

    desk::Desk& m_desk;
    Dialogs& m_dialogs;
    core::Snapshot m_snapshot; ///< of today: what is known by now
    std::vector<core::rules::Hold> m_holds;
    std::optional<core::report::ContactTold> m_told;
    QLineEdit* m_colony;
    form::DayEdit* m_from;
    form::DayEdit* m_until;
    QComboBox* m_way;
    QPushButton* m_whatIf;
    QPushButton* m_pdf;
    look::WrappedLabel* m_summary;
    look::WrappedLabel* m_chain;
    look::WrappedLabel* m_supposed;
    ContactView* m_view;
    QScrollArea* m_scroll;
    ContactModel* m_model;
    QTableView* m_table;
    desk::WhileShown* m_follow;
};

} // namespace ui::health
