#pragma once

#include "core/model/rows.h"
#include "ui/desk/desk.h"

#include <QTimer>
#include <QWidget>

#include <functional>
#include <memory>
#include <vector>

class QCheckBox;
class QComboBox;
class QLabel;
class QLineEdit;
class QMenu;
class QToolButton;

namespace ui::form {
class Form;
}

namespace ui::find {

class ColonyModel;
class ColonyTable;

/// All colonies of the day shown, of all yards or of the yard shown, filtered by what is typed and chosen or by a
/// question; choosing one shows its card. Follows the desk while it is shown.
class ColoniesPage : public QWidget {
    Q_OBJECT
public:
    ColoniesPage(desk::Desk& desk, Dialogs& dialogs, QWidget* parent = nullptr);
    ~ColoniesPage() override;

    ColonyTable* table() const { return m_table; }
    ColonyModel* model() const { return m_model; }
    QLineEdit* text() const { return m_text; }
    QComboBox* question() const { return m_question; }
    QLabel* foot() const { return m_foot; }
    std::vector<core::ColonyId> selectedColonies() const;

signals:
    void formAsked(const std::function<std::unique_ptr<form::Form>()>& make); ///< to be shown at the right
    void cardAsked(core::ColonyId colony);                                    ///< with the keys

protected:
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;

private:
    void buildFilters();
    void buildQuestions();
    void follow();
    void offer();
    void refilter();
    void tellFoot();
    void chosen();
    void showChosen();
    void fillQuestionMenu();
    core::Question askedQuestion() const;
    void write(const QString& what, const core::edit::Edit& edit);
    void keepColumns() const;

    desk::Desk& m_desk;
    Dialogs& m_dialogs;
    QLineEdit* m_text;
    QComboBox *m_yard, *m_class, *m_queen, *m_held;
    QCheckBox* m_ended;
    QComboBox* m_question;
    QToolButton *m_questionMenu, *m_columns;
    ColonyTable* m_table;
    ColonyModel* m_model;
    QLabel* m_foot;
    std::vector<core::Question> m_questions; ///< kept ones, then those offered
    int m_noFigure = 0;
    bool m_stale = true;
    bool m_telling = false;
};

} // namespace ui::find
