#include "core/rules/brood_round.h"

#include "core/rules/check_days.h"
#include "core/rules/hold_evidence.h"
#include "core/rules/season.h"
#include "core/rules/work_order.h"

#include <algorithm>

namespace core::rules {

namespace {

RoundGroup groupOf(HoldKind kind) {
    switch (kind) {
    case HoldKind::AfbConfirmed:
    case HoldKind::AfbSuspected:
        return RoundGroup::Closed;
    case HoldKind::Efb:
    case HoldKind::BroodDoubt:
        return RoundGroup::Signs;
    case HoldKind::Order:
    case HoldKind::AfbContact:
    case HoldKind::AfbYard:
        return RoundGroup::Traced;
    case HoldKind::BroodNotChecked:
        break;
    }
    return RoundGroup::Free;
}

class Round {
public:
    Round(const Snapshot& s, std::span<const Hold> holds) : e(s), m_holds(holds), m_days(e.limits) {}

    /// Of each yard those that live there, in natural order.
    std::vector<std::vector<ColonyIx>> byYard() const {
        std::vector<std::vector<ColonyIx>> out(e.s.yards.size());
        for (size_t i = 0; i < e.s.livingCount(); ++i) {
            const ColonyIx colony{static_cast<qint32>(i)};
            if (const SnapStay* place = e.s.placeOf(colony))
                out[static_cast<size_t>(place->yard.value)].push_back(colony);
        }
        return out;
    }

    RoundYard yard(YardIx yard, const std::vector<ColonyIx>& those) {
        RoundYard out;
        out.yard = yard;
        const bool southern = e.s.yard(yard).southern();
        out.fall = fallFrom(e.s.settings, e.s.on, southern);
        out.from = m_days.from(out.fall, southern);
        for (const ColonyIx colony : those) {
            RoundStop stop = stopOf(colony, southern);
            const bool sure = stop.until && *stop.until >= out.fall;
            (sure ? out.sure : stop.group == RoundGroup::Closed ? out.closed : out.walk).push_back(std::move(stop));
        }
        out.walk = walked(std::move(out.walk), e.s.yard(yard).gate);
        std::ranges::stable_sort(out.sure, {}, [](const RoundStop& stop) { return *stop.until; });
        return out;
    }

private:
    RoundStop stopOf(ColonyIx colony, bool southern) {
        RoundStop stop;
        stop.colony = colony;
        auto hold = std::ranges::lower_bound(m_holds, colony, {}, &Hold::colony);
        for (; hold != m_holds.end() && hold->colony == colony; ++hold) {
            stop.group = std::max(stop.group, groupOf(hold->kind));
            if (hold->kind == HoldKind::BroodNotChecked) stop.lacks = &*hold;
        }
        const auto checks = e.checks.of(colony);
        if (!checks.empty()) {
            stop.looked = checks.back().day;
            stop.examined = checks.back().checked;
            stop.broodFrames = checks.back().broodFrames;
        }
        const SnapCheck* clean = e.checks.latestClean(colony, Day{}, e.s.on);
        const auto negative = latestUpTo(e.findings.negatives.of(colony.value), e.s.on);
        if (clean) stop.checked = clean->day;
        if (negative && (!clean || *negative > clean->day)) stop.checked = negative;
        if (stop.checked && !stop.lacks) stop.until = m_days.countsUntil(*stop.checked, southern);
        if (clean && e.checks.masked(*clean)) stop.masked = e.treated.latestKnown(colony, clean->day);
        return stop;
    }

    std::vector<RoundStop> walked(std::vector<RoundStop> stops, MmPoint gate) const {
        std::vector<RoundStop> out;
        for (const RoundGroup group : {RoundGroup::Free, RoundGroup::Traced, RoundGroup::Signs}) {
            std::vector<const RoundStop*> those;
            std::vector<MmPoint> at;
            for (const RoundStop& stop : stops)
                if (stop.group == group) {
                    those.push_back(&stop);
                    at.push_back(e.s.placeOf(stop.colony)->at);
                }
            for (const size_t i : walkRound(gate, at)) out.push_back(*those[i]);
        }
        return out;
    }

    const Evidence e;
    std::span<const Hold> m_holds;
    CheckDays m_days;
};

} // namespace

Day fallFrom(const Settings& settings, Day on, bool southern) {
    if (inSeason(on, settings.fallStart, settings.fallEnd, southern)) return on;
    const int year = toDate(on).year();
    const Day start = dayInYear(year, settings.fallStart, southern);
    return start >= on ? start : dayInYear(year + 1, settings.fallStart, southern);
}

std::vector<RoundYard> broodRound(const Snapshot& s, std::span<const Hold> holds) {
    Round round(s, holds);
    std::vector<RoundYard> out;
    const auto byYard = round.byYard();
    for (size_t i = 0; i < byYard.size(); ++i)
        if (!byYard[i].empty()) out.push_back(round.yard({static_cast<qint32>(i)}, byYard[i]));
    return out;
}

} // namespace core::rules
