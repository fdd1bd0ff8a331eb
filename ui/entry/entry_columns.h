#pragma once

#include "core/base/shown_units.h"
#include "core/model/tally_order.h"

#include <QString>

#include <vector>

namespace ui::entry {

/// At the head of the column: "above", "kg".
QString headOf(core::TallyColumn column, core::WeightUnit unit);
/// In full, for tips and screen readers: "frames of bees in the lower box, seen from above".
QString spokenOf(core::TallyColumn column, core::WeightUnit unit);
/// How wide, in digits; a note takes what is left.
int digitsOf(core::TallyColumn column);

/// What was typed into so far, and what most write down; a second box's where a hive has one.
std::vector<core::TallyColumn> columnsToBegin(const std::vector<core::Visit>& visits, bool twoBoxes);

/// The columns chosen for that book on this machine; empty: none were.
std::vector<core::TallyColumn> chosenColumns(const QString& bookId);
void rememberColumns(const QString& bookId, const std::vector<core::TallyColumn>& columns);
void forgetColumns(const QString& bookId);

} // namespace ui::entry
