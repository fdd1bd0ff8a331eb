#include "core/edit/edit_checks.h"
#include "core/edit/judge.h"

#include <set>

namespace core::edit {

namespace {

void needWithin(const EditContext& c, const Colony& colony, Day day, const QString& what) {
    if (day < colony.since)
        refuse(Edits::tr("%1 has %2 on %3; it cannot have begun after that.")
                   .arg(shownName(c, colony, colony.since), what, isoText(day)));
    if (colony.ended && day > *colony.ended)
        refuse(Edits::tr("%1 has %2 on %3; it cannot have ended before that.")
                   .arg(shownName(c, colony, day), what, isoText(day)));
}

/// Comb from a dead-out: such a transfer may leave a colony after its end.
bool mayComeLater(const Transfer& t, ColonyId colony) {
    return t.from == colony && t.what != TransferKind::Brood && t.what != TransferKind::Bees;
}

QString nounOf(LineageHow how) {
    switch (how) {
    case LineageHow::United:
        return Edits::tr("a union");
    case LineageHow::ShakenOut:
        return Edits::tr("a shake-out");
    case LineageHow::Divided:
        break;
    }
    return Edits::tr("a divide");
}

QString nameOf(const EditContext& c, ColonyId id, Day day) { return shownName(c, needColony(c, id), day); }

/// What the record of a union, shake-out or divide says of its colonies, and their own rows.
void judgeAgreement(const EditContext& c, const Colony& colony, const Lineage& l) {
    if (l.how == LineageHow::Divided) {
        if (l.into == colony.id && l.day != colony.since)
            refuse(Edits::tr("%1 came of a divide of %2 on %3; it begins that day.")
                       .arg(shownName(c, colony, colony.since), nameOf(c, l.colony, l.day), isoText(l.day)));
        return;
    }
    const EndKind end = l.how == LineageHow::United ? EndKind::United : EndKind::ShakenOut;
    if (l.colony == colony.id && (colony.ended != l.day || colony.end != end))
        refuse(Edits::tr("%1 has %2 into %3 on %4; that is how and when it ended.")
                   .arg(shownName(c, colony, l.day), nounOf(l.how), nameOf(c, l.into, l.day), isoText(l.day)));
}

/// Follows unions and shake-outs of one day from the colony on.
void judgeCircle(const EditContext& c, const Colony& colony) {
    std::set<ColonyId> passed{colony.id};
    std::optional<ColonyId> at = colony.id;
    while (at) {
        std::optional<ColonyId> next;
        for (const Lineage& l : c.lineageOf(*at))
            if (l.colony == *at && l.how != LineageHow::Divided && l.day == colony.ended) next = l.into;
        if (next == colony.id)
            refuse(Edits::tr("The unions and shake-outs of %1 would form a circle: %2 would end in itself.")
                       .arg(isoText(*colony.ended), colony.label));
        at = next && passed.insert(*next).second ? next : std::nullopt;
    }
}

/// Follows divides upwards.
void judgeAncestors(const EditContext& c, const Colony& colony) {
    std::set<ColonyId> passed{colony.id};
    std::optional<ColonyId> at = colony.id;
    while (at) {
        std::optional<ColonyId> mother;
        for (const Lineage& l : c.lineageOf(*at))
            if (l.into == *at && l.how == LineageHow::Divided) mother = l.colony;
        if (mother == colony.id) refuse(Edits::tr("%1 would be its own ancestor by divides.").arg(colony.label));
        at = mother && passed.insert(*mother).second ? mother : std::nullopt;
    }
}

} // namespace

void judgeLife(const EditContext& after, const Colony& colony) {
    if (colony.ended && *colony.ended < colony.since)
        refuse(Edits::tr("%1 ended on %2; it cannot have begun after that.")
                   .arg(shownName(after, colony, colony.since), isoText(*colony.ended)));
    for (const Visit& v : after.visitsOf(colony.id, -1)) needWithin(after, colony, v.day, Edits::tr("a visit"));
    for (const Placement& p : after.placementsOf(colony.id))
        if (!p.first) needWithin(after, colony, p.since, Edits::tr("a carry"));
    for (const Treatment& t : after.treatmentsOf(colony.id)) needWithin(after, colony, t.day, Edits::tr("a treatment"));
    for (const Feeding& f : after.feedingsOf(colony.id)) needWithin(after, colony, f.day, Edits::tr("a feeding"));
    // What a colony leaves behind may be sampled after its end: comb, dead bees, honey, debris.
    for (const Sample& s : after.samplesOf(colony.id))
        if (s.day < colony.since) needWithin(after, colony, s.day, Edits::tr("a sample"));
    for (const MiteFall& f : after.miteFallsOf(colony.id)) {
        needWithin(after, colony, f.day, Edits::tr("a count of fallen mites"));
        needWithin(after, colony, f.day - f.days, Edits::tr("a board for fallen mites"));
    }
    for (const Queen& q : after.queensOf(colony.id)) {
        needWithin(after, colony, q.since, Edits::tr("a queen"));
        if (q.until) needWithin(after, colony, *q.until, Edits::tr("the end of a queen"));
    }
    for (const Queen& q : after.queensRaisedFrom(colony.id))
        if (q.since < colony.since) needWithin(after, colony, q.since, Edits::tr("a queen raised from it"));
    for (const Transfer& t : after.transfersOf(colony.id))
        if (t.day < colony.since || !mayComeLater(t, colony.id))
            needWithin(after, colony, t.day, Edits::tr("a transfer"));
}

void judgeLineage(const EditContext& after, const Colony& colony) {
    bool told = false;
    for (const Lineage& l : after.lineageOf(colony.id)) {
        judgeAgreement(after, colony, l);
        needWithin(after, colony, l.day, nounOf(l.how));
        told = told || (l.colony == colony.id && l.how != LineageHow::Divided);
    }
    if (!told && (colony.end == EndKind::United || colony.end == EndKind::ShakenOut))
        refuse(Edits::tr("No record says into which colony %1 went on %2.")
                   .arg(shownName(after, colony, *colony.ended), isoText(*colony.ended)));
    judgeCircle(after, colony);
    judgeAncestors(after, colony);
}

} // namespace core::edit
