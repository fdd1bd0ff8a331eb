#pragma once

#include "ui/desk/desk.h"

#include <QWidget>

#include <optional>
#include <vector>

class QLabel;
class QLineEdit;
class QListWidget;
class QPushButton;

namespace ui::settings {

/// The quick sentences of the book: a brief word that stands for each, typed in notes and turned into it by F2.
class PhrasesPage : public QWidget {
    Q_OBJECT
public:
    explicit PhrasesPage(desk::Desk& desk, QWidget* parent = nullptr);

    QListWidget* list() const { return m_list; }
    QLineEdit* brief() const { return m_brief; }
    QLineEdit* sentence() const { return m_sentence; }
    QPushButton* addButton() const { return m_add; }
    QPushButton* changeButton() const { return m_change; }
    QPushButton* takeBackButton() const { return m_takeBack; }
    QString problem() const;

private:
    void build();
    void refresh();
    void settle();
    void showChosen();
    std::optional<core::Phrase> chosen() const;
    bool save(const QString& what, const core::edit::Edit& edit);
    void add();
    void change();
    void takeBack();

    desk::Desk& m_desk;
    std::vector<core::Phrase> m_phrases;
    QListWidget* m_list;
    QLineEdit* m_brief;
    QLineEdit* m_sentence;
    QLabel* m_problem;
    QPushButton* m_add;
    QPushButton* m_change;
    QPushButton* m_takeBack;
};

} // namespace ui::settings
