#include "core/edit/held.h"

#include "core/edit/edit_checks.h"
#include "core/rules/hold.h"

#include <algorithm>

namespace core::edit {

void refuseHeld(const EditContext& c, const std::vector<ColonyId>& colonies, Day day) {
    const Snapshot s = c.snapshot(day);
    for (const rules::Hold& hold : rules::holds(s)) {
        const SnapColony& held = s.colony(hold.colony);
        if (std::find(colonies.begin(), colonies.end(), held.id) == colonies.end()) continue;
        throw Error(Error::Kind::Hold,
                    Edits::tr("%1 is held (%2). %3").arg(held.shown, rules::holdWord(hold.kind), hold.because()));
    }
}

} // namespace core::edit
