#include "ui/hand/hand_guide.h"

#include "core/rules/drift.h"
#include "core/rules/explain.h"
#include "core/rules/moving.h"
#include "core/rules/nearby.h"
#include "core/rules/yard_moves.h"
#include "ui/look/rule_words.h"
#include "ui/look/words.h"

#include <algorithm>

namespace ui::hand {

namespace rules = core::rules;
using plan::Carry;
using plan::CarryWords;
using plan::OnWay;

HandGuide::HandGuide(desk::Desk& desk, Yards yards, QObject* parent)
    : QObject(parent), m_desk(desk), m_yards(std::move(yards)) {
    connect(&m_desk, &desk::Desk::read, this, &HandGuide::forget);
}

HandGuide::~HandGuide() = default;

/// What was worked out of a reading that is no longer shown.
void HandGuide::forget() {
    m_view.reset();
    m_explained.clear();
    emptied();
}

void HandGuide::emptied() {
    m_against.clear();
    m_drift.reset();
    m_driftLine.clear();
    m_yards.mark(std::nullopt, false);
}

const rules::DayView& HandGuide::view() {
    if (!m_view) m_view = std::make_unique<rules::DayView>(rules::viewOf(m_desk.reading().snapshot));
    return *m_view;
}

const rules::Explanation* HandGuide::explained(core::ColonyId a, core::ColonyId b) {
    const auto ixA = m_desk.reading().find(a);
    const auto ixB = m_desk.reading().find(b);
    if (!ixA || !ixB) return nullptr;
    const auto found = m_explained.find({*ixA, *ixB});
    if (found != m_explained.end()) return &found->second;
    return &m_explained.emplace(std::pair(*ixA, *ixB), rules::explain(view(), *ixA, *ixB)).first->second;
}

QString HandGuide::nameOf(core::ColonyId colony) const {
    const auto ix = m_desk.reading().find(colony);
    return ix ? m_desk.reading().snapshot.colony(*ix).shown : QString();
}

QString HandGuide::names(const std::vector<OnWay>& hives) const {
    constexpr size_t kMostNamed = 4;
    if (hives.size() > kMostNamed) return tr("%1 hives").arg(hives.size());
    QStringList all;
    for (const OnWay& hive : hives) all << nameOf(hive.colony);
    const QString last = all.isEmpty() ? QString() : all.takeLast();
    return all.isEmpty() ? last : tr("%1 and %2").arg(all.join(QStringLiteral(", ")), last);
}

QString HandGuide::heldAs(core::ColonyId colony) const {
    const auto ix = m_desk.reading().find(colony);
    QStringList kinds;
    if (ix)
        for (const rules::Hold& hold : m_desk.reading().holdsOf(*ix)) kinds << look::holdWithin(hold.kind);
    return kinds.join(tr(" and "));
}

CarryWords HandGuide::wordsOf(const Carry& carry) {
    if (!m_drift) workOutDrift(carry);
    CarryWords words;
    if (carry.yard) {
        words = overYard(carry);
    } else {
        m_yards.mark(std::nullopt, false);
        words = carry.several() || !carry.blockedBy ? onGround(carry)
                : carry.swap                        ? swapping(carry.colony, *carry.blockedBy)
                                                    : onHive(carry.colony, *carry.blockedBy);
    }
    words.drift = *m_drift;
    return words;
}

void HandGuide::workOutDrift(const Carry& carry) {
    m_drift = driftOf(carry.all(), false);
    m_driftLine = driftLine(carry.all(), false);
}

CarryWords HandGuide::onGround(const Carry& carry) {
    CarryWords words;
    const QString name = names(carry.all());
    if (carry.goesNowhere()) {
        words.line = tr("%1: where it stood; set down here, nothing is changed.").arg(name);
        return words;
    }
    const core::LengthUnit unit = m_desk.reading().snapshot.settings.showLength;
    words.beside = look::distanceOf(carry.from, carry.to, unit);
    words.refused = carry.blocked();
    const QString way = look::wayText(carry.from, carry.to, unit);
    if (words.refused) {
        QStringList others;
        for (const OnWay& hive : carry.all())
            if (hive.blockedBy) others << nameOf(*hive.blockedBy);
        others.removeDuplicates();
        words.line = tr("%1: %2. In the way: %3.").arg(name, way, others.join(QStringLiteral(", ")));
        return words;
    }
    const QString moving = movingCaution(carry);
    if (!moving.isEmpty()) words.caution = tr("foragers return (custom)");
    words.line = QStringList{tr("%1: %2.").arg(name, way), moving, m_driftLine}.join(u' ').simplified();
    return words;
}

CarryWords HandGuide::onHive(core::ColonyId carried, core::ColonyId onto) {
    CarryWords words;
    const auto* why = explained(carried, onto);
    if (!why) return words;
    words.refused = !why->objections.empty();
    words.proposes = !words.refused;
    words.line = whyNot(carried, onto);
    if (words.refused) {
        words.byHold = std::any_of(why->objections.begin(), why->objections.end(),
                                   [](const rules::Objection& o) { return o.rule == u"4.7.2"; });
        words.beside = words.byHold ? tr("held: not united") : tr("not united");
        return words;
    }
    const auto& s = m_desk.reading().snapshot;
    const QString moved = why->moved ? s.colony(*why->moved).shown : QString();
    words.beside = tr("unite: gain %1").arg(*why->gain);
    words.line = tr("Set down on %1, a union is proposed: %2 is the one carried, gain %3 thousandths (an assumption). "
                    "With Shift they change places.")
                     .arg(nameOf(onto), moved)
                     .arg(*why->gain);
    return words;
}

QString HandGuide::whyNot(core::ColonyId carried, core::ColonyId onto) {
    const auto* why = explained(carried, onto);
    if (!why || why->objections.empty()) return {};
    const QString stands = tr("%1 stands there.").arg(nameOf(onto));
    QStringList held;
    for (const core::ColonyId colony : {carried, onto})
        if (const QString kinds = heldAs(colony); !kinds.isEmpty())
            held << tr("%1 is held: %2.").arg(nameOf(colony), kinds);
    const QString rule = held.isEmpty() ? why->objections.front().because
                                        : tr("%1 A held hive is in no union (rule 4.7.2).").arg(held.join(u' '));
    return stands + u' ' + tr("On uniting: %1").arg(why->summary) + u' ' + rule;
}

CarryWords HandGuide::swapping(core::ColonyId carried, core::ColonyId onto) {
    CarryWords words;
    const auto& s = m_desk.reading().snapshot;
    const auto a = m_desk.reading().find(carried);
    const auto b = m_desk.reading().find(onto);
    if (!a || !b || !s.placeOf(*a) || !s.placeOf(*b)) return words;
    const QString far = look::distanceOf(s.placeOf(*a)->at, s.placeOf(*b)->at, s.settings.showLength);
    words.beside = tr("swap · %1").arg(far);
    words.line = tr("%1 and %2 change places, %3 apart.").arg(nameOf(carried), nameOf(onto), far) + u' ' +
                 swapForagers(carried, onto);
    if (!heldAs(carried).isEmpty() || !heldAs(onto).isEmpty()) words.caution = tr("held: foragers go to the other");
    return words;
}

QString HandGuide::swapForagers(core::ColonyId one, core::ColonyId other) const {
    const auto& r = m_desk.reading();
    const auto a = r.find(one);
    const auto b = r.find(other);
    if (!a || !b) return {};
    QStringList out{tr("Foragers of each go on to its old place, to the other's hive.")};
    for (const core::ColonyId colony : {one, other})
        if (const QString kinds = heldAs(colony); !kinds.isEmpty())
            out << tr("%1 is held (%2): its foragers carry what it may have.").arg(nameOf(colony), kinds);
    const core::SnapStay* there = r.snapshot.placeOf(*b);
    const auto moving = there ? rules::movingCaution(r.snapshot, *a, there->yard, there->at) : std::nullopt;
    if (moving) out << moving->because;
    return out.join(u' ');
}

QString HandGuide::againstYard(const std::vector<OnWay>& hives, core::YardId yard) {
    const auto found = m_against.find(yard);
    if (found != m_against.end()) return found->second;
    std::vector<std::pair<core::ColonyId, core::YardId>> moves;
    for (const OnWay& hive : hives) moves.emplace_back(hive.colony, yard);
    const QString against = rules::againstYardMoves(m_desk.reading().snapshot, moves).join(u' ');
    return m_against.emplace(yard, against).first->second;
}

CarryWords HandGuide::overYard(const Carry& carry) {
    CarryWords words;
    const auto& r = m_desk.reading();
    const auto to = r.find(*carry.yard);
    if (!to) return words;
    const QString yard = r.snapshot.yard(*to).name;
    const QString name = names(carry.all());
    words.beside = yard;
    if (m_desk.yard() == carry.yard) {
        words.refused = true;
        words.line = tr("%1 stands in %2 already.").arg(name, yard);
    } else if (const QString against = againstYard(carry.all(), *carry.yard); !against.isEmpty()) {
        words.refused = true;
        words.line =
            tr("%1 to %2: refused. %3 No hive goes from yard to yard under such a hold.").arg(name, yard, against);
    } else {
        words.line =
            QStringList{tr("%1 to %2.").arg(name, yard), papers(), movingCaution(carry)}.join(u' ').simplified();
    }
    m_yards.mark(carry.yard, words.refused);
    return words;
}

QString HandGuide::papers() { return tr("Movement rules may ask for papers: the inspector knows."); }

QString HandGuide::movingCaution(const Carry& carry) const {
    const auto& r = m_desk.reading();
    const auto ix = r.find(carry.colony);
    const auto to = carry.yard ? r.find(*carry.yard) : m_desk.yard() ? r.find(*m_desk.yard()) : std::nullopt;
    if (!ix || !to) return {};
    const auto caution = rules::movingCaution(r.snapshot, *ix, *to, carry.to);
    return caution ? caution->because : QString();
}

std::vector<rules::DriftTo> HandGuide::driftAt(const OnWay& hive, const std::vector<OnWay>& all, bool setDown) const {
    const auto& r = m_desk.reading();
    const auto ix = r.find(hive.colony);
    const core::SnapStay* stands = ix ? r.snapshot.placeOf(*ix) : nullptr;
    if (!stands) return {};
    std::vector<rules::Moved> moved;
    for (const OnWay& other : all)
        if (const auto at = r.find(other.colony))
            moved.push_back({*at, setDown ? std::optional(other.to) : std::nullopt});
    return rules::driftFrom(r.snapshot, *stands, r.plan.holds, moved);
}

std::vector<plan::Drift> HandGuide::driftOf(const std::vector<OnWay>& hives, bool setDown) const {
    constexpr size_t kMostDrawn = 24; // of more nothing could be made out
    std::vector<plan::Drift> out;
    if (hives.size() > kMostDrawn) return out;
    const core::LengthUnit unit = m_desk.reading().snapshot.settings.showLength;
    for (const OnWay& hive : hives) {
        plan::Drift drift{hive.from, {}};
        for (const rules::DriftTo& to : driftAt(hive, hives, setDown))
            drift.to.push_back({to.at, look::distanceOf(hive.from, to.at, unit), to.held});
        out.push_back(std::move(drift));
    }
    return out;
}

QString HandGuide::driftLine(const std::vector<OnWay>& hives, bool setDown) const {
    const auto& s = m_desk.reading().snapshot;
    if (hives.size() == 1)
        return rules::driftSentence(s, nameOf(hives.front().colony), hives.front().from,
                                    driftAt(hives.front(), hives, setDown));
    QStringList held;
    for (const OnWay& hive : hives)
        for (const rules::DriftTo& to : driftAt(hive, hives, setDown))
            if (to.held) held << s.colony(to.colony).shown;
    held.removeDuplicates();
    return held.isEmpty() ? tr("Foragers will look for them at their old places.")
                          : tr("Foragers will look for them at their old places; held near these: %1.")
                                .arg(held.join(QStringLiteral(", ")));
}

QStringList HandGuide::foragers(const Carry& carry) const {
    QStringList out{driftLine(carry.all(), !carry.yard)};
    if (const QString moving = movingCaution(carry); !moving.isEmpty()) out << moving;
    return out;
}

} // namespace ui::hand
