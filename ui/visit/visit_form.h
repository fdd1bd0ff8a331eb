#pragma once

#include "ui/visit/visit_draft.h"

#include <QWidget>

#include <array>
#include <map>

class QCheckBox;
class QComboBox;
class QDateEdit;
class QGridLayout;
class QLabel;
class QLineEdit;
class QPushButton;

namespace ui::visit {

/// A visit typed by keys: Tab from field to field, Enter saves, Escape leaves. Edits a draft and knows no session.
class VisitForm : public QWidget {
    Q_OBJECT
public:
    explicit VisitForm(QWidget* parent = nullptr);

    /// Begins a visit of this colony on `draft.day`; the first field has the keys.
    void start(const VisitPlace& place, const VisitDraft& draft);
    const VisitPlace& place() const { return m_place; }
    VisitDraft draft() const;
    bool dirty() const { return draft() != m_started; }

signals:
    void saveAsked(const core::Visit& visit);
    void leaveAsked();
    void said(const QString& sentence);

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void showEvent(QShowEvent* event) override;

private:
    QLineEdit* addEdit(Field field, const QString& accessibleName);
    QLabel* problemRow(QGridLayout* grid, int row, std::initializer_list<Field> fields);
    void buildTop(QGridLayout* grid);
    void buildFrames(QGridLayout* grid);
    void buildBrood(QGridLayout* grid);
    void buildRest(QGridLayout* grid);
    void check();
    void save();
    void leave();

    VisitPlace m_place;
    VisitDraft m_started;
    bool m_leaving = false; ///< Escape was pressed once over typing not saved
    QLabel* m_title = nullptr;
    QDateEdit* m_day = nullptr;
    QComboBox* m_boxes = nullptr;
    QComboBox* m_queen = nullptr;
    QLabel* m_upperLabel = nullptr;
    std::array<QLineEdit*, kFields> m_edits{};
    std::array<QCheckBox*, 7> m_signs{};
    std::map<Field, QLabel*> m_problemOf;
    QLabel* m_problem = nullptr; ///< of the whole
    QPushButton* m_save = nullptr;
};

} // namespace ui::visit
