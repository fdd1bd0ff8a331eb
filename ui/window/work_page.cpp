#include "ui/window/work_page.h"

#include "ui/after/after_page.h"
#include "ui/board/board.h"
#include "ui/card/colony_card.h"
#include "ui/card/noted_facts.h"
#include "ui/close/close_page.h"
#include "ui/entry/entry_desk.h"
#include "ui/form/form_panel.h"
#include "ui/hand/hand_desk.h"
#include "ui/life/card_pages.h"
#include "ui/merge/merge_place.h"
#include "ui/pick/picker.h"
#include "ui/pick/visit_walk.h"
#include "ui/plan/plan_view.h"
#include "ui/records/record_list.h"
#include "ui/spring/divide_looks.h"
#include "ui/spring/divide_panel.h"
#include "ui/start/empty_yard.h"
#include "ui/start/start_desk.h"
#include "ui/survey/survey_desk.h"
#include "ui/table/hive_table.h"
#include "ui/time/time_desk.h"
#include "ui/visit/visit_form.h"
#include "ui/window/panes.h"
#include "ui/window/places.h"
#include "ui/window/ready_step.h"
#include "ui/window/yard_list.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QPushButton>
#include <QSplitter>
#include <QStackedWidget>

#include <algorithm>

#include <utility>

namespace ui::window {

namespace {
constexpr int kMergeDaysAhead = 60; // a merge day may be planned
constexpr int kRightInDigits = 40;
constexpr int kRightLeast = 330;
constexpr int kRightMost = 520;
constexpr int kRightForm = 720; // the widest that fields are given
} // namespace

WorkPage::WorkPage(desk::Desk& desk, Dialogs& dialogs, QWidget* parent)
    : QWidget(parent), m_desk(desk), m_dialogs(dialogs), m_yards(new YardList(this)) {
    auto* all = new QHBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    auto* across = new QSplitter(Qt::Horizontal, this);
    across->setObjectName(QStringLiteral("across"));
    across->setHandleWidth(1);
    across->addWidget(m_yards);
    buildMiddle(across);
    buildRight(across);
    across->setStretchFactor(1, 1);
    across->setSizes({210, 860, 370});
    across->setCollapsible(1, false);
    all->addWidget(across);
    connect(m_yards, &YardList::chosen, this, [this](core::YardId yard) { m_desk.setYard(yard); });
    connectPlan();
    connectRight();
    connectStart();
    connect(&m_desk, &desk::Desk::read, this, &WorkPage::showAll);
    addReadyStep(*this, m_desk, m_dialogs);
    addPlaces(*this, m_desk, m_dialogs);
    connect(&m_desk, &desk::Desk::yardChanged, this, &WorkPage::showYard);
    connect(&m_desk, &desk::Desk::chosenChanged, this, &WorkPage::showChosen);
    showAll();
}

void WorkPage::buildMiddle(QSplitter* across) {
    m_middle = new QStackedWidget(across);
    auto* down = new QSplitter(Qt::Vertical, m_middle);
    down->setObjectName(QStringLiteral("down"));
    down->setHandleWidth(1);
    auto* above = new QWidget(down);
    auto* stack = new QVBoxLayout(above);
    stack->setContentsMargins(0, 0, 0, 0);
    stack->setSpacing(0);
    m_plan = new plan::PlanView(above);
    m_time = new time::TimeDesk(m_desk, *m_plan, m_dialogs, above);
    stack->addWidget(m_plan, 1);
    stack->addWidget(m_time->bar());
    m_table = new table::HiveTable(down);
    m_table->hide();
    down->addWidget(above);
    down->addWidget(m_table);
    down->setStretchFactor(0, 3);
    down->setStretchFactor(1, 2);
    down->setCollapsible(0, false);
    m_middle->addWidget(down);
    across->addWidget(m_middle);
    connect(m_table, &table::HiveTable::selectAsked, this,
            [this](const auto& colonies, core::ColonyId lead) { m_desk.select(colonies, lead); });
    connect(m_table, &table::HiveTable::opened, this, &WorkPage::openCard);
}

void WorkPage::buildRight(QSplitter* across) {
    m_right = new QStackedWidget(across);
    m_card = new card::ColonyCard(m_right);
    m_cards = new life::CardPages(m_desk, m_dialogs, m_card, m_right);
    m_merge = new merge::MergePlace(m_right);
    m_board = new board::Board(m_desk, m_dialogs, m_merge);
    m_merge->addStep(merge::Step::Plan, m_board, m_board->list());
    m_merge->addStep(merge::Step::WriteBack, new close::ClosePage(m_desk, m_dialogs, m_merge));
    auto* after = new after::AfterPage(m_desk, m_dialogs, m_merge);
    m_merge->addStep(merge::Step::Afterwards, after);
    connect(after, &after::AfterPage::sheetAsked, this, &WorkPage::previewAsked);
    m_form = new visit::VisitForm(m_right);
    m_entry = new entry::EntryDesk(m_desk, *m_form, this);
    m_right->addWidget(m_cards);
    m_right->addWidget(m_merge);
    m_right->addWidget(m_form);
    m_panel = new form::FormPanel(m_right);
    m_right->addWidget(m_panel);
    const auto open = [this](auto form) { return openForm(std::move(form)) != nullptr; };
    spring::addDivides(m_board, m_desk, m_dialogs, open, spring::DividePanel::Use::Plan);
    spring::addDivides(m_merge->page(merge::Step::WriteBack), m_desk, m_dialogs, open,
                       spring::DividePanel::Use::WriteBack);
    spring::addDivideLooks(m_merge->page(merge::Step::Afterwards), m_desk);
    across->addWidget(m_right);
    sizeRight();
}

/// Wide enough for the lines of card and board, and the fields of a visit, however large the text is.
void WorkPage::sizeRight() {
    const int text = std::clamp(kRightInDigits * fontMetrics().horizontalAdvance(u'0'), kRightLeast, kRightMost);
    const int least = std::max(text, std::min(m_form->minimumSizeHint().width(), kRightForm));
    if (least != m_right->minimumWidth()) m_right->setMinimumWidth(least);
}

bool WorkPage::event(QEvent* event) {
    const bool handled = QWidget::event(event);
    if (event->type() == QEvent::LayoutRequest || event->type() == QEvent::FontChange) sizeRight();
    return handled;
}

void WorkPage::connectPlan() {
    connect(m_plan, &plan::PlanView::chosen, this, [this](auto colony) { m_desk.choose(colony); });
    connect(m_plan, &plan::PlanView::selectAsked, this,
            [this](const auto& colonies, core::ColonyId lead) { m_desk.select(colonies, lead); });
    connect(&m_desk, &desk::Desk::selectedChanged, this, &WorkPage::showSelected);
    m_picker = new pick::Picker(m_desk, *m_plan, this);
    connect(m_plan, &plan::PlanView::opened, this, &WorkPage::openCard);
    m_hand = new hand::HandDesk(
        m_desk, *m_plan, m_dialogs, m_yards->asTarget(),
        [this](auto form) { return openForm(std::move(form)) != nullptr; }, this);
    connect(m_plan, &plan::PlanView::said, &m_desk, &desk::Desk::said);
    connect(m_plan, &plan::PlanView::carryingChanged, this, &WorkPage::carryingChanged);
}

void WorkPage::connectRight() {
    connect(m_card, &card::ColonyCard::visitAsked, this, &WorkPage::logVisit);
    connect(m_card, &card::ColonyCard::recordAsked, this, &WorkPage::note);
    connect(m_card->records(), &records::RecordList::openAsked, this, &WorkPage::openRecord);
    connect(m_card->records(), &records::RecordList::takeBackAsked, this, &WorkPage::takeBack);
    connect(m_cards, &life::CardPages::colonyAsked, this, &WorkPage::showColony);
    connect(m_card, &card::ColonyCard::backAsked, this, [this] { m_right->setCurrentWidget(m_merge); });
    connect(m_board, &board::Board::chosen, this, [this](auto colony) { m_desk.choose(colony); });
    connect(m_board, &board::Board::opened, this, &WorkPage::openCard);
    connect(m_board, &board::Board::dayAsked, this, [this](core::Day day) {
        m_mergeDay = day;
        guarded(m_dialogs, [&] { m_desk.setDay(day); });
    });
    connect(m_board, &board::Board::previewAsked, this, &WorkPage::previewAsked);
    connect(m_board, &board::Board::printAsked, this, &WorkPage::printAsked);
    connect(m_board, &board::Board::pdfAsked, this, &WorkPage::pdfAsked);
    connect(m_panel, &form::FormPanel::said, &m_desk, &desk::Desk::said);
    connect(m_panel, &form::FormPanel::closed, this, [this] {
        settleRight();
        if (m_found) showColony(*std::exchange(m_found, std::nullopt));
    });
    connect(m_form, &visit::VisitForm::said, &m_desk, &desk::Desk::said);
    connect(m_form, &visit::VisitForm::leaveAsked, this, &WorkPage::settleRight);
    m_walk = new pick::VisitWalk(
        m_desk, *m_form, [this](std::optional<core::ColonyId> colony) { return turnTo(colony); }, this);
    connect(m_form, &visit::VisitForm::leaveAsked, m_walk, &pick::VisitWalk::left);
    connect(m_form, &visit::VisitForm::saveAsked, this, &WorkPage::saveVisit);
}

void WorkPage::connectStart() {
    m_start = new start::StartDesk(
        m_desk, *m_plan, *m_panel, [this](auto form) { return openForm(std::move(form)) != nullptr; }, this);
    m_empty = new start::EmptyYard(m_plan);
    m_survey = new survey::SurveyDesk(m_desk, *m_plan, m_dialogs, this);
    connect(m_start, &start::StartDesk::busyChanged, m_survey, [this] {
        if (m_start->busy()) m_survey->setOn(false);
    });
    connect(m_start, &start::StartDesk::busyChanged, this, &WorkPage::showYard);
    connect(m_plan, &plan::PlanView::standChosen, m_start, &start::StartDesk::pickStand);
    const auto begin = [this](auto work) { return [this, work] { guarded(m_dialogs, [&] { work(); }); }; };
    connect(m_plan, &plan::PlanView::standOpened, this, [this, begin](core::StandId stand) {
        m_start->pickStand(stand);
        begin([this] { m_start->placeHives(); })();
    });
    connect(m_empty->rowButton(), &QPushButton::clicked, this, begin([this] { m_start->hiveRow(); }));
    connect(m_empty->placeButton(), &QPushButton::clicked, this, begin([this] { m_start->placeHives(); }));
}

/// What to do next in a yard without hives, where something can be done.
void WorkPage::showEmpty() {
    const bool empty = m_plan->scene().hives.empty();
    const bool can = empty && m_desk.yard() && m_desk.carryBarred().isEmpty() && m_place == Place::YardPlan;
    const auto yard = m_desk.yard() ? m_desk.reading().find(*m_desk.yard()) : std::nullopt;
    if (yard) m_empty->setYard(m_desk.reading().snapshot.yard(*yard).name);
    const bool shown = can && !m_start->busy();
    m_plan->setEmptyText(can ? QString() : tr("No hive stands in this yard on this day."));
    const bool appears = shown && m_empty->isHidden();
    m_empty->setVisible(shown);
    if (appears && m_plan->hasFocus()) m_empty->rowButton()->setFocus(Qt::OtherFocusReason);
}

void WorkPage::setPlace(Place place) {
    if (!mayLeaveForm()) return;
    m_panel->close();
    m_survey->setOn(false);
    m_place = place;
    QWidget* other = middleOf(place);
    m_middle->setCurrentWidget(other ? other : down());
    m_time->setAhead(place == Place::MergeDay ? kMergeDaysAhead : 0);
    if (place == Place::MergeDay && !m_mergeDay) m_mergeDay = m_desk.likelyMergeDay();
    m_card->setBackShown(place == Place::MergeDay);
    const core::Day day = place == Place::MergeDay ? *m_mergeDay : m_desk.today();
    if (day != m_desk.day())
        m_desk.setDay(day);
    else
        showAll();
    settleRight();
}

void WorkPage::setTableShown(bool shown) {
    m_table->setVisible(shown);
    if (shown) m_table->fitColumnsOnce();
}

void WorkPage::setMergeDay(std::optional<core::Day> day) { m_mergeDay = day; }

QSplitter* WorkPage::across() const { return findChild<QSplitter*>(QStringLiteral("across")); }
QSplitter* WorkPage::down() const { return findChild<QSplitter*>(QStringLiteral("down")); }

void WorkPage::addPlace(Place place, QWidget* middle, QWidget* keys) {
    m_places[place] = {middle, keys ? keys : middle};
    m_middle->addWidget(middle);
}

QWidget* WorkPage::middleOf(Place place) const {
    const auto at = m_places.find(place);
    return at == m_places.end() ? nullptr : at->second.widget;
}

std::vector<Place> WorkPage::places() const {
    std::vector<Place> all{Place::YardPlan, Place::MergeDay};
    for (const auto& [place, middle] : m_places) all.push_back(place);
    return all;
}

/// The right side as the place wants it; the keys go back to the middle.
void WorkPage::settleRight() {
    m_right->setCurrentWidget(m_place == Place::MergeDay ? static_cast<QWidget*>(m_merge) : m_cards);
    const auto at = m_places.find(m_place);
    QWidget* keys = at == m_places.end() ? m_plan : at->second.keys;
    keys->setFocus(Qt::OtherFocusReason);
}

bool WorkPage::formDirty() const {
    const QWidget* now = m_right->currentWidget();
    return (now == m_form && m_form->dirty()) || (now == m_panel && m_panel->dirty());
}

bool WorkPage::mayLeaveForm() {
    if (!formDirty()) return true;
    emit m_desk.said(tr("What is typed at the right is not saved: Enter there saves it, Escape twice throws it away."));
    return false;
}

form::FormPanel* WorkPage::openForm(std::unique_ptr<form::Form> form) {
    if (!m_desk.onlyRead().isEmpty()) {
        emit m_desk.said(m_desk.onlyRead());
        return nullptr;
    }
    if (!mayLeaveForm()) return nullptr;
    m_panel->close(); // who opened the one before hears of it
    m_panel->open(std::move(form), m_desk.today(), [this](const form::Form& typed, const form::Values& values) {
        return m_desk.save(typed.what(), typed.edit(values));
    });
    m_right->setCurrentWidget(m_panel);
    return m_panel;
}

void WorkPage::goToPane(int by) {
    std::vector<QWidget*> panes{m_yards};
    if (QWidget* other = middleOf(m_place))
        panes.push_back(other);
    else
        panes.insert(panes.end(), {m_plan, m_time->bar()});
    if (m_table->isVisible()) panes.push_back(m_table);
    const bool steps = m_right->currentWidget() == m_merge; // the keys go to the step, past its tab
    panes.push_back(steps ? m_merge->page(m_merge->step()) : m_right->currentWidget());
    goOn(panes, by);
}

void WorkPage::showAll() {
    if (m_place == Place::MergeDay) m_mergeDay = m_desk.day();
    judgeForms();
    m_yards->show(m_desk.reading(), m_desk.yard());
    m_plan->setCarryBarred(m_desk.carryBarred());
    m_card->setWritable(!m_desk.session().readOnly());
    showYard();
}

void WorkPage::showYard() {
    const auto& r = m_desk.reading();
    const auto yard = m_desk.yard() ? r.find(*m_desk.yard()) : std::nullopt;
    m_yards->show(r, m_desk.yard());
    if (m_start->onBlankGround()) {
        plan::Scene blank;
        blank.blank = true;
        m_plan->setScene(std::move(blank));
    } else if (yard) {
        const core::rules::Plan* plan = m_place == Place::MergeDay ? &r.plan : nullptr;
        plan::Scene scene = plan::sceneOf(r.snapshot, *yard, r.facts, r.plan.holds, plan);
        for (const desk::Asked& asked : r.asked) {
            std::vector<core::ColonyId> found;
            for (const core::ColonyIx ix : asked.found) found.push_back(r.snapshot.colony(ix).id);
            plan::addAsked(scene, asked.question.name, found);
        }
        guarded(m_dialogs, [&] { scene.fixed = plan::fixedMarks(m_desk.session().fixedThingsOf(*m_desk.yard())); });
        if (m_place == Place::YardPlan)
            guarded(m_dialogs, [&] { scene.stands = start::emptyStands(m_desk, *m_desk.yard()); });
        m_plan->setScene(std::move(scene));
        m_board->show(r, *yard);
    } else {
        m_plan->setScene({});
    }
    m_table->showHives(r, yard);
    showEmpty();
    showChosen();
}

void WorkPage::showChosen() {
    const auto chosen = m_desk.chosen();
    m_plan->setChosen(chosen);
    m_board->setChosen(chosen);
    showSelected();
    guarded(m_dialogs, [this] { showCard(); });
}

void WorkPage::showSelected() {
    m_plan->setSelected(m_desk.selected());
    m_table->setSelected(m_desk.selected(), m_desk.chosen());
}

void WorkPage::showCard() {
    const auto& r = m_desk.reading();
    const auto chosen = m_desk.chosen();
    if (chosen) m_ended.reset();
    const auto ix = chosen ? r.find(*chosen) : std::nullopt;
    const auto ended = m_ended ? m_desk.session().colony(*m_ended) : std::nullopt;
    m_cards->setColony(ix ? chosen : m_ended);
    if (!ix && !ended) return m_card->show(std::nullopt);
    const core::ColonyId shown = ix ? *chosen : *m_ended;
    auto rows = records::recordsOf(m_desk.session(), shown);
    if (ix && m_desk.day() < m_desk.today())
        std::erase_if(rows, [this](const records::RecordRow& row) { return row.day > m_desk.day(); });
    m_card->records()->show(shown, std::move(rows));
    auto content = ix ? card::cardOf(r, *ix) : card::endedCardOf(m_desk.session(), *ended);
    if (ix) card::addNoted(content, m_desk.session(), r, *ix);
    m_card->show(content);
}

void WorkPage::openCard(core::ColonyId colony) {
    m_desk.choose(colony);
    if (!mayLeaveForm()) return;
    m_panel->close();
    if (m_place == Place::MergeDay) m_cards->showNow(); // the way back is there
    m_right->setCurrentWidget(m_cards);
}

} // namespace ui::window
