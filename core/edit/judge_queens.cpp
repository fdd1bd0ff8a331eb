#include "core/edit/edit_checks.h"
#include "core/edit/judge.h"

namespace core::edit {

void judgeQueens(const EditContext& after, const Colony& colony) {
    const auto queens = after.queensOf(colony.id);
    for (size_t i = 0; i + 1 < queens.size(); ++i) {
        const Queen& one = queens[i];
        const Queen& next = queens[i + 1];
        const QString name = shownName(after, colony, next.since);
        if (one.since == next.since)
            refuse(Edits::tr("%1 has a queen from %2 on already; expected one queen a day to begin.")
                       .arg(name, isoText(next.since)));
        if (!one.until)
            refuse(Edits::tr("%1 has a queen since %2; what became of her before the next one came on %3?")
                       .arg(name, isoText(one.since), isoText(next.since)));
        if (*one.until > next.since)
            refuse(Edits::tr("%1 had a queen until %2; the next one cannot have come on %3.")
                       .arg(name, isoText(*one.until), isoText(next.since)));
    }
}

} // namespace core::edit
