#include "core/edit/edit_checks.h"
#include "core/edit/judge.h"
#include "core/edit/queen_checks.h"
#include "core/edit/row_change.h"

namespace core::edit {

ChangeSet moveQueen(const EditContext& c, QueenId id, ColonyId to, Day day, const std::optional<QueenBefore>& before) {
    const Queen old = needQueen(c, id);
    if (to == old.colony) refuse(Edits::tr("She is moved from one colony to another."));
    if (old.until)
        refuse(Edits::tr("What became of %1 is in the book: she headed it until %2.")
                   .arg(queenName(c, old), isoText(*old.until)));
    Queen left = old;
    left.until = day;
    left.fate = QueenFate::Moved;
    Queen there = old;
    there.id = QueenId{c.nextId(Table::Queen)};
    there.colony = to;
    there.since = day;
    there = checkedQueen(c, there);
    left = checkedQueen(c, left);
    ChangeSet change;
    change.rows.push_back(changed(old, left));
    giveWay(c, there, before, change);
    change.rows.push_back(added(there));
    tellQueensYear(c, needColony(c, to), change);
    judge(c, change.rows);
    change.text =
        Edits::tr("Moved %1 to %2 on %3").arg(queenName(c, old), shownName(c, needColony(c, to), day), isoText(day));
    return change;
}

} // namespace core::edit
