#include "core/rules/strength.h"

namespace core::rules {

std::optional<Quarters> boxBees(std::optional<Quarters> top, std::optional<Quarters> bottom, StrengthJudge judge) {
    if (!top || !bottom) return top ? top : bottom;
    switch (judge) {
    case StrengthJudge::Top:
        return top;
    case StrengthJudge::Bottom:
        return bottom;
    case StrengthJudge::Mean:
        break;
    }
    return Quarters{(top->value + bottom->value + 1) / 2};
}

Strength strengthOn(Day on, const SnapCount* count, const Settings& settings) {
    Strength out;
    if (!count) return out;
    out.lower = boxBees(count->top, count->bottom, settings.strengthJudge);
    if (count->boxes == 2) out.upper = boxBees(count->upperTop, count->upperBottom, settings.strengthJudge);
    if (!out.lower || (count->boxes == 2 && !out.upper)) return out;
    out.counted = *out.lower + out.upper.value_or(Quarters{});
    if (out.counted->value == 0)
        out.why = NoStrength::NoBees;
    else if (on - count->day > settings.strengthMaxAgeDays)
        out.why = NoStrength::CountOld;
    else
        out.quarters = out.counted;
    return out;
}

StrengthClass classOf(Quarters strength, const Settings& settings) {
    if (strength <= settings.shakeOutMax) return StrengthClass::ShakeOut;
    if (strength >= settings.strongMin) return StrengthClass::Strong;
    return strength >= settings.mediumMin ? StrengthClass::Medium : StrengthClass::Weak;
}

} // namespace core::rules
