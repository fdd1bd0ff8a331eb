#include "core/edit/edit_checks.h"
#include "core/edit/judge.h"
#include "core/edit/put_right.h"
#include "core/edit/row_change.h"

#include <algorithm>

namespace core::edit {

namespace {

Day dayOf(const EditContext& c, MergeDayId id) {
    const auto day = c.find<MergeDay>(id.value);
    return day ? day->day : c.today();
}

/// Refuses where a record names the colony.
void needUnnamed(const EditContext& c, const Colony& colony) {
    const auto named = [&](const QString& what, Day day) {
        refuse(Edits::tr("%1 has %2 on %3; only a colony that no record names is taken back.")
                   .arg(shownName(c, colony, day), what, isoText(day)));
    };
    for (const Visit& v : c.visitsOf(colony.id, 1)) named(Edits::tr("a visit"), v.day);
    for (const Transfer& t : c.transfersOf(colony.id)) named(Edits::tr("a transfer"), t.day);
    for (const Result& r : c.resultsOf(colony.id)) named(Edits::tr("a result"), r.day);
    for (const Treatment& t : c.treatmentsOf(colony.id)) named(Edits::tr("a treatment"), t.day);
    for (const Lineage& l : c.lineageOf(colony.id)) named(Edits::tr("a union, shake-out or divide"), l.day);
    for (const Placement& p : c.placementsOf(colony.id))
        if (!p.first) named(Edits::tr("a carry"), p.since);
    c.each<MergeChoice>([&](const MergeChoice& x) {
        if (x.colony == colony.id || x.other == colony.id)
            named(Edits::tr("the plan of a merge day"), dayOf(c, x.mergeDay));
    });
    c.each<MergeStrip>([&](const MergeStrip& x) {
        if (x.moved == colony.id || x.host == colony.id) named(Edits::tr("a merge day"), dayOf(c, x.mergeDay));
    });
    c.each<DivideChoice>([&](const DivideChoice& x) {
        if (x.colony == colony.id) named(Edits::tr("the plan of a merge day"), dayOf(c, x.mergeDay));
    });
    c.each<DivideStrip>([&](const DivideStrip& x) {
        if (x.colony == colony.id) named(Edits::tr("a merge day"), dayOf(c, x.mergeDay));
    });
    for (const Feeding& f : c.feedingsOf(colony.id)) named(Edits::tr("a feeding"), f.day);
    for (const MiteFall& f : c.miteFallsOf(colony.id)) named(Edits::tr("a count of fallen mites"), f.day);
    for (const Queen& q : c.queensOf(colony.id)) named(Edits::tr("a queen"), q.since);
    for (const Queen& q : c.queensRaisedFrom(colony.id)) named(Edits::tr("a queen raised from it"), q.since);
    for (const Sample& s : c.samplesOf(colony.id)) named(Edits::tr("a sample"), s.day);
    c.each<StripsOut>([&](const StripsOut& s) {
        if (s.colony == colony.id) named(Edits::tr("a treatment taken out"), s.day);
    });
    c.each<KitEnd>([&](const KitEnd& e) {
        if (e.colony == colony.id) named(Edits::tr("an end of its kit"), e.day);
    });
    c.each<Kit>([&](const Kit& kit) {
        if (kit.colony == colony.id) refuse(Edits::tr("Kit that came off %1 is counted.").arg(colony.label));
    });
}

Placement needCarry(const EditContext& c, PlacementId id) {
    const auto carry = c.find<Placement>(id.value);
    if (!carry) refuse(Edits::tr("That carry is no longer in the book."));
    if (carry->first) refuse(Edits::tr("That is where the colony began: it goes with the colony alone."));
    return *carry;
}

/// Where it stood before that carry.
Placement placeBefore(const EditContext& c, const Placement& carry) {
    const auto all = c.placementsOf(carry.colony);
    const auto at = std::find(all.begin(), all.end(), carry);
    return *std::prev(at);
}

} // namespace

ChangeSet takeBackCarry(const EditContext& c, PlacementId id) {
    const Placement carry = needCarry(c, id);
    const Placement before = placeBefore(c, carry);
    Placement stays = before;
    stays.until = carry.until;
    ChangeSet change;
    change.rows.push_back(deleted(carry));
    change.rows.push_back(changed(before, stays));
    if (const auto stand = c.stand(before.stand)) standAgain(*stand, change);
    dropStandOf(c, carry, change);
    judge(c, change.rows);
    change.text = Edits::tr("Took back the carry of %1 on %2")
                      .arg(shownName(c, needColony(c, carry.colony), carry.since), isoText(carry.since));
    return change;
}

ChangeSet takeBackColony(const EditContext& c, ColonyId id) {
    const Colony colony = needColony(c, id);
    if (colony.ended)
        refuse(Edits::tr("%1 ended on %2; take that back first.")
                   .arg(shownName(c, colony, *colony.ended), isoText(*colony.ended)));
    needUnnamed(c, colony);
    ChangeSet change;
    const auto places = c.placementsOf(id);
    for (const Placement& p : places) change.rows.push_back(deleted(p));
    change.rows.push_back(deleted(colony));
    for (const Placement& p : places) dropStandOf(c, p, change);
    judge(c, change.rows);
    change.text = Edits::tr("Took back %1, begun on %2").arg(colony.label, isoText(colony.since));
    return change;
}

ChangeSet takeBackYard(const EditContext& c, YardId id) {
    const Yard yard = needYard(c, id);
    for (const Stand& stand : c.standsOf(id))
        refuse(Edits::tr("%1 has a stand %2; only a yard without stands is taken back.").arg(yard.name, stand.name));
    for (const Result& r : c.resultsOf(id))
        refuse(Edits::tr("%1 has a result of %2; take that back first.").arg(yard.name, isoText(r.day)));
    for (const Treatment& t : c.treatmentsOf(id))
        refuse(Edits::tr("%1 has a treatment of %2; take that back first.").arg(yard.name, isoText(t.day)));
    for (const MergeDay& day : c.mergeDaysOf(id))
        refuse(Edits::tr("%1 has a merge day of %2; take that back first.").arg(yard.name, isoText(day.day)));
    c.each<Kit>([&](const Kit& kit) {
        if (kit.yard == id) refuse(Edits::tr("Kit is counted in %1.").arg(yard.name));
    });
    c.each<KitEnd>([&](const KitEnd& e) {
        if (e.yard == id)
            refuse(Edits::tr("%1 has an end of kit of %2; take that back first.").arg(yard.name, isoText(e.day)));
    });
    c.each<FixedThing>([&](const FixedThing& thing) {
        if (thing.yard == id)
            refuse(Edits::tr("The drawing of %1 shows a thing of its own (%2); take that back first.")
                       .arg(yard.name, word(thing.kind)));
    });
    return {Edits::tr("Took back yard %1").arg(yard.name), {deleted(yard)}, {}, {}, {}};
}

ChangeSet takeBackStand(const EditContext& c, StandId id) {
    const auto stand = c.stand(id);
    if (!stand) refuse(Edits::tr("That stand is no longer in the book."));
    for (const Placement& p : c.placementsAt(id))
        refuse(Edits::tr("%1 came to stand %2 on %3; only a stand that never bore a hive is taken back.")
                   .arg(shownName(c, needColony(c, p.colony), p.since), stand->name, isoText(p.since)));
    return {Edits::tr("Took back stand %1 of %2").arg(stand->name, needYard(c, stand->yard).name),
            {deleted(*stand)},
            {},
            {},
            {}};
}

} // namespace core::edit
