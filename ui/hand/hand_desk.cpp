#include "ui/hand/hand_desk.h"

#include "core/edit/edits.h"
#include "ui/form/form.h"
#include "ui/hand/other_yard.h"
#include "ui/hand/union_proposal.h"

#include <algorithm>
#include <utility>

namespace ui::hand {

namespace edit = core::edit;
using plan::Carry;
using plan::OnWay;

HandDesk::HandDesk(desk::Desk& desk, plan::PlanView& plan, Dialogs& dialogs, HandGuide::Yards yards, Open open,
                   QObject* parent)
    : QObject(parent),
      m_desk(desk),
      m_plan(plan),
      m_dialogs(dialogs),
      m_open(std::move(open)),
      m_guide(new HandGuide(desk, std::move(yards), this)) {
    m_plan.setCarryGuide(m_guide);
    connect(&m_plan, &plan::PlanView::setDownAsked, this,
            [this](const Carry& carry) { guarded(m_dialogs, [&] { setDown(carry); }); });
    connect(&m_desk, &desk::Desk::read, this, [this] { m_plan.setDrift({}); });
}

bool HandDesk::barred() {
    const QString why = m_desk.carryBarred();
    if (!why.isEmpty()) emit m_desk.said(why);
    return !why.isEmpty();
}

bool HandDesk::done(const QString& what, const edit::Edit& edit, const QString& also) {
    try {
        if (m_desk.save(what, edit, also)) return true;
        emit m_desk.said(tr("Nothing was carried: a reason and a name were asked for."));
    } catch (const core::Error& e) {
        if (e.kind() == core::Error::Kind::Book || e.kind() == core::Error::Kind::Internal) throw;
        emit m_desk.said(e.userMessage()); // refused: said where the eye is, the hive is back
        emit m_desk.read();
    }
    return false;
}

QString HandDesk::lineOf(const Carry& carry) {
    const QString line = m_guide->wordsOf(carry).line;
    m_guide->emptied(); // the hand is
    return line;
}

void HandDesk::setDown(const Carry& down) {
    if (barred()) return;
    if (down.yard) return toYard(down);
    if (down.several() && down.blocked()) return emit m_desk.said(tr("%1 Nothing was carried.").arg(lineOf(down)));
    if (!down.blockedBy) return carry(down);
    down.swap ? swap(down.colony, *down.blockedBy) : propose(down.colony, *down.blockedBy);
}

void HandDesk::carry(const Carry& carried) {
    const auto yard = m_desk.yard();
    if (!yard) return;
    std::vector<edit::CarryTo> carries;
    for (const OnWay& hive : carried.all()) carries.push_back({hive.colony, *yard, hive.to, {}, m_desk.day()});
    const QString also = m_guide->foragers(carried).join(u' ');
    auto drift = m_guide->driftOf(carried.all(), true);
    const QString what = carried.several() ? tr("Carry hives") : tr("Carry a hive");
    if (done(
            what, [carries](const edit::EditContext& c) { return edit::carryHives(c, carries); }, also))
        m_plan.setDrift(std::move(drift));
}

void HandDesk::swapSelected() {
    if (barred()) return;
    const std::vector<core::ColonyId> two = m_desk.selected();
    if (two.size() != 2)
        return emit m_desk.said(
            tr("Select two hives first (click one, then the other with Ctrl): they change places."));
    swap(two[0], two[1]);
}

void HandDesk::swap(core::ColonyId one, core::ColonyId other) {
    const QString also = m_guide->swapForagers(one, other);
    const auto on = m_desk.day();
    std::vector<OnWay> hives;
    const auto& s = m_desk.reading().snapshot;
    const auto a = m_desk.reading().find(one);
    const auto b = m_desk.reading().find(other);
    if (a && b && s.placeOf(*a) && s.placeOf(*b))
        hives = {{one, s.placeOf(*a)->at, s.placeOf(*b)->at, {}}, {other, s.placeOf(*b)->at, s.placeOf(*a)->at, {}}};
    auto drift = m_guide->driftOf(hives, true);
    const auto edit = [one, other, on](const edit::EditContext& c) { return edit::swapHives(c, one, other, on); };
    if (done(tr("Swap two hives"), edit, also)) m_plan.setDrift(std::move(drift));
}

/// Nothing is written here: the form of the union is opened, or it is said why there is none.
void HandDesk::propose(core::ColonyId carried, core::ColonyId onto) {
    const QString whyNot = m_guide->whyNot(carried, onto);
    if (!whyNot.isEmpty()) return emit m_desk.said(whyNot);
    const auto* why = m_guide->explained(carried, onto);
    if (!why || !why->moved) return;
    const core::ColonyId moved = m_desk.reading().snapshot.colony(*why->moved).id;
    const QString summary = why->summary;
    const core::ColonyId host = moved == carried ? onto : carried;
    m_desk.choose(moved);
    if (m_open(std::make_unique<UnionProposal>(m_desk.session(), moved, host, m_desk.day(), summary)))
        emit m_desk.said(tr("A union is proposed, nothing is written yet. %1").arg(summary));
}

void HandDesk::toYard(const Carry& carried) {
    const core::YardId yard = *carried.yard;
    if (yard == m_desk.yard()) return emit m_desk.said(lineOf(carried));
    const auto carries = placesIn(m_desk, yard, carried.all());
    QStringList also = m_guide->foragers(carried);
    also.prepend(HandGuide::papers());
    auto drift = m_guide->driftOf(carried.all(), false);
    const QString what = carried.several() ? tr("Carry hives to another yard") : tr("Carry a hive to another yard");
    if (done(
            what, [carries](const edit::EditContext& c) { return edit::carryHives(c, carries); }, also.join(u' ')))
        m_plan.setDrift(std::move(drift));
}

} // namespace ui::hand
