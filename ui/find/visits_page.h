#pragma once

#include "core/model/rows.h"
#include "core/model/visit_list.h"
#include "ui/desk/desk.h"
#include "ui/table/column_table.h"

#include <QTimer>
#include <QWidget>

#include <vector>

class QCheckBox;
class QComboBox;
class QLabel;
class QLineEdit;
class QToolButton;

namespace ui::find {

class VisitModel;

class VisitTable : public table::ColumnTable {
    Q_OBJECT
public:
    VisitTable(VisitModel* model, QWidget* parent);
};

/// All visits, newest first, filtered by yard, period, colony, who, signs and words of the note. Choosing one chooses
/// its hive; opening one opens its form. Follows the desk while it is shown.
class VisitsPage : public QWidget {
    Q_OBJECT
public:
    VisitsPage(desk::Desk& desk, Dialogs& dialogs, QWidget* parent = nullptr);
    ~VisitsPage() override;

    VisitTable* table() const { return m_table; }
    VisitModel* model() const { return m_model; }
    QLineEdit* label() const { return m_label; }
    QLineEdit* words() const { return m_words; }
    QComboBox* period() const { return m_period; }
    QLabel* foot() const { return m_foot; }
    /// Those selected by hand, in the order of the list.
    std::vector<core::VisitId> selectedVisits() const;
    /// Beside the columns: something to be done with those selected. The button becomes this one's.
    void addTool(QWidget* button);

signals:
    void opened(core::VisitId visit, core::Day day);
    void selectedChanged();

protected:
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;

private:
    void build();
    void follow();
    void offer();
    void ask();
    void tellFoot();
    void chosen();
    core::VisitFilter filter() const;
    void keepColumns() const;

    desk::Desk& m_desk;
    Dialogs& m_dialogs;
    QLineEdit *m_words, *m_label, *m_by;
    QComboBox *m_yard, *m_period;
    QCheckBox *m_withNote, *m_withSigns;
    QToolButton* m_columns;
    VisitModel* m_model;
    VisitTable* m_table;
    QLabel* m_foot;
    QTimer m_typing;
    bool m_stale = true;
};

} // namespace ui::find
