#include "core/rules/totals.h"

#include <map>

namespace core::rules {

namespace {

/// What the colony is expected to give as it stands; 0 where it is held or has no strength.
int expected(const DayView& view, ColonyIx c) {
    if (view.held(c) || view.of(c).layingWorkers) return 0;
    return view.valueAlone(c).value_or(0);
}

/// What unions and shake-outs change in that sum; carries are not subtracted.
qint64 change(const DayView& view, const Plan& plan) {
    qint64 sum = 0;
    std::map<ColonyIx, Quarters> strength; // of whoever receives
    std::map<ColonyIx, qint64> before;
    for (const Union& u : plan.unions) {
        strength[u.host] = u.frames;
        before[u.host] = expected(view, u.moved) + expected(view, u.host);
    }
    for (const ShakeOut& shaken : plan.shakeOuts) {
        if (!strength.contains(shaken.into)) {
            strength[shaken.into] = *view.of(shaken.into).strength;
            before[shaken.into] = expected(view, shaken.into);
        }
        strength[shaken.into] = strength[shaken.into] + shaken.frames;
        sum -= expected(view, shaken.colony);
    }
    for (const auto& [colony, quarters] : strength) sum += view.value(quarters) - before[colony];
    return sum;
}

} // namespace

Totals totalsOf(const DayView& view, const Plan& plan, const std::vector<ColonyIx>& living) {
    Totals out;
    out.colonies = static_cast<int>(living.size());
    out.unions = static_cast<int>(plan.unions.size());
    out.shakeOuts = static_cast<int>(plan.shakeOuts.size());
    for (const ColonyIx c : living) out.expectedAsIs += expected(view, c);
    out.expectedPlanned = out.expectedAsIs + change(view, plan);
    for (const Union& u : plan.unions) {
        out.gain += u.gain;
        out.boxesFreed += static_cast<int>(u.consolidate.size());
    }
    for (const ShakeOut& shaken : plan.shakeOuts) out.boxesFreed += view.of(shaken.colony).boxes;
    return out;
}

} // namespace core::rules
