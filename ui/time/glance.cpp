#include "ui/time/glance.h"

#include "core/rules/facts.h"
#include "core/rules/holds_then.h"
#include "ui/start/new_hives.h"

#include <map>

namespace ui::time {

plan::Scene Glance::sceneOf(core::YardId yard, core::Day day) {
    if (!m_whole) m_whole = m_session.snapshotForHolds();
    const core::Snapshot s = m_session.yardGlance(yard, day);
    core::YardIx at;
    for (size_t i = 0; i < s.yards.size(); ++i)
        if (s.yards[i].id == yard) at.value = static_cast<qint32>(i);
    if (at.value < 0) return {};
    std::map<core::ColonyId, core::ColonyIx> living;
    for (size_t i = 0; i < s.livingCount(); ++i)
        living.emplace(s.colonies[i].id, core::ColonyIx{static_cast<qint32>(i)});
    std::vector<core::rules::Hold> holds;
    for (const core::rules::HeldThen& held : core::rules::holdsThen(*m_whole, day))
        if (const auto it = living.find(held.colony); it != living.end()) {
            core::rules::Hold& hold = holds.emplace_back();
            hold.colony = it->second;
            hold.kind = held.kind;
        }
    plan::Scene scene = plan::sceneOf(s, at, core::rules::colonyFacts(s), holds, nullptr);
    scene.stands = start::emptyStands(m_session, s, yard);
    return scene;
}

} // namespace ui::time
