#include "core/edit/edit_checks.h"
#include "core/edit/edit_ending.h"
#include "core/edit/edits.h"
#include "core/edit/held.h"
#include "core/edit/judge.h"
#include "core/edit/kit_freed.h"
#include "core/edit/row_change.h"

#include <algorithm>

namespace core::edit {

namespace {

Lineage checkedUnion(const EditContext& c, const Lineage& typed) {
    if (typed.how == LineageHow::Divided) refuse(Edits::tr("A divide is no union."));
    if (typed.colony == typed.into) refuse(Edits::tr("A colony is not united with itself."));
    Lineage l = typed;
    l.id = LineageId{c.nextId(Table::Lineage)};
    l.by = typed.by.trimmed();
    l.note = typed.note.trimmed();
    return l;
}

Colony colonyMade(const ChangeSet& change) {
    const auto row = std::find_if(change.rows.begin(), change.rows.end(),
                                  [](const RowChange& r) { return r.table == Table::Colony; });
    return fromRow<Colony>(row->id, *row->after);
}

} // namespace

ChangeSet recordUnion(const EditContext& c, const Lineage& typed) {
    ChangeSet change = recordUnionWhateverHolds(c, typed);
    refuseHeld(c, {typed.colony, typed.into}, typed.day);
    return change;
}

ChangeSet recordUnionWhateverHolds(const EditContext& c, const Lineage& typed) {
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
    change.rows.push_back(added(l));
    judge(c, change.rows);
    change.text = (united ? Edits::tr("United %1 into %2 on %3") : Edits::tr("Shook %1 out into %2 on %3"))
                      .arg(shownName(c, colony, l.day), shownName(c, into, l.day), isoText(l.day));
    addKitOfUnion(c, l, change);
    return change;
}

ChangeSet recordDivide(const EditContext& c, const Divide& divide) {
    ChangeSet change = recordDivideWhateverHolds(c, divide);
    refuseHeld(c, {divide.from}, divide.made.colony.since);
    return change;
}

ChangeSet recordDivideWhateverHolds(const EditContext& c, const Divide& divide) {
    const Day day = divide.made.colony.since;
    const Colony from = needColony(c, divide.from);
    needLife(c, from, day);
    ChangeSet change = addColony(c, divide.made);
    const Colony made = colonyMade(change);
    const Lineage l{LineageId{c.nextId(Table::Lineage)},
                    day,
                    LineageHow::Divided,
                    from.id,
                    made.id,
                    divide.by.trimmed(),
                    divide.note.trimmed()};
    change.rows.push_back(added(l));
    judge(c, change.rows);
    change.text = Edits::tr("Divided %1 on %2: made %3").arg(shownName(c, from, day), isoText(day), made.label);
    return change;
}

} // namespace core::edit
