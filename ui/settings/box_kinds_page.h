#pragma once

#include "ui/desk/desk.h"

#include <QWidget>

#include <optional>
#include <vector>

class QLabel;
class QPushButton;
class QTableWidget;

namespace ui::form {
class FormPanel;
}

namespace ui::settings {

/// The box kinds of the book as a table; a form beneath it adds one, or changes one of the users' own.
class BoxKindsPage : public QWidget {
    Q_OBJECT
public:
    explicit BoxKindsPage(desk::Desk& desk, QWidget* parent = nullptr);

    QTableWidget* table() const { return m_table; }
    QPushButton* newButton() const { return m_new; }
    QPushButton* changeButton() const { return m_change; }
    QPushButton* takeBackButton() const { return m_takeBack; }
    form::FormPanel* panel() const { return m_panel; }
    QString problem() const;

private:
    void build();
    void refresh();
    void settle();
    std::optional<core::BoxKind> chosen() const;
    void open(std::optional<core::BoxKind> kind);
    void takeBack();

    desk::Desk& m_desk;
    std::vector<core::BoxKind> m_kinds;
    QTableWidget* m_table;
    QPushButton* m_new;
    QPushButton* m_change;
    QPushButton* m_takeBack;
    QLabel* m_problem;
    form::FormPanel* m_panel;
};

} // namespace ui::settings
