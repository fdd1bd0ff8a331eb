#pragma once

#include <QWidget>

class QLabel;
class QLineEdit;

namespace ui::people {

/// Asks a new book's keeper for a name, in one field above the book; it can be left for later.
class WhoKeeps : public QWidget {
    Q_OBJECT
public:
    explicit WhoKeeps(QWidget* parent = nullptr);

    /// Begins with `name` in the field; nothing takes the keys.
    void ask(const QString& name);
    /// What was typed stays.
    void refuse(const QString& why);
    QLineEdit* edit() const { return m_name; }

signals:
    void named(const QString& name);
    void later();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void give();

    QLineEdit* m_name;
    QLabel* m_problem;
};

} // namespace ui::people
