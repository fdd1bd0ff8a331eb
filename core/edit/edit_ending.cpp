#include "core/edit/edit_ending.h"

#include "core/edit/edit_checks.h"
#include "core/edit/row_change.h"

namespace core::edit {

namespace {

/// Comb from a dead-out: such a transfer may leave a colony after its end.
bool mayComeLater(const Transfer& t, ColonyId colony) {
    return t.from == colony && t.what != TransferKind::Brood && t.what != TransferKind::Bees;
}

/// The latest day of a record that needs the colony alive.
Day lastNeeded(const EditContext& c, const Colony& colony) {
    Day last = colony.since;
    for (const Visit& v : c.visitsOf(colony.id, 1)) last = std::max(last, v.day);
    for (const Placement& p : c.placementsOf(colony.id)) last = std::max(last, p.since);
    for (const Lineage& l : c.lineageOf(colony.id)) last = std::max(last, l.day);
    for (const Treatment& t : c.treatmentsOf(colony.id)) last = std::max(last, t.day);
    for (const Transfer& t : c.transfersOf(colony.id))
        if (!mayComeLater(t, colony.id)) last = std::max(last, t.day);
    return last;
}

} // namespace

void endOn(const EditContext& c, const Colony& colony, Day day, EndKind how, ChangeSet& change) {
    const QString name = shownName(c, colony, day);
    if (colony.ended) refuse(Edits::tr("%1 ended on %2 already.").arg(name, isoText(*colony.ended)));
    needLife(c, colony, day);
    if (const Day last = lastNeeded(c, colony); day < last)
        refuse(Edits::tr("%1 has a record of %2; it cannot have ended before that.").arg(name, isoText(last)));
    Colony now = colony;
    now.ended = day;
    now.end = how;
    if (const auto open = c.openPlacement(colony.id)) {
        Placement left = *open;
        left.until = day;
        change.rows.push_back(changed(*open, left));
    }
    change.rows.push_back(changed(colony, now));
}

} // namespace core::edit
