#pragma once

#include "core/edit/change_set.h"
#include "core/edit/edit_context.h"
#include "core/edit/kit_end.h"
#include "core/model/rows.h"
#include "core/rules/kit_piles.h"

#include <optional>

// Kit by kind and state, in the yards and in the store room. Throws Error(BadData) with one sentence where it cannot
// be; Error(Hold) where a hold of the colony that kit came off keeps it in quarantine. That kit with a colony's name is
// quarantined, burned or sterilised is taken back, by whatever edit or undo, only with a reason and a name: the Session
// asks (kit_guard.h).

namespace core::edit {

using rules::KitPlace;

/// Counted: so many are there, 0 too. Quarantined kit names the colony that it came off.
ChangeSet countKit(const EditContext& c, const KitPlace& pile, int count);

/// So many of one pile come to another state, or to another place, or both.
struct KitMove {
    KitPlace from;
    int count = 1;
    std::optional<YardId> toYard; ///< not set: the store room
    QString toState;
    std::optional<ColonyId> colony = {}; ///< of what comes into quarantine: what it came off
    std::optional<KitEnding> end = {};   ///< of quarantined kit that becomes burned or sterilised: how, who, when
};
/// Quarantined kit becomes burned or sterilised, which writes its end too (`end` says how); anything else, and another
/// yard, only once no hold of its colony stands, then with a reason and a name. Burned kit stays so. Kit leaves a yard
/// in which a hive is held, other than for a missing brood check, only as a fact (ChangeSet::against).
ChangeSet moveKit(const EditContext& c, const KitMove& move);

/// The pile was never counted: its lots go.
ChangeSet takeBackKit(const EditContext& c, const KitPlace& pile);

} // namespace core::edit
