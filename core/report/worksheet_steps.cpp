#include "core/report/worksheet_part.h"

// The steps of rule 4.8 in the few words that a gloved hand wants, in the language of the paper.

namespace core::report {

using rules::QueenPlan;

namespace {

void addQueenSteps(const SheetInput& in, const rules::Union& u, QStringList& steps) {
    for (const ColonyIx c : {u.moved, u.host})
        if (in.of(c).queen == QueenSeen::DroneLayer)
            steps << in.say("First find and remove the drone-laying queen of %1.").arg(in.name(c));
    if (u.queen == QueenPlan::LeaveBoth || u.queen == QueenPlan::RemoveMoved) {
        if (u.queen == QueenPlan::RemoveMoved)
            steps << in.say("Find and remove the queen of %1.").arg(in.name(u.moved));
        return;
    }
    const ColonyIx keeper = u.queen == QueenPlan::KeepMoved ? u.moved : u.host;
    if (in.of(keeper).queen == QueenSeen::Unknown)
        steps << in.say("First look for the queen of %1: nobody knows whether there is one. Without her, stop.")
                     .arg(in.name(keeper));
    if (in.of(keeper).queen == QueenSeen::Virgin)
        steps << in.say("First look for the queen of %1: she was a virgin. Without her, stop.").arg(in.name(keeper));
}

} // namespace

QStringList unionSteps(const SheetInput& in, const rules::Union& u) {
    QStringList steps;
    addQueenSteps(in, u, steps);
    for (const ColonyIx c : u.consolidate)
        steps << in.say("Bring %1 down to one box: %2 of bees, with brood and stores.")
                     .arg(in.name(c), in.say.frames(*in.of(c).strength));
    const QString& moved = in.name(u.moved);
    const QString& host = in.name(u.host);
    steps << in.say("Carry %1 to stand %2, %3.").arg(moved, u.stand, in.say.distance(u.from, u.to));
    if (u.upper == u.host)
        steps << in.say("%1's box off its floor, %2's box on it.").arg(host, moved);
    else
        steps << in.say("Leave %1's box on its floor; open it.").arg(host);
    steps << in.say("Slit newspaper over %1, then %2's box; lid.").arg(in.name(u.lower), in.name(u.upper));
    steps << in.say("Both entrances to %1.").arg(in.say.direction(u.headingDeg));
    return steps;
}

QStringList shakeOutSteps(const SheetInput& in, const rules::ShakeOut& shaken) {
    QStringList steps;
    if (shaken.removeQueen) steps << in.say("Find and remove the queen of %1.").arg(in.name(shaken.colony));
    steps << (shaken.intoUnion ? in.say("Shake the bees out before %1, after its union is made.")
                               : in.say("Shake the bees out before the entrance of %1."))
                 .arg(in.name(shaken.into));
    steps << in.say("Take the emptied hive of %1 away.").arg(in.name(shaken.colony));
    return steps;
}

} // namespace core::report
