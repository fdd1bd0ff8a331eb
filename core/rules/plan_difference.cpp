#include "core/rules/plan_difference.h"

#include <algorithm>

namespace core::rules {

namespace {

using Joined = PlanGist::Joined;

bool samePair(const Joined& a, const Joined& b) {
    return (a.moved == b.moved && a.host == b.host) || (a.moved == b.host && a.host == b.moved);
}

const Joined* pairIn(const std::vector<Joined>& in, const Joined& pair) {
    const auto it = std::ranges::find_if(in, [&](const Joined& x) { return samePair(x, pair); });
    return it == in.end() ? nullptr : &*it;
}

const Joined* shakenIn(const std::vector<Joined>& in, ColonyId colony) {
    const auto it = std::ranges::find(in, colony, &Joined::moved);
    return it == in.end() ? nullptr : &*it;
}

class Comparing {
public:
    Comparing(const PlanGist& before, const PlanGist& now) : m_before(before), m_now(now) {}

    std::vector<PlanChangeRow> rows() {
        for (const Joined& u : m_before.unions)
            if (!pairIn(m_now.unions, u)) add(PlanChange::UnionWent, u);
        for (const Joined& u : m_now.unions)
            if (const Joined* was = pairIn(m_before.unions, u))
                compare(*was, u);
            else
                add(PlanChange::UnionCame, u);
        for (const Joined& s : m_before.shakeOuts)
            if (!shakenIn(m_now.shakeOuts, s.moved)) add(PlanChange::ShakeOutWent, s);
        for (const Joined& s : m_now.shakeOuts) {
            const Joined* was = shakenIn(m_before.shakeOuts, s.moved);
            if (!was || was->host != s.host) add(was ? PlanChange::ShakeOutElsewhere : PlanChange::ShakeOutCame, s);
        }
        for (const PlanGist::Left& left : m_now.alone) addAlone(left);
        std::ranges::stable_sort(m_rows, {}, &PlanChangeRow::what);
        return std::move(m_rows);
    }

private:
    PlanChangeRow& add(PlanChange what, const Joined& pair) {
        m_rows.push_back({what, pair, pair.gain, false});
        return m_rows.back();
    }

    void compare(const Joined& was, const Joined& now) {
        if (was.host != now.host)
            add(PlanChange::HostTurned, now);
        else if (was.upper != now.upper)
            add(PlanChange::BoxesTurned, now);
        if (was.gain != now.gain) add(PlanChange::GainChanged, now).gainBefore = was.gain;
    }

    void addAlone(const PlanGist::Left& left) {
        if (std::ranges::find(m_before.alone, left.colony, &PlanGist::Left::colony) != m_before.alone.end()) return;
        Joined one;
        one.moved = left.colony;
        one.movedName = left.name;
        add(PlanChange::LeftAlone, one).atRisk = left.atRisk;
    }

    const PlanGist& m_before;
    const PlanGist& m_now;
    std::vector<PlanChangeRow> m_rows;
};

} // namespace

PlanGist gistOf(const Snapshot& s, const Plan& plan, YardIx yard) {
    PlanGist out;
    const auto joined = [&s](ColonyIx moved, ColonyIx host) {
        return Joined{s.colony(moved).id, s.colony(host).id, {}, s.colony(moved).shown, s.colony(host).shown};
    };
    for (const Union& u : plan.unions) {
        if (u.yard != yard) continue;
        Joined pair = joined(u.moved, u.host);
        pair.upper = s.colony(u.upper).id;
        pair.gain = u.gain;
        out.gain += u.gain;
        out.unions.push_back(pair);
    }
    for (const ShakeOut& shaken : plan.shakeOuts)
        if (shaken.yard == yard) out.shakeOuts.push_back(joined(shaken.colony, shaken.into));
    for (const Alone& a : plan.alone) {
        const SnapStay* stay = s.placeOf(a.colony);
        if (stay && stay->yard == yard)
            out.alone.push_back({s.colony(a.colony).id, s.colony(a.colony).shown, a.atRisk});
    }
    return out;
}

PlanDifference differenceOf(const PlanGist& before, const PlanGist& now) {
    PlanDifference out;
    out.rows = Comparing(before, now).rows();
    out.unionsBefore = static_cast<int>(before.unions.size());
    out.unions = static_cast<int>(now.unions.size());
    out.gainBefore = before.gain;
    out.gain = now.gain;
    return out;
}

} // namespace core::rules
