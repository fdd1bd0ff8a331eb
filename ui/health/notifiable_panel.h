#pragma once

#include "core/rules/notifiable.h"
#include "ui/desk/desk.h"
#include "ui/dialogs.h"
#include "ui/form/form.h"

#include <QWidget>

#include <functional>
#include <memory>
#include <optional>
#include <vector>

class QCheckBox;
class QPushButton;
class QTableWidget;

namespace ui::look {
class WrappedLabel;
}

namespace ui::health {

/// What must be reported where the keeper of the book is, and elsewhere: the shipped table and the book's own lines. A
/// line is added, changed in place of a shipped one, and taken back; the authority decides.
class NotifiablePanel : public QWidget {
    Q_OBJECT
public:
    using OpenForm = std::function<void(std::unique_ptr<form::Form>)>;

    NotifiablePanel(desk::Desk& desk, Dialogs& dialogs, OpenForm open, QWidget* parent = nullptr);

    /// As the book has it now.
    void read();
    QTableWidget* table() const { return m_table; }
    QCheckBox* everywhere() const { return m_everywhere; }
    QPushButton* newButton() const { return m_new; }
    QPushButton* changeButton() const { return m_change; }
    QPushButton* takeBackButton() const { return m_takeBack; }
    QPushButton* keeperButton() const { return m_keeper; }
    QString said() const; ///< of American foulbrood where the keeper is

private:
    void build();
    void settle();
    std::optional<core::rules::NotifiableLine> chosen() const;
    void takeBack();

    desk::Desk& m_desk;
    Dialogs& m_dialogs;
    OpenForm m_open;
    std::vector<core::rules::NotifiableLine> m_lines;
    look::WrappedLabel* m_said;
    QCheckBox* m_everywhere;
    QTableWidget* m_table;
    QPushButton* m_new;
    QPushButton* m_change;
    QPushButton* m_takeBack;
    QPushButton* m_keeper;
};

} // namespace ui::health
