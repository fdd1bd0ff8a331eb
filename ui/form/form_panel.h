#pragma once

#include "core/base/day.h"
#include "ui/form/form.h"

#include <QScrollArea>

#include <memory>
#include <set>
#include <vector>

class QGridLayout;
class QLabel;
class QPushButton;
class QVBoxLayout;

namespace ui::form {

/// Shows any Form: a row a field, what is wrong beneath it as it is typed, Enter saves, Escape leaves. Nothing is lost
/// by leaving the focus, by a refusal or by a change of the book: what was typed stays typed.
class FormPanel : public QScrollArea {
    Q_OBJECT
public:
    /// Applies the form's edit. False: the user did not answer what was asked. Throws Error: shown in the form.
    using Save = std::function<bool(const Form& form, const Values& values)>;

    explicit FormPanel(QWidget* parent = nullptr);
    ~FormPanel() override;

    /// Begins; the first field has the keys. One that is open is thrown away: ask dirty() before.
    void open(std::unique_ptr<Form> form, core::Day today, Save save);
    const Form* form() const { return m_form.get(); } ///< nullptr: none is open
    Values values() const;
    /// As if it were typed.
    void setValue(const QString& key, const QString& typed);
    /// The same, but no typing that could be lost; judged once.
    void putValues(const Values& values);
    bool dirty() const;
    /// The book holds something new: the form is judged again by it.
    void judgeAgain();
    void save();
    /// Asks once where something typed would be lost.
    void leave();
    /// Closes without a question.
    void close();

signals:
    void valuesChanged(const ui::form::Values& values);
    void closed(); ///< saved or left: there is no form any more
    void said(const QString& sentence);

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void showEvent(QShowEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    struct FieldRow {
        Field field;
        QLabel* heading = nullptr;
        QLabel* label = nullptr; ///< a tick has its own
        QWidget* editor = nullptr;
        QLabel* problem = nullptr;
        QLabel* note = nullptr; ///< nullptr: the field has none
        bool left = false;      ///< the focus was in it and went on
        bool shown = true;
    };

    void build();
    void addRow(QGridLayout* grid, const Field& field);
    void addFoot(QVBoxLayout* all);
    void typedSomething();
    void showRows(const Values& values);
    void showProblems(const std::vector<Problem>& problems);
    std::vector<Problem> judged(const Values& values) const;
    bool askedAbout(const QStringList& odd);
    void say(QLabel* label, const QString& text);
    void showNotes(const Values& values);
    void focusFirst();
    FieldRow* rowOf(const QString& key);

    std::unique_ptr<Form> m_form;
    core::Day m_today;
    Save m_save;
    std::vector<FieldRow> m_rows;
    Values m_started;
    bool m_building = false;
    bool m_tried = false;        ///< saving was tried: nothing missing is passed over in silence
    bool m_leaving = false;      ///< Escape was pressed once over typing not saved
    std::set<QString> m_asked;   ///< odd things that were asked about
    QLabel* m_refused = nullptr; ///< of the whole; why it was not saved
    QLabel* m_meanwhile = nullptr;
    QLabel* m_question = nullptr;
    QPushButton* m_button = nullptr;
};

} // namespace ui::form
