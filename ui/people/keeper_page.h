#pragma once

#include "ui/desk/desk.h"

#include <QWidget>

class QLabel;
class QPushButton;

namespace ui::form {
class FormPanel;
}

namespace ui::people {

/// Whose book it is: name, address, contact, registration, and whose rules hold; a form writes it down or changes it.
class KeeperPage : public QWidget {
    Q_OBJECT
public:
    explicit KeeperPage(desk::Desk& desk, QWidget* parent = nullptr);

    QPushButton* changeButton() const { return m_change; }
    QPushButton* takeBackButton() const { return m_takeBack; }
    form::FormPanel* panel() const { return m_panel; }
    QString shown() const; ///< what is recorded
    QString problem() const;

private:
    void build();
    void refresh();
    void open();
    void takeBack();

    desk::Desk& m_desk;
    QLabel* m_shown;
    QLabel* m_problem;
    QPushButton* m_change;
    QPushButton* m_takeBack;
    form::FormPanel* m_panel;
};

} // namespace ui::people
