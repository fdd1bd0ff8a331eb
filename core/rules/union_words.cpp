#include "core/rules/union_words.h"

#include "core/rules/left_over.h"
#include "core/rules/limits.h"
#include "core/rules/pairs.h"
#include "core/rules/strength.h"

namespace core::rules {

namespace {

QString distance(const DayView& view, const Union& u) {
    const LengthUnit unit = view.s.settings.showLength;
    return QStringLiteral("%1 %2").arg(decimalText(distanceTenths(u.from, u.to, unit), 1), unitSign(unit));
}

QString withArticle(StrengthClass c) {
    return (c == StrengthClass::ShakeOut ? QLatin1StringView("still a ") : QLatin1StringView("a ")) + classWord(c);
}

QString sizeReason(const DayView& view, const Union& u) {
    const Settings& settings = view.s.settings;
    const StrengthClass made = classOf(u.frames, settings);
    QString limit;
    if (made == StrengthClass::Strong) limit = QStringLiteral(" (from %1 on)").arg(framesText(settings.strongMin));
    if (made == StrengthClass::Medium) limit = QStringLiteral(" (from %1 on)").arg(framesText(settings.mediumMin));
    return QStringLiteral("%1 + %2 frames make %3, %4 colony%5.")
        .arg(framesText(u.movedFrames), framesText(u.hostFrames), framesText(u.frames), withArticle(made), limit);
}

QString carryReason(const DayView& view, const Union& u) {
    const QString& moved = view.name(u.moved);
    const QString& host = view.name(u.host);
    return QStringLiteral("%1 is carried %2 to stand %3; %1's foragers are lost, not %4's.")
        .arg(moved, distance(view, u), u.stand, host);
}

QString rolesReason(const DayView& view, const Union& u, MovedFor movedFor) {
    const QString& moved = view.name(u.moved);
    const QString& host = view.name(u.host);
    switch (movedFor) {
    case MovedFor::FewerBees:
        return QStringLiteral("%1 is the one carried: it has fewer bees than %2.").arg(moved, host);
    case MovedFor::NoQueen:
        return QStringLiteral("%1 is the one carried: both have as many bees, and it lacks a queen.").arg(moved);
    case MovedFor::LighterHive:
        return QStringLiteral("%1 is the one carried: both have as many bees, and its hive is the lighter.").arg(moved);
    case MovedFor::Asked:
        return QStringLiteral("%1 is the one carried, as you asked; by the rule it would be %2.").arg(moved, host);
    case MovedFor::LaterLabel:
        break;
    }
    return QStringLiteral("Both have as many bees; %1 is carried, as the later label.").arg(moved);
}

QString lackReason(const DayView& view, ColonyIx c) {
    return view.of(c).queen == QueenSeen::DroneLayer ? QStringLiteral("%1's queen lays only drones").arg(view.name(c))
                                                     : QStringLiteral("%1 has no queen").arg(view.name(c));
}

QString queenReason(const DayView& view, const Union& u) {
    const QString& moved = view.name(u.moved);
    const QString& host = view.name(u.host);
    switch (u.queen) {
    case QueenPlan::KeepMoved:
        return lackReason(view, u.host) + QStringLiteral("; %1's is kept.").arg(moved);
    case QueenPlan::KeepHost:
        return lackReason(view, u.moved) + QStringLiteral("; %1's is kept.").arg(host);
    case QueenPlan::RemoveMoved:
        return QStringLiteral("%1's queen is kept, %2's removed, as your setting says.").arg(host, moved);
    case QueenPlan::LeaveBoth:
        break;
    }
    return QStringLiteral("Both queens are left, as your setting says; the bees keep one.");
}

QString gainReason(const DayView& view, const Union& u) {
    const auto carry = carryCost(u.from, u.to, view.s.settings.carryPerM);
    return QStringLiteral(
               "Expected alone %1 + %2, together %3 thousandths of a spring colony; less %4 for the carry (%7), the "
               "gain is %5, at least %6 is asked (by value tables that are an assumption).")
        .arg(*view.valueAlone(u.moved))
        .arg(*view.valueAlone(u.host))
        .arg(view.value(u.frames))
        .arg(carry)
        .arg(u.gain)
        .arg(judgePair(view, u.moved, u.host).limit)
        .arg(limitText(view.s.settings, "carry.per_m"));
}

QString seasonReason(const DayView& view, const Union& u) {
    const Settings& settings = view.s.settings;
    const bool southern = view.southern(u.host);
    const bool forQueen = judgePair(view, u.moved, u.host).forQueen;
    return forQueen
               ? QStringLiteral("One gives the other a queen; that is done from %1 to %2.")
                     .arg(limitText(settings, "season.start", southern),
                          limitText(settings, "season.fall_end", southern))
               : QStringLiteral("Colonies are united for strength from %1 to %2: at least one weak (below %3 frames), "
                                "none strong (from %4).")
                     .arg(limitText(settings, "season.fall_start", southern),
                          limitText(settings, "season.fall_end", southern), framesText(settings.mediumMin),
                          framesText(settings.strongMin));
}

QString boxReason(const DayView& view, const Union& u, bool asked) {
    if (asked)
        return QStringLiteral("%1's box goes on top, as you asked; by your setting it would be %2's.")
            .arg(view.name(u.upper), view.name(u.lower));
    if (u.upper == u.host)
        return QStringLiteral("%1's box goes on top: the winter cluster ends up there, in the better box (a setting; "
                              "handbooks differ).")
            .arg(view.name(u.upper));
    return QStringLiteral("%1's box goes on top: the weaker colony above, as your setting says (handbooks differ).")
        .arg(view.name(u.upper));
}

QString pinReason(const DayView& view, const Union& u) {
    const PairJudgement judged = judgePair(view, u.moved, u.host);
    if (judged.may()) return QStringLiteral("You asked for this pair.");
    return QStringLiteral("You asked for this pair; by itself its gain of %1 would be below the limit of %2.")
        .arg(u.gain)
        .arg(judged.limit);
}

/// Queens to see to before anything else.
void addQueenSteps(const DayView& view, const Union& u, QStringList& steps) {
    for (const ColonyIx c : {u.moved, u.host})
        if (view.of(c).queen == QueenSeen::DroneLayer)
            steps +=
                QStringLiteral("Before anything else, find and remove the drone-laying queen of %1.").arg(view.name(c));
    if (u.queen == QueenPlan::LeaveBoth) return;
    const ColonyIx keeper = u.queen == QueenPlan::KeepMoved ? u.moved : u.host;
    const QueenSeen queen = view.of(keeper).queen;
    if (queen == QueenSeen::Unknown || queen == QueenSeen::Virgin)
        steps += QStringLiteral(
                     "Before anything else, look for the queen of %1, which is to be kept: %2. Without her, stop.")
                     .arg(view.name(keeper), queen == QueenSeen::Virgin
                                                 ? QStringLiteral("she was a virgin")
                                                 : QStringLiteral("whether there is one is not known"));
}

void addBoxSteps(const DayView& view, const Union& u, QStringList& steps) {
    const QString& moved = view.name(u.moved);
    const QString& host = view.name(u.host);
    if (u.upper == u.host)
        steps += QStringLiteral("Lift %1's box off its floor on stand %2; set %3's box on that floor.")
                     .arg(host, u.stand, moved);
    else
        steps += QStringLiteral("Leave %1's box on stand %2 and open it.").arg(host, u.stand);
    steps +=
        QStringLiteral("Lay one sheet of newspaper with a few small slits over %1's frames, and set %2's box on it.")
            .arg(view.name(u.lower), view.name(u.upper));
    steps += QStringLiteral("Turn both entrances to %1°.").arg(u.headingDeg);
}

} // namespace

QStringList unionReasons(const DayView& view, const Union& united, const Roles& roles) {
    QStringList out{sizeReason(view, united),  gainReason(view, united),
                    carryReason(view, united), rolesReason(view, united, roles.reason),
                    queenReason(view, united), boxReason(view, united, roles.topAsked),
                    seasonReason(view, united)};
    if (united.pinned) out.prepend(pinReason(view, united));
    return out;
}

Reason unionReason(const DayView& view, const Union& u) {
    const PairJudgement judged = judgePair(view, u.moved, u.host);
    Reason why{judged.forQueen ? "4.7.9 (b)" : "4.7.9 (a)"};
    why.southern = view.southern(u.host);
    for (const ColonyIx c : {u.moved, u.host}) {
        why.fact("colony", c).fact("frames", *view.of(c).strength).fact("counted", *view.of(c).counted);
        why.fact("alone", qint64(*view.valueAlone(c)));
        addClassLimits(view, c, why);
    }
    why.fact("together", qint64(view.value(u.frames))).fact("carry", judged.carry).fact("gain", qint64(u.gain));
    why.limit("value.winter").limit("value.divide").limit("carry.per_m");
    if (u.frames.value > 4 * fixed::kMostValued) why.limit("4.6 most_frames");
    why.limit(judged.forQueen ? "gain.min_queen" : "gain.min");
    why.limit(judged.forQueen ? "season.start" : "season.fall_start").limit("season.fall_end");
    if (u.queen == QueenPlan::LeaveBoth || u.queen == QueenPlan::RemoveMoved) why.limit("queen.weaker");
    return why.limit("order").limit("follow.union_days");
}

QStringList unionSteps(const DayView& view, const Union& united) {
    QStringList steps;
    addQueenSteps(view, united, steps);
    if (united.queen == QueenPlan::RemoveMoved)
        steps += QStringLiteral("Find and remove the queen of %1.").arg(view.name(united.moved));
    for (const ColonyIx c : united.consolidate)
        steps += QStringLiteral(
                     "Bring %1 down to one box: %2 frames of bees, with brood and stores, into the box that is kept.")
                     .arg(view.name(c), framesText(*view.of(c).strength));
    steps +=
        QStringLiteral("Carry %1 %2 to stand %3.").arg(view.name(united.moved), distance(view, united), united.stand);
    addBoxSteps(view, united, steps);
    steps +=
        QStringLiteral("Look again on %1, after %2.")
            .arg(isoText(view.s.on + view.s.settings.followUnionDays), limitText(view.s.settings, "follow.union_days"));
    return steps;
}

} // namespace core::rules
