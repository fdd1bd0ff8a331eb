#include "core/rules/compose.h"

#include "core/rules/left_over.h"
#include "core/rules/limits.h"
#include "core/rules/roles.h"
#include "core/rules/union_words.h"

#include <algorithm>

namespace core::rules {

namespace {

/// How many a host takes, and what a union must be worth more.
QString hostSentence(const Settings& settings, bool intoUnion) {
    const QString most = limitText(settings, "shake.per_host");
    return intoUnion
               ? QStringLiteral(" A host takes at most %1; a union is taken only where another host would be worth "
                                "%2 less, or none is free.")
                     .arg(most, limitText(settings, "4.9 union_thousandths"))
               : QStringLiteral(" A host takes at most %1.").arg(most);
}

Reason whyShakenOut(const DayView& view, const ShakeOut& shaken, const std::vector<ColonyIx>& hosts) {
    Reason why{"4.9"};
    why.southern = view.southern(shaken.colony);
    why.fact("frames", shaken.frames).fact("counted", *view.of(shaken.colony).counted);
    for (const ColonyIx host : hosts) why.fact("host", host);
    why.fact("carry", carryCost(shaken.from, shaken.to, view.s.settings.carryPerM));
    addClassLimits(view, shaken.colony, why);
    why.limit("shake.per_host").limit("carry.per_m").limit("value.winter").limit("value.divide");
    if (shaken.intoUnion) why.limit("4.9 union_thousandths");
    return why.limit("season.fall_start").limit("season.fall_end");
}

} // namespace

Union composeUnion(const DayView& view, const ChosenPair& pair) {
    const Roles roles = rolesOf(view, pair);
    const SnapStay& from = view.placeOf(roles.moved);
    const SnapStay& to = view.placeOf(roles.host);
    Union u;
    u.yard = to.yard;
    u.moved = roles.moved;
    u.host = roles.host;
    u.stand = to.standName;
    u.from = from.at;
    u.to = to.at;
    u.lower = roles.lower;
    u.upper = roles.upper;
    u.movedFrames = *view.of(roles.moved).strength;
    u.hostFrames = *view.of(roles.host).strength;
    u.frames = u.movedFrames + u.hostFrames;
    for (const ColonyIx c : {std::min(pair.a, pair.b), std::max(pair.a, pair.b)})
        if (view.of(c).boxes == 2) u.consolidate.push_back(c);
    u.queen = roles.queen;
    u.headingDeg = to.headingDeg;
    u.carryTenths = distanceTenths(from.at, to.at);
    u.gain = pair.gain;
    u.pinned = pair.pinned;
    u.why = unionReason(view, u);
    u.because = unionReasons(view, u, roles);
    u.steps = unionSteps(view, u);
    return u;
}

ShakeOut composeShakeOut(const DayView& view, const Cautions& cautions, const ChosenShakeOut& chosen,
                         const std::vector<Union>& unions) {
    const SnapStay& from = view.placeOf(chosen.colony);
    const SnapStay& to = view.placeOf(chosen.into);
    ShakeOut out;
    out.yard = to.yard;
    out.colony = chosen.colony;
    out.into = chosen.into;
    out.from = from.at;
    out.to = to.at;
    out.intoUnion = chosen.ofUnion.has_value();
    out.frames = *view.of(chosen.colony).strength;
    out.carryTenths = distanceTenths(from.at, to.at);
    out.removeQueen = !view.of(chosen.colony).lacksQueen;
    std::vector<ColonyIx> hosts{chosen.into};
    if (chosen.ofUnion) hosts = {unions[*chosen.ofUnion].moved, unions[*chosen.ofUnion].host};
    out.cautions = cautions.of(out, hosts);
    const LengthUnit unit = view.s.settings.showLength;
    const QString away =
        QStringLiteral("%1 %2").arg(decimalText(distanceTenths(from.at, to.at, unit), 1), unitSign(unit));
    const Settings& settings = view.s.settings;
    out.because =
        QStringLiteral("%1 frames of bees are too few to winter or to unite (up to %6); shaken out in front of "
                       "%2%3, %4 away, they still help.%7%5")
            .arg(framesText(out.frames), view.name(out.into),
                 out.intoUnion ? QStringLiteral(" (once united)") : QString(), away,
                 out.removeQueen ? QStringLiteral(" Find and remove its queen first.") : QString(),
                 framesText(settings.shakeOutMax), hostSentence(settings, out.intoUnion));
    out.why = whyShakenOut(view, out, hosts);
    return out;
}

} // namespace core::rules
