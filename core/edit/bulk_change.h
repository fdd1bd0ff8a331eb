#pragma once

#include "core/base/day.h"
#include "core/edit/change_set.h"
#include "core/edit/edit_context.h"
#include "core/model/rows.h"

#include <optional>
#include <vector>

// The same change of several visits or colonies: one ChangeSet, so one line and one undo; all of them or none. Each is
// judged as when it is changed alone, after those before it. Throws Error(BadData) with one sentence that names the
// first that it cannot be done for.

namespace core::edit {

/// One figure of each: not set: stays as it is; set: the value, or not recorded.
template <class T> using Put = std::optional<std::optional<T>>;

/// What is written of a note: the text instead of what was there, or after it.
struct PutNote {
    QString text;
    bool append = false;
};

/// What becomes of each of several visits. Nothing set: nothing.
struct VisitPut {
    std::optional<Day> day;
    std::optional<QString> by;
    std::optional<PutNote> note;
    Put<int> boxes;
    Put<Quarters> beesTop, beesBottom, upperBeesTop, upperBeesBottom, stores, upperStores;
    Put<QueenSeen> queen;
    Put<int> broodFrames, broodChecked, supers;
    Put<Decagrams> gross;
    Put<int> mites, miteSample;
};
Visit withPut(Visit visit, const VisitPut& put);

struct ColonyPut {
    std::optional<BoxKindId> box;
    std::optional<int> broodBoxes;
    Put<int> queenBorn;
    std::optional<PutNote> note;
};
Colony withPut(Colony colony, const ColonyPut& put);

/// No more than this at once, so that a slip of the hand stays small and the answer quick.
constexpr size_t kMostAtOnce = 2000;

ChangeSet changeVisits(const EditContext& c, const std::vector<VisitId>& visits, const VisitPut& put);
ChangeSet takeBackVisits(const EditContext& c, const std::vector<VisitId>& visits);
/// The same visit of each colony on that day (`like.id` and `like.colony` are not read).
ChangeSet logVisits(const EditContext& c, const std::vector<ColonyId>& colonies, const Visit& like);
ChangeSet changeColonies(const EditContext& c, const std::vector<ColonyId>& colonies, const ColonyPut& put);

} // namespace core::edit
