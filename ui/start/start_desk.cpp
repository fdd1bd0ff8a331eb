#include "ui/start/start_desk.h"

#include "ui/form/typed.h"
#include "ui/start/carry_form.h"
#include "ui/start/compass.h"
#include "ui/start/coordinates.h"
#include "ui/start/field_keys.h"
#include "ui/start/hive_form.h"
#include "ui/start/row_form.h"
#include "ui/start/yard_form.h"

#include <QScopedValueRollback>

#include <cmath>
#include <numbers>

namespace ui::start {

namespace {

/// The way from a hive to its next neighbour in a row like the last one.
core::MmPoint stepOf(const Kept& kept) {
    const double metres = parseMetresMm(kept.spacing).value_or(1500);
    const double bearing = parseDirection(kept.bearing).value_or(90) * std::numbers::pi / 180;
    return {static_cast<qint32>(std::lround(metres * std::sin(bearing))),
            static_cast<qint32>(std::lround(metres * std::cos(bearing)))};
}

} // namespace

StartDesk::StartDesk(desk::Desk& desk, plan::PlanView& plan, form::FormPanel& panel, Open open, QObject* parent)
    : QObject(parent), m_desk(desk), m_plan(plan), m_panel(panel), m_open(std::move(open)) {
    connect(&m_panel, &form::FormPanel::valuesChanged, this, &StartDesk::show);
    connect(&m_panel, &form::FormPanel::closed, this, &StartDesk::closed);
    connect(&m_plan.aim(), &plan::Aim::moved, this, &StartDesk::typePlace);
    connect(&m_plan.aim(), &plan::Aim::put, this, &StartDesk::putDown);
    connect(&m_plan.aim(), &plan::Aim::left, this, &StartDesk::leaveByPlan);
    connect(&m_desk.session(), &core::edit::Session::changed, this, [this] { m_changed = true; });
    connect(&m_desk, &desk::Desk::read, this, &StartDesk::labelAnew);
    connect(&m_desk, &desk::Desk::yardChanged, this, [this] {
        if (busy()) show(m_values);
    });
}

bool StartDesk::busy() const { return m_what != What::None; }

bool StartDesk::mayBegin() {
    const QString barred = m_desk.carryBarred();
    if (!barred.isEmpty()) emit m_desk.said(barred);
    return barred.isEmpty();
}

bool StartDesk::begin(std::unique_ptr<form::Form> form, plan::Aim::Way way, core::MmPoint at) {
    m_plan.aim().start(way, at);
    m_changed = false;
    if (m_open(std::move(form))) {
        emit busyChanged();
        return true;
    }
    return false;
}

void StartDesk::newYard() {
    if (!mayBegin()) return;
    begin(std::make_unique<YardForm>(m_desk, std::nullopt), plan::Aim::Way::Stays, {});
}

void StartDesk::changeYard() {
    if (!mayBegin() || !m_desk.yard()) return;
    auto form = std::make_unique<YardForm>(m_desk, m_desk.yard());
    const core::MmPoint gate = placeOf(form->start()).value_or(core::MmPoint{});
    begin(std::move(form), plan::Aim::Way::Stays, gate);
}

void StartDesk::hiveRow() {
    if (!mayBegin() || !m_desk.yard()) return;
    auto form = std::make_unique<RowForm>(m_desk, *m_desk.yard(), m_kept);
    begin(std::move(form), plan::Aim::Way::Stays, nextRowStart(m_desk, *m_desk.yard()));
}

void StartDesk::placeHives(std::optional<core::MmPoint> at) {
    if (!mayBegin() || !m_desk.yard()) return;
    m_lastPut.reset();
    const core::MmPoint first = at.value_or(m_stand.value_or(nextRowStart(m_desk, *m_desk.yard())));
    m_stand.reset();
    if (!begin(std::make_unique<HiveForm>(m_desk, *m_desk.yard(), m_kept, first), plan::Aim::Way::Follows, first))
        return;
    m_plan.setFocus(Qt::OtherFocusReason);
    emit m_desk.said(tr("Click where a hive stands; arrow keys and Enter do the same, Escape ends."));
}

void StartDesk::carry() {
    if (!mayBegin()) return;
    if (!m_desk.chosen()) return emit m_desk.said(tr("Choose a hive first: its carry is noted here."));
    begin(std::make_unique<CarryForm>(m_desk, *m_desk.chosen()), plan::Aim::Way::Stays, {});
}

void StartDesk::pickStand(core::StandId stand) {
    for (const plan::StandMark& s : m_plan.scene().stands)
        if (s.stand == stand) {
            m_stand = s.at;
            emit m_desk.said(tr("Stand %1 is empty. Two clicks, or “Place hives”, put a colony on it.").arg(s.name));
        }
}

StartDesk::What StartDesk::whatIs(const form::Form* form) const {
    if (const auto* yard = dynamic_cast<const YardForm*>(form)) return yard->isNew() ? What::NewYard : What::Yard;
    if (dynamic_cast<const RowForm*>(form)) return What::Row;
    if (dynamic_cast<const HiveForm*>(form)) return What::Hives;
    return dynamic_cast<const CarryForm*>(form) ? What::Carry : What::None;
}

/// What is typed, drawn on the plan.
void StartDesk::show(const form::Values& values) {
    const What before = std::exchange(m_what, whatIs(m_panel.form()));
    if (!busy()) {
        stopDrawing();
        if (before != m_what) emit busyChanged();
        return;
    }
    m_changed = false;
    if (const auto* hives = dynamic_cast<const HiveForm*>(m_panel.form())) {
        m_yard = hives->yard();
        if (before != What::Hives) m_offered = form::typed(values, kLabel);
        followStand(values);
    }
    m_values = m_panel.values();
    if (const auto at = placeOf(m_values)) m_plan.aim().moveTo(*at);
    m_plan.setSketch(sketchOf(*m_panel.form()));
}

/// Only in the yard that it is of.
plan::Sketch StartDesk::sketchOf(const form::Form& form) {
    if (m_what == What::Yard || m_what == What::NewYard) return YardForm::sketch(m_values);
    if (const auto* carry = dynamic_cast<const CarryForm*>(&form)) {
        m_yard = carry->yardOf(m_values).value_or(m_yard);
        if (m_desk.yard() != m_yard) m_desk.setYard(m_yard); // the plan shows where it goes
        return carry->sketch(m_values);
    }
    if (const auto* row = dynamic_cast<const RowForm*>(&form)) m_yard = row->yard();
    if (m_desk.yard() != m_yard) return {};
    if (const auto* row = dynamic_cast<const RowForm*>(&form)) return row->sketch(m_values);
    return dynamic_cast<const HiveForm&>(form).sketch(m_values);
}

/// A stand that was chosen by name moves the hive there; a hive that is moved off it stands on bare ground.
void StartDesk::followStand(const form::Values& values) {
    if (m_following) return;
    const QScopedValueRollback<bool> once(m_following, true);
    const QString name = form::typed(values, kStand);
    const bool picked = name != form::typed(m_values, kStand);
    for (const plan::StandMark& s : emptyStands(m_desk, m_yard)) {
        if (picked && s.name == name) return typePlace(s.at);
        if (!picked && s.at == placeOf(values)) return m_panel.putValues({{kStand, s.name}});
    }
    if (!picked && !name.isEmpty()) m_panel.putValues({{kStand, {}}});
}

/// The label that was offered follows the book: one taken back is offered again.
void StartDesk::labelAnew() {
    if (m_what != What::Hives || form::typed(m_values, kLabel) != m_offered) return;
    if (labelsInUse(m_desk).contains(m_offered.toCaseFolded())) return; // just put down
    m_offered = nextLabel(m_desk, m_yard);
    m_panel.putValues({{kLabel, m_offered}});
}

void StartDesk::typePlace(core::MmPoint at) {
    m_panel.putValues({{kX, core::metresText({at.x})}, {kY, core::metresText({at.y})}});
}

void StartDesk::putDown(core::MmPoint at) {
    typePlace(at);
    m_panel.save();
    if (m_what == What::Hives) m_plan.setFocus(Qt::OtherFocusReason);
}

void StartDesk::leaveByPlan() {
    if (m_what == What::Hives) return m_panel.close(); // nothing is lost but a place
    m_panel.leave();
}

/// Saved or left.
void StartDesk::closed() {
    const What was = std::exchange(m_what, What::None);
    if (was == What::None) return;
    const bool saved = std::exchange(m_changed, false);
    if (was == What::Row && saved) RowForm::keep(m_values, m_kept);
    if (was == What::Hives && saved) return nextHive();
    stopDrawing();
    if (was == What::Hives) emit m_desk.said(tr("Placing hives has ended."));
    if (was == What::NewYard && saved)
        if (const auto made = m_desk.reading().snapshot.yardNamed(YardForm::nameOf(m_values)))
            m_desk.setYard(m_desk.reading().snapshot.yard(*made).id);
    emit busyChanged();
}

/// The same again, one step on.
void StartDesk::nextHive() {
    HiveForm::keep(m_values, m_kept);
    const core::MmPoint put = placeOf(m_values).value_or(core::MmPoint{});
    const core::MmPoint step = m_lastPut ? put - *m_lastPut : stepOf(m_kept);
    m_lastPut = put;
    m_what = What::None;
    begin(std::make_unique<HiveForm>(m_desk, m_yard, m_kept, put + step), plan::Aim::Way::Follows, put + step);
}

void StartDesk::stopDrawing() {
    if (!m_plan.aim().on()) return;
    m_plan.aim().stop();
    m_plan.unsetCursor();
    m_plan.setSketch({});
}

} // namespace ui::start
