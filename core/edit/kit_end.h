#pragma once

#include "core/edit/change_set.h"
#include "core/edit/edit_context.h"
#include "core/model/rows.h"

// How kit that was kept apart came to its end, or could be used again: written with the move out of quarantine
// (moveKit), put right and taken back here. Throws Error(BadData) with one sentence where it cannot be.

namespace core::edit {

/// What `moveKit` asks for where quarantined kit becomes burned or sterilised.
struct KitEnding {
    KitEndHow how = KitEndHow::Burned;
    Day day;
    QString by; ///< who did it or saw to it; never empty
    QString paper;
    QString note; ///< of `other`: how
};

/// Whether kit that came to such an end is in that state: burned is burned, irradiated and dipped are sterilised,
/// otherwise is either.
bool endsAs(KitEndHow how, const QString& state);
/// Trimmed and judged; refuses one that does not end as `state`. The id is given.
KitEnd checkedKitEnd(const EditContext& c, const KitEnd& end, const QString& state);

/// Day, how, who, paper and note, `now.id` names it; what kit it is of stays. Irradiated or dipped never becomes burned
/// nor the other way round: the kit itself would be another.
ChangeSet changeKitEnd(const EditContext& c, const KitEnd& now);
/// The kit is quarantined again, where it lies; refused where it is not in the book any more as it ended.
ChangeSet takeBackKitEnd(const EditContext& c, KitEndId id);

} // namespace core::edit
