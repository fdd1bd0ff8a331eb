#include "core/rules/colony_figures.h"

#include "core/rules/check_days.h"
#include "core/rules/hold_evidence.h"
#include "core/rules/limits.h"
#include "core/rules/season.h"

#include <algorithm>

namespace core::rules {

namespace {

bool cleanCheck(const SnapCheck& check, const Settings& limits) {
    const int wanted =
        check.broodFrames < 0 ? limits.checkMinFrames : std::min<int>(limits.checkMinFrames, check.broodFrames);
    return check.checked >= 1 && check.checked >= wanted && !check.signs.broodTrouble();
}

class Figures {
public:
    Figures(const Snapshot& s, std::span<const ColonyFacts> facts)
        : m_s(s), m_facts(facts), m_limits(strictLimits(s.settings)), m_days(m_limits) {}

    ColonyFigures of(ColonyIx colony) {
        ColonyFigures f;
        f.colony = colony;
        f.place = m_s.placeOf(colony);
        if (f.place) f.yard = f.place->yard;
        f.living = m_s.colony(colony).living();
        if (!f.living) return f;
        const ColonyFacts& facts = m_facts[static_cast<size_t>(colony.value)];
        f.yard = facts.yard;
        seen(f, facts, m_s.latestOf(colony));
        check(f);
        return f;
    }

private:
    void seen(ColonyFigures& f, const ColonyFacts& facts, const SnapLatest& latest) const {
        const SnapColony& colony = m_s.colony(f.colony);
        f.visited = latest.visit;
        f.daysUnvisited = m_s.on - latest.visit.value_or(colony.since);
        f.strength = facts.strength;
        f.strengthClass = facts.strengthClass;
        f.queen = facts.queen;
        f.queenBorn = colony.queenBorn;
        if (f.queenBorn) f.queenAge = toDate(m_s.on).year() - *f.queenBorn;
        if (facts.stores || facts.upperStores)
            f.stores = facts.stores.value_or(Quarters{}) + facts.upperStores.value_or(Quarters{});
        if (latest.weight) {
            f.gross = latest.weight->gross;
            f.weighed = latest.weight->day;
        }
        f.mites = facts.mites;
        f.boxes = facts.boxes;
    }
    void check(ColonyFigures& f) {
        const bool southern = m_s.yard(*f.yard).southern();
        for (const SnapCheck& check : m_s.checksOf(f.colony))
            if (cleanCheck(check, m_limits)) f.checked = check.day;
        if (!f.checked) return;
        f.checkUntil = m_days.countsUntil(*f.checked, southern);
        f.checkedThisSeason = *f.checked >= latestStart(m_s.on, fixed::kCheckSeason, southern);
    }

    const Snapshot& m_s;
    std::span<const ColonyFacts> m_facts;
    const Settings m_limits;
    CheckDays m_days;
};

} // namespace

std::optional<double> ColonyFigures::mitesPer100() const {
    if (!mites || mites->sample < 1) return std::nullopt;
    return 100.0 * mites->mites / mites->sample;
}

std::vector<ColonyFigures> colonyFigures(const Snapshot& s, std::span<const ColonyFacts> facts,
                                         std::span<const Hold> holds, std::span<const Due> due) {
    Figures each(s, facts);
    std::vector<ColonyFigures> all;
    all.reserve(s.colonies.size());
    for (size_t i = 0; i < s.colonies.size(); ++i) all.push_back(each.of(ColonyIx{static_cast<qint32>(i)}));
    const auto at = [&all](ColonyIx ix) -> ColonyFigures& { return all[static_cast<size_t>(ix.value)]; };
    for (const Hold& hold : holds)
        at(hold.colony).holds = static_cast<quint16>(at(hold.colony).holds | (1u << static_cast<int>(hold.kind)));
    for (const Due& d : due) {
        ColonyFigures& f = at(d.colony);
        if (f.dueOn && *f.dueOn <= d.on) continue;
        f.due = d.what;
        f.dueOn = d.on;
    }
    for (ColonyFigures& f : all) {
        f.checkCounts = f.living && !f.heldAs(HoldKind::BroodNotChecked);
        if (!f.checkCounts) f.checkUntil.reset();
    }
    return all;
}

} // namespace core::rules
