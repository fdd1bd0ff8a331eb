#pragma once

#include "ui/visit/visit_draft.h"

#include <QScrollArea>

#include <array>
#include <functional>
#include <map>
#include <set>

class QCheckBox;
class QComboBox;
class QGridLayout;
class QLabel;
class QLineEdit;
class QPushButton;

namespace ui::form {
class DayEdit;
}

namespace ui::visit {

/// A visit typed by keys, a new one or one of the book: Tab from field to field, Enter saves, Escape leaves. Edits a
/// draft and knows no session.
class VisitForm : public QScrollArea {
    Q_OBJECT
public:
    explicit VisitForm(QWidget* parent = nullptr);

    /// What is possible but odd in a visit, a sentence each: asked about once.
    using Odd = std::function<QStringList(const core::Visit&)>;

    /// Begins a visit of this colony on `draft.day`; the first field has the keys.
    void start(const VisitPlace& place, const VisitDraft& draft, Odd odd = {});
    /// The same visit is typed elsewhere as well, or was before: shows `draft`; what it began with stays the same.
    void follow(const VisitDraft& draft);
    /// The book holds something new: judged by `place` from now on; `meanwhile` says what became of the visit.
    void judgeAgain(const VisitPlace& place, const QString& meanwhile);
    /// It was not saved, and why; what was typed stays.
    void refuse(const QString& why);
    /// Which of several it is, said below the title until another one begins.
    void setStep(const QString& text);
    const VisitPlace& place() const { return m_place; }
    VisitDraft draft() const;
    QLineEdit* note() const { return m_edits[static_cast<size_t>(Field::Note)]; }
    const VisitDraft& began() const { return m_started; } ///< what it began with
    bool dirty() const { return draft() != m_started; }

signals:
    void typed(const VisitDraft& draft); ///< by hand, with each key
    void saveAsked(const core::Visit& visit);
    void leaveAsked();
    void said(const QString& sentence);

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void showEvent(QShowEvent* event) override;

private:
    QLineEdit* addEdit(Field field, const QString& accessibleName);
    QLabel* warning(const QString& name);
    QLabel* problemRow(QGridLayout* grid, int row, std::initializer_list<Field> fields);
    void buildTop(QGridLayout* grid);
    void buildFrames(QGridLayout* grid);
    void buildBrood(QGridLayout* grid);
    void buildRest(QGridLayout* grid);
    void touched(Field field);
    void put(const VisitDraft& draft);
    QWidget* editorOf(Field field) const;
    void check();
    void tellSample(const VisitDraft& draft);
    void save();
    bool askedAbout(const QStringList& odd);
    void leave();

    VisitPlace m_place;
    VisitDraft m_started;
    std::map<Field, QString> m_unread; ///< as in the draft; what is chosen here takes its place
    bool m_putting = false;            ///< fields change, and not by hand
    bool m_leaving = false;            ///< Escape was pressed once over typing not saved
    QLabel* m_title = nullptr;
    QLabel* m_step = nullptr;
    QLabel* m_weightLabel = nullptr;
    form::DayEdit* m_day = nullptr;
    QComboBox* m_boxes = nullptr;
    QComboBox* m_queen = nullptr;
    QLabel* m_upperLabel = nullptr;
    std::array<QLineEdit*, kFields> m_edits{};
    std::array<QCheckBox*, 7> m_signs{};
    std::map<Field, QLabel*> m_problemOf;
    QLabel* m_sample = nullptr;  ///< what the mites say
    QLabel* m_problem = nullptr; ///< of the whole
    QLabel* m_meanwhile = nullptr;
    QLabel* m_answer = nullptr; ///< what is odd, or why it was not saved
    Odd m_odd;
    std::set<QString> m_asked;
    QPushButton* m_save = nullptr;
};

} // namespace ui::visit
