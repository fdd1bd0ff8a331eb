#include "core/edit/edit_checks.h"
#include "core/edit/edit_ending.h"
#include "core/edit/edits.h"
#include "core/edit/row_change.h"
#include "core/rules/hold.h"

namespace core::edit {

namespace {

void refuseHeld(const EditContext& c, const Colony& a, const Colony& b, Day day) {
    const Snapshot s = c.snapshot(day);
    for (const rules::Hold& hold : rules::holds(s)) {
        const SnapColony& held = s.colony(hold.colony);
        if (held.id != a.id && held.id != b.id) continue;
        throw Error(Error::Kind::Hold,
                    Edits::tr("%1 is held (%2). %3").arg(held.shown, rules::holdWord(hold.kind), hold.because));
    }
}

Lineage checkedUnion(const EditContext& c, const Lineage& typed) {
    if (typed.how == LineageHow::Divided) refuse(Edits::tr("A divide is no union."));
    if (typed.colony == typed.into) refuse(Edits::tr("A colony is not united with itself."));
    Lineage l = typed;
    l.id = LineageId{c.nextId(Table::Lineage)};
    l.by = typed.by.trimmed();
    l.note = typed.note.trimmed();
    return l;
}

} // namespace

ChangeSet recordUnion(const EditContext& c, const Lineage& typed) {
    const Lineage l = checkedUnion(c, typed);
    const Colony colony = needColony(c, l.colony);
    const Colony into = needColony(c, l.into);
    needLife(c, into, l.day);
    if (into.ended)
        refuse(
            Edits::tr("%1 ended on %2; it takes no more bees.").arg(shownName(c, into, l.day), isoText(*into.ended)));
    ChangeSet change;
    const bool united = l.how == LineageHow::United;
    endOn(c, colony, l.day, united ? EndKind::United : EndKind::ShakenOut, change);
    refuseHeld(c, colony, into, l.day);
    change.rows.push_back(added(l));
    change.text = (united ? Edits::tr("United %1 into %2 on %3") : Edits::tr("Shook %1 out into %2 on %3"))
                      .arg(shownName(c, colony, l.day), shownName(c, into, l.day), isoText(l.day));
    return change;
}

} // namespace core::edit
