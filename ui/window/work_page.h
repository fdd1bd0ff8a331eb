#pragma once

#include "ui/desk/desk.h"
#include "ui/records/new_record.h"
#include "ui/records/record_rows.h"
#include "ui/window/top_bar.h"

#include <QWidget>

#include <map>
#include <vector>

class QSplitter;
class QStackedWidget;

namespace ui::board {
class Board;
}
namespace ui::card {
class ColonyCard;
}
namespace ui::entry {
class EntryDesk;
}
namespace ui::form {
class Form;
class FormPanel;
} // namespace ui::form
namespace ui::pick {
class Picker;
class VisitWalk;
} // namespace ui::pick
namespace ui::life {
class CardPages;
}
namespace ui::hand {
class HandDesk;
}
namespace ui::merge {
class MergePlace;
}
namespace ui::plan {
class PlanView;
}
namespace ui::start {
class EmptyYard;
class StartDesk;
} // namespace ui::start
namespace ui::survey {
class SurveyDesk;
}
namespace ui::table {
class HiveTable;
}
namespace ui::time {
class TimeDesk;
}
namespace ui::visit {
class VisitForm;
}

namespace ui::window {

class YardList;

/// The open book: yards at the left, the plan (and its table) in the middle, card, board or form at the right;
/// one chosen hive for all of them.
class WorkPage : public QWidget {
    Q_OBJECT
public:
    WorkPage(desk::Desk& desk, Dialogs& dialogs, QWidget* parent = nullptr);

    void setPlace(Place place);
    /// A place besides plan and merge day: its widget takes the middle, the card and forms stay at the right. `keys`:
    /// where its keys begin; not given: the widget itself. It becomes this page's.
    void addPlace(Place place, QWidget* middle, QWidget* keys = nullptr);
    std::vector<Place> places() const;    ///< all that there are
    QWidget* middleOf(Place place) const; ///< nullptr of plan and merge day
    Place place() const { return m_place; }
    void setTableShown(bool shown);
    void logVisit();
    /// The visits of those selected, one after the other; under way, on to the next one.
    void walk();
    /// The visits of these, in this order.
    void walkThrough(const std::vector<core::ColonyId>& order);
    /// The form of another record of the chosen hive, or of the ended colony whose card is shown.
    void note(records::NewRecord what);
    /// The form of a record of the book, to be put right.
    void openRecord(const records::RecordRow& record);
    /// Asks for a colony by its name, living or ended, and shows its card.
    void findColony();
    /// The card of a colony of the book, living or ended.
    void showColony(core::ColonyId colony);
    /// Shows the form at the right, beside the plan; saved through the desk. An open form that holds typing stays, and
    /// nullptr is returned. The panel's valuesChanged() and closed() tell how it goes on.
    form::FormPanel* openForm(std::unique_ptr<form::Form> form);
    /// False where a form at the right holds typing that is not saved; says so.
    bool mayLeaveForm();
    form::FormPanel* panel() const { return m_panel; }
    plan::PlanView* plan() const { return m_plan; }
    start::StartDesk* start() const { return m_start; }
    pick::Picker* picker() const { return m_picker; }
    survey::SurveyDesk* survey() const { return m_survey; }
    time::TimeDesk* time() const { return m_time; }
    hand::HandDesk* hand() const { return m_hand; }
    board::Board* board() const { return m_board; }
    merge::MergePlace* merge() const { return m_merge; }
    YardList* yards() const { return m_yards; }
    card::ColonyCard* card() const { return m_card; }
    life::CardPages* cardPages() const { return m_cards; }
    visit::VisitForm* form() const { return m_form; }
    entry::EntryDesk* entry() const { return m_entry; }
    table::HiveTable* table() const { return m_table; }
    QSplitter* across() const;
    QSplitter* down() const;
    /// The keys go to the next pane (yards, plan, table, right side), or with −1 to the one before.
    void goToPane(int by);
    /// Where Merge day opens; nullopt: at the likely one.
    void setMergeDay(std::optional<core::Day> day);
    std::optional<core::Day> mergeDay() const { return m_mergeDay; }

signals:
    void previewAsked();
    void printAsked();
    void pdfAsked();
    void carryingChanged(bool carrying);

protected:
    bool event(QEvent* event) override;

private:
    void buildMiddle(QSplitter* across);
    void buildRight(QSplitter* across);
    void connectPlan();
    void connectRight();
    void connectStart();
    void showEmpty();
    void showAll();
    void showYard();
    void showChosen();
    void showSelected();
    void showCard();
    void openCard(core::ColonyId colony);
    std::optional<core::Colony> subject() const;
    void startVisit(core::ColonyId colony, const std::optional<core::Visit>& was);
    bool turnTo(std::optional<core::ColonyId> colony);
    void saveVisit(const core::Visit& visit);
    void takeBack(const records::RecordRow& record);
    void judgeForms();
    void settleRight();
    void sizeRight();
    bool formDirty() const;

    desk::Desk& m_desk;
    Dialogs& m_dialogs;
    Place m_place = Place::YardPlan;
    std::optional<core::Day> m_mergeDay;
    YardList* m_yards;
    plan::PlanView* m_plan;
    table::HiveTable* m_table;
    struct Middle {
        QWidget* widget;
        QWidget* keys;
    };
    std::map<Place, Middle> m_places; ///< besides plan and merge day
    QStackedWidget* m_middle;
    QStackedWidget* m_right;
    card::ColonyCard* m_card;
    life::CardPages* m_cards; ///< the card is the first of them
    merge::MergePlace* m_merge;
    board::Board* m_board;
    visit::VisitForm* m_form;
    entry::EntryDesk* m_entry;
    form::FormPanel* m_panel;
    hand::HandDesk* m_hand;
    start::StartDesk* m_start;
    pick::Picker* m_picker;
    survey::SurveyDesk* m_survey;
    pick::VisitWalk* m_walk;
    start::EmptyYard* m_empty;
    time::TimeDesk* m_time;
    std::optional<core::ColonyId> m_ended; ///< whose card is shown, though it lives no more
    std::optional<core::ColonyId> m_found; ///< asked for, shown once the form has closed
};

} // namespace ui::window
