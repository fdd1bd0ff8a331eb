#pragma once

#include "core/base/day.h"
#include "core/edit/change_set.h"
#include "core/edit/edit_context.h"
#include "core/model/rows.h"

#include <optional>

// What is seen after a merge day, as the records that it makes. Where the colony has a visit of that day, it is added
// to that visit. Throws Error(BadData) with one sentence where it cannot be.

namespace core::edit {

/// The three questions at a united hive; not set: not looked at.
struct UnionSeen {
    ColonyId colony;
    Day day;
    std::optional<bool> paperGone;
    std::optional<bool> oneQueen; ///< one was seen
    std::optional<bool> eggs;
    QString by;
    QString note;
};
/// A visit. Eggs or a queen seen are its queen; looked for and neither found, it is unknown (that there is none is for
/// the keeper to say: recordFailure). Refused where nothing was looked at.
ChangeSet logUnionCheck(const EditContext& c, const UnionSeen& seen);

/// The medicine of a treatment was taken out of the hive: a visit that says so.
ChangeSet logTakenOut(const EditContext& c, ColonyId colony, Day day, const QString& product, const QString& by);

/// What of the brood (or its remains) was looked at for foulbrood where a colony was lost. Nothing is assumed of it.
enum class BroodFound { NotLooked, Healthy, Doubtful, SignsOfAfb, SignsOfEfb };

/// A colony without living bees.
struct Loss {
    ColonyId colony;
    Day day;
    QString cause; ///< in words; may be empty
    BroodFound brood = BroodFound::NotLooked;
    std::optional<int> framesLooked; ///< of brood, where it looked healthy: a brood check only where it is given
    QString by;
    QString note;
};
/// The colony ends as dead, after a visit of that day without bees that says the cause; signs are the visit's.
ChangeSet recordLoss(const EditContext& c, const Loss& loss);

enum class UnionFailure { Queenless, Fought, Absconded, Dead };
struct Failure {
    UnionFailure how = UnionFailure::Queenless;
    QueenSeen queen = QueenSeen::Unknown; ///< of one that fought: what is left
    Loss loss; ///< colony, day, by, note; of one absconded or dead what of the brood was seen
};
/// Queenless, fought: a visit that says so. Absconded, dead: recordLoss() with that cause.
ChangeSet recordFailure(const EditContext& c, const Failure& failure);

} // namespace core::edit
