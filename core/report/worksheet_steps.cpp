#include "core/report/worksheet_part.h"

// The steps of rule 4.8 in the few words that a gloved hand wants, in the language of the paper.

namespace core::report {

using rules::QueenPlan;

namespace {

void addQueenSteps(const SheetInput& in, const rules::Union& u, QStringList& steps) {
    for (const ColonyIx c : {u.moved, u.host})
        if (in.of(c).queen == QueenSeen::DroneLayer)
            steps << in.say("First find and remove the drone-laying queen of %1.").arg(in.briefly(c));
    if (u.queen == QueenPlan::LeaveBoth || u.queen == QueenPlan::RemoveMoved) {
        if (u.queen == QueenPlan::RemoveMoved)
            steps << in.say("Find and remove the queen of %1.").arg(in.briefly(u.moved));
        return;
    }
    const ColonyIx keeper = u.queen == QueenPlan::KeepMoved ? u.moved : u.host;
    if (in.of(keeper).queen == QueenSeen::Unknown)
        steps << in.say("First look for the queen of %1: nobody knows whether there is one. Without her, stop.")
                     .arg(in.briefly(keeper));
    if (in.of(keeper).queen == QueenSeen::Virgin)
        steps << in.say("First look for the queen of %1: she was a virgin. Without her, stop.").arg(in.briefly(keeper));
}

} // namespace

namespace {

/// The host's box comes on top: it makes room on its own floor.
void addHostOnTop(const SheetInput& in, const rules::Union& u, QStringList& steps) {
    const QString moved = in.briefly(u.moved);
    const QString host = in.briefly(u.host);
    steps << in.say("Set %1's box aside, its lid on.").arg(host);
    steps << in.say("Carry %1 to stand %2; its box on the floor.").arg(moved, u.stand);
    steps << in.say("%1's lid and inner cover off.").arg(moved);
}

/// The moved one's box comes on top: the host's stays where it is.
void addMovedOnTop(const SheetInput& in, const rules::Union& u, QStringList& steps) {
    steps << in.say("Carry %1 beside stand %2.").arg(in.briefly(u.moved), u.stand);
    steps << in.say("%1's box stays on its floor: its lid and inner cover off.").arg(in.briefly(u.host));
}

} // namespace

QStringList unionSteps(const SheetInput& in, const rules::Union& u) {
    QStringList steps;
    addQueenSteps(in, u, steps);
    for (const ColonyIx c : u.consolidate)
        steps << in.say("Bring %1 down to one box, where that is not done: %2 of bees, with brood and stores.")
                     .arg(in.briefly(c), in.say.frames(*in.of(c).strength));
    if (u.upper == u.host)
        addHostOnTop(in, u, steps);
    else
        addMovedOnTop(in, u, steps);
    steps << in.say("Newspaper with a few small slits over %1's frames; hold it against the wind.")
                 .arg(in.briefly(u.lower));
    steps << (u.upper == u.host ? in.say("%1's box on it.") : in.say("%1's box off its floor and on it."))
                 .arg(in.briefly(u.upper));
    steps << in.say("Both entrances to %1.").arg(in.say.direction(u.headingDeg));
    steps << in.say("Lid on. Mark the hive: %1 with %2, %3.")
                 .arg(in.briefly(u.host), in.briefly(u.moved), in.say.day(in.plan.on, in.plan.on));
    return steps;
}

QStringList shakeOutSteps(const SheetInput& in, const rules::ShakeOut& shaken) {
    QStringList steps;
    if (shaken.removeQueen) steps << in.say("Find and remove the queen of %1.").arg(in.briefly(shaken.colony));
    steps << (shaken.intoUnion ? in.say("Shake the bees out before %1, after its union is made.")
                               : in.say("Shake the bees out before the entrance of %1."))
                 .arg(in.briefly(shaken.into));
    steps << in.say("Take the emptied hive of %1 away.").arg(in.briefly(shaken.colony));
    return steps;
}

} // namespace core::report
