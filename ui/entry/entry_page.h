#pragma once

#include "ui/entry/entry_grid.h"
#include "ui/entry/entry_head.h"

#include <QWidget>

#include <functional>

class QLabel;
class QPushButton;

namespace ui::entry {

/// Write down: the visits of one yard and day typed from the tally sheet, a row a hive in walking order.
class EntryPage : public QWidget {
    Q_OBJECT
public:
    /// `openForm`: the form at the right begins the chosen hive's visit; `formOpen`: whether it shows one.
    EntryPage(desk::Desk& desk, EntryDesk& entry, Dialogs& dialogs, std::function<void()> openForm,
              std::function<bool()> formOpen, QWidget* parent);

    EntryGrid* grid() const { return m_grid; }
    EntryHead* head() const { return m_head; }
    EntryWork& work() { return m_work; }
    QString answer() const; ///< what is wrong or asked, below the grid; empty: nothing

protected:
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;

private:
    void build();
    void connectAll();
    void readAgain();
    void fillColumns();
    void setColumns(std::vector<core::TallyColumn> columns);
    void takeDay();
    void showRow();
    void showFoot();
    void say(const QString& text);
    void save(bool byTab);
    void saveAll();
    void goOnFrom(int row, bool byTab);
    void refuse(const EntryWork::Answer& answer, int row);
    void leave();
    void goToLabel(const QString& label);
    void followChosen();
    void formSaved(core::ColonyId colony);

    desk::Desk& m_desk;
    EntryDesk& m_entry;
    Dialogs& m_dialogs;
    std::function<void()> m_openForm;
    std::function<bool()> m_formOpen;
    EntryWork m_work;
    EntryModel m_model;
    EntryHead* m_head;
    EntryGrid* m_grid;
    QLabel* m_last;
    QLabel* m_answer;
    QLabel* m_count;
    QPushButton* m_saveAll;
    core::Day m_deskDay;
    std::optional<core::YardId> m_yard; ///< whose rows are shown
    std::optional<core::ColonyId> m_at; ///< whose row has the keys
    bool m_leaving = false;             ///< Escape was pressed once over a row not saved
    bool m_shown = false;
};

} // namespace ui::entry
