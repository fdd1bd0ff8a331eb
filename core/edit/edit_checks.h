#pragma once

#include "core/base/error.h"
#include "core/edit/edit_context.h"

#include <QCoreApplication>

// What several edits check.

namespace core::edit {

/// Translation context of the edits' sentences.
struct Edits {
    Q_DECLARE_TR_FUNCTIONS(Edits)
};

/// Throws Error(BadData).
[[noreturn]] void refuse(const QString& sentence);

/// The colony as outputs name it on a day: its label, or LABEL@SINCE where that names another.
QString shownName(const EditContext& c, const Colony& colony, Day day);

/// The colony of this id; refuses where there is none.
Colony needColony(const EditContext& c, ColonyId id);
Yard needYard(const EditContext& c, YardId id);
/// Refuses a day before its `since` or after its `ended`.
void needLife(const EditContext& c, const Colony& colony, Day day);

/// Trimmed, 1 to 60 characters, no control characters; `what` names the field. A colony's holds no @.
QString checkedName(const QString& typed, const QString& what);
/// Refuses a value that is set and not in least..most.
void checkRange(std::optional<int> value, int least, int most, const QString& field);

/// One more than the greatest number among the yard's stand names.
QString nextStandName(const std::vector<Stand>& stands);

/// Refuses where another colony's hive stands, from that day on, on the stand or nearer to it than kStandApartMm.
void needBareGround(const EditContext& c, const std::vector<Stand>& stands, MmPoint at, ColonyId own, Day day);

} // namespace core::edit
