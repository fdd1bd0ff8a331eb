#include "ui/pick/picker.h"

#include "ui/pick/find_line.h"
#include "ui/plan/plan_view.h"

#include <algorithm>

namespace ui::pick {

Picker::Picker(desk::Desk& desk, plan::PlanView& plan, QObject* parent)
    : QObject(parent), m_desk(desk), m_line(new FindLine(desk, plan)) {
    connect(&m_desk, &desk::Desk::selectedChanged, this, &Picker::sayCount);
}

void Picker::find() { m_line->open({}); }

std::optional<core::YardIx> Picker::yard() const {
    return m_desk.yard() ? m_desk.reading().find(*m_desk.yard()) : std::nullopt;
}

/// The chosen one stays so where it is among them.
void Picker::take(const std::vector<core::ColonyId>& colonies) {
    if (colonies.empty()) return m_desk.choose(std::nullopt);
    const auto chosen = m_desk.chosen();
    const bool among = chosen && std::find(colonies.begin(), colonies.end(), *chosen) != colonies.end();
    m_desk.select(colonies, among ? *chosen : colonies.front());
}

void Picker::select(const RuleWords& by) {
    if (!yard()) return;
    const auto those = hivesBy(by.rule, m_desk.reading(), *yard());
    if (those.empty()) return emit m_desk.said(by.none);
    take(those);
    emit m_desk.said(those.size() == 1 ? tr("1 hive selected: %1").arg(by.said)
                                       : tr("%1 hives selected: %2").arg(those.size()).arg(by.said));
}

void Picker::select(Whole what) {
    if (!yard()) return;
    std::vector<core::ColonyId> those;
    if (what != Whole::None) those = allHives(m_desk.reading(), *yard());
    if (what == Whole::Others)
        for (const core::ColonyId colony : m_desk.selected()) std::erase(those, colony);
    take(those);
}

/// Of one alone its card tells.
void Picker::sayCount() {
    const size_t now = m_desk.selected().size();
    if (now > 1)
        emit m_desk.said(tr("%1 hives selected").arg(now));
    else if (m_were > 1)
        emit m_desk.said(now == 0 ? tr("No hive is selected.") : tr("1 hive selected"));
    m_were = now;
}

} // namespace ui::pick
