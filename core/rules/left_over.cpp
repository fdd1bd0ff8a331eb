#include "core/rules/left_over.h"

#include "core/rules/limits.h"
#include "core/rules/season.h"

namespace core::rules {

namespace {

/// Whether a box was counted from above and from below, so that a setting made one count of the two.
bool countedTwice(const SnapLatest& latest) {
    return latest.count && ((latest.count->top && latest.count->bottom) ||
                            (latest.count->boxes == 2 && latest.count->upperTop && latest.count->upperBottom));
}

} // namespace

bool beforeWinter(const Snapshot& s, YardIx yard) {
    return inSeason(s.on, s.settings.fallStart, s.settings.fallEnd, s.yard(yard).southern());
}

void addClassLimits(const DayView& view, ColonyIx c, Reason& why) {
    switch (*view.of(c).strengthClass) {
    case StrengthClass::ShakeOut:
        why.limit("class.shake_out_max");
        break;
    case StrengthClass::Weak:
        why.limit("class.shake_out_max").limit("class.medium_min");
        break;
    case StrengthClass::Medium:
        why.limit("class.medium_min").limit("class.strong_min");
        break;
    case StrengthClass::Strong:
        why.limit("class.strong_min");
        break;
    }
    if (countedTwice(view.s.latestOf(c))) why.limit("strength.judge");
}

Reason whyAlone(const DayView& view, ColonyIx c) {
    const ColonyFacts& f = view.of(c);
    const Settings& settings = view.s.settings;
    Reason why{"4.1"};
    why.facts.reserve(4);
    why.limits.reserve(5);
    why.fact("frames", *f.strength).fact("counted", *f.counted);
    addClassLimits(view, c, why);
    why.fact("alive in 1000", qint64(tableAt(settings.winter, *f.strength))).limit("value.winter");
    why.fact("divided in 1000", qint64(tableAt(settings.divide, *f.strength))).limit("value.divide");
    if (f.strength->value > 4 * fixed::kMostValued) why.limit("4.6 most_frames");
    return why;
}

Reason whyUnresolved(const DayView& view, ColonyIx c, Unresolved unresolved) {
    const ColonyFacts& f = view.of(c);
    Reason why{"4.1"};
    why.southern = view.southern(c);
    if (f.counted) why.fact("counted", *f.counted);
    switch (unresolved) {
    case Unresolved::NoCount:
        if (f.freshStart) why.fact("began anew", *f.freshStart);
        break;
    case Unresolved::CountOld:
        why.fact("days old", qint64(view.s.on - *f.counted)).limit("strength.max_age_days");
        break;
    case Unresolved::NoBees:
        break;
    case Unresolved::NoHost:
        why.rule = "4.9";
        why.fact("frames", *f.strength).limit("class.shake_out_max").limit("shake.per_host");
        break;
    case Unresolved::NoPartner:
        why.rule = "4.7.9";
        if (f.queenDay) why.fact("queen noted", *f.queenDay);
        why.fact("queen", word(f.queen)).limit("gain.min_queen").limit("season.start").limit("season.fall_end");
        break;
    }
    return why;
}

Reason whySeparate(const DayView& view, ColonyIx c) {
    Reason why{"4.7.3"};
    if (const auto& day = view.of(c).queenDay) why.fact("laying workers noted", *day);
    return why;
}

} // namespace core::rules
