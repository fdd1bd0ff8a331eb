#include "core/rules/lifted_holds.h"

#include "core/rules/hold_checks.h"
#include "core/rules/holds_then.h"
#include "core/rules/judged_days.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

namespace core::rules {

namespace {

using Held = std::pair<ColonyId, HoldKind>;
using HeldThatDay = std::set<Held>;

HeldThatDay heldOn(const Snapshot& whole, Day on) {
    HeldThatDay held;
    for (const HeldThen& h : holdsThen(whole, on))
        if (h.kind != HoldKind::BroodNotChecked) held.emplace(h.colony, h.kind);
    return held;
}

std::set<Day> daysToJudge(const Snapshot& whole, Day first, Day last, int apart) {
    std::set<Day> days{first, last};
    const auto add = [&](Day day) {
        for (const Day d : {day - 1, day})
            if (first <= d && d <= last) days.insert(d);
    };
    for (Day day = first; day < last; day = day + std::max(apart, 1)) days.insert(day);
    for (const SnapResult& row : whole.results) add(row.day);
    for (const SnapSign& row : whole.signs) add(row.day);
    return days;
}

/// Looks for what ended a hold of one colony.
class Cause {
public:
    Cause(const Snapshot& whole, ColonyIx colony, HoldKind kind, Day free)
        : m_whole(whole),
          m_colony(colony),
          m_free(free),
          m_efb(kind == HoldKind::Efb),
          m_order(kind == HoldKind::Order) {}

    void tell(LiftedHold& hold) const {
        const auto found = [&](LiftedBy by, std::optional<size_t> result) {
            hold.by = by;
            hold.result = result;
        };
        if (const auto r = resultOf(Verdict::Release, false)) return found(LiftedBy::Release, r);
        if (const auto r = resultOf(Verdict::Release, true)) return found(LiftedBy::OfYard, r);
        if (const auto r = m_order ? std::nullopt : resultOf(Verdict::Negative, false))
            return found(LiftedBy::Negative, r);
        if (!m_order && checked()) return found(LiftedBy::Check, {});
        const SnapColony& colony = m_whole.colony(m_colony);
        found(colony.ended && *colony.ended <= m_free ? LiftedBy::Ended : LiftedBy::Elsewhere, {});
    }

private:
    bool stoodIn(YardIx yard) const {
        return std::ranges::any_of(m_whole.staysOf(m_colony), [&](const SnapStay& stay) {
            return stay.yard == yard && stay.since <= m_free && (!stay.until || m_free <= *stay.until);
        });
    }
    std::optional<size_t> resultOf(Verdict verdict, bool ofYard) const {
        for (size_t i = 0; i < m_whole.results.size(); ++i) {
            const SnapResult& r = m_whole.results[i];
            if (r.day != m_free || r.verdict != verdict || r.method == Method::Field) continue;
            if (!m_order && (r.disease == Disease::Efb) != m_efb) continue;
            const bool of = r.colony.value >= 0;
            if (ofYard ? !of && stoodIn(r.yard) : of && r.colony == m_colony) return i;
        }
        return std::nullopt;
    }
    bool checked() const {
        return std::ranges::any_of(m_whole.checksOf(m_colony), [&](const SnapCheck& check) {
            return check.day == m_free && !check.signs.broodTrouble();
        });
    }

    const Snapshot& m_whole;
    ColonyIx m_colony;
    Day m_free;
    bool m_efb, m_order;
};

ColonyIx positionOf(const Snapshot& whole, ColonyId colony) {
    const auto found = std::ranges::find(whole.colonies, colony, &SnapColony::id);
    return {static_cast<qint32>(found - whole.colonies.begin())};
}

std::vector<LiftedHold> endedAmong(const Snapshot& whole, const std::map<Day, HeldThatDay>& judged) {
    std::vector<LiftedHold> out;
    std::map<Held, Day> begun;
    std::optional<Day> before;
    for (const auto& [day, held] : judged) {
        for (auto at = begun.begin(); at != begun.end();) {
            if (held.contains(at->first)) {
                ++at;
                continue;
            }
            const auto& [colony, kind] = at->first;
            LiftedHold hold{colony, kind, at->second, *before, at->second == judged.begin()->first, {}, {}};
            Cause(whole, positionOf(whole, colony), kind, day).tell(hold);
            out.push_back(hold);
            at = begun.erase(at);
        }
        for (const Held& h : held) begun.try_emplace(h, day);
        before = day;
    }
    std::ranges::stable_sort(out, [](const LiftedHold& a, const LiftedHold& b) {
        return std::tuple(b.to, a.colony, a.kind) < std::tuple(a.to, b.colony, b.kind);
    });
    return out;
}

} // namespace

std::vector<LiftedHold> liftedHolds(const Snapshot& whole, Day first, Day last, int apart,
                                    const std::function<bool()>& stop) {
    if (last < first) return {};
    const auto judged = judgedDays<HeldThatDay>(
        daysToJudge(whole, first, last, apart), [&](Day day) { return heldOn(whole, day); }, stop);
    if (judged.empty()) return {};
    return endedAmong(whole, judged);
}

} // namespace core::rules
