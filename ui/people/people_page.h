#pragma once

#include "ui/desk/desk.h"

#include <QWidget>

#include <optional>
#include <vector>

class QLabel;
class QLineEdit;
class QListWidget;
class QPushButton;

namespace ui::people {

/// The people who keep the book: their names, who writes now, and who is still offered where a record asks by whom.
class PeoplePage : public QWidget {
    Q_OBJECT
public:
    explicit PeoplePage(desk::Desk& desk, QWidget* parent = nullptr);

    QListWidget* list() const { return m_list; }
    QLineEdit* name() const { return m_name; }
    QPushButton* addButton() const { return m_add; }
    QPushButton* renameButton() const { return m_rename; }
    QPushButton* writesButton() const { return m_writes; }
    QPushButton* offeredButton() const { return m_offered; }
    QPushButton* takeBackButton() const { return m_takeBack; }
    QString problem() const;

private:
    void build();
    QPushButton* addButtonTo(QWidget* row, const QString& text);
    void refresh();
    void settle();
    std::optional<core::Person> chosen() const;
    void save(const QString& what, const core::edit::Edit& edit);
    void add();
    void rename();
    void write();
    void offer();
    void takeBack();

    desk::Desk& m_desk;
    std::vector<core::Person> m_people;
    QListWidget* m_list;
    QLineEdit* m_name;
    QLabel* m_problem;
    QPushButton* m_add = nullptr;
    QPushButton* m_rename = nullptr;
    QPushButton* m_writes = nullptr;
    QPushButton* m_offered = nullptr;
    QPushButton* m_takeBack = nullptr;
};

} // namespace ui::people
