#pragma once

#include "core/edit/session.h"
#include "ui/form/form.h"
#include "ui/form/judge.h"

#include <optional>

// What forms of a colony's hive have in common.

namespace ui::records {

inline const QString kLabel = QStringLiteral("label");
inline const QString kBox = QStringLiteral("box");
inline const QString kBroodBoxes = QStringLiteral("brood_boxes");
inline const QString kQueenBorn = QStringLiteral("queen_born");
inline const QString kHeading = QStringLiteral("heading");
inline const QString kStand = QStringLiteral("stand");

/// Label, box kind, brood boxes, year of the queen.
std::vector<form::Field> hiveFields(const core::edit::Session& book);
void putHive(form::Values& values, const core::Colony& colony, const core::edit::Session& book);
/// Into `colony`; of values without problems.
void readHive(const form::Values& values, const core::edit::Session& book, core::Colony& colony);
/// Ranges, and a label that is free from `since` on; `own`: the colony that has it already.
void judgeHive(form::Judge& judge, const form::Values& values, const core::edit::Session& book, core::Day since,
               std::optional<core::ColonyId> own);

form::Field headingField();
void judgeHeading(form::Judge& judge, const form::Values& values);
std::optional<int> headingOf(const form::Values& values);

/// Stands of a yard that bear no hive on that day nor later, in natural order.
std::vector<core::Stand> freeStands(const core::edit::Session& book, core::YardId yard, core::Day day);

/// Bare ground a metre (or a little more) beside a hive, seen along its heading: right, left, behind, before; none of
/// `taken` within 0.7 m. nullopt: all is full.
std::optional<core::MmPoint> spotBeside(core::MmPoint at, int headingDeg, const std::vector<core::MmPoint>& taken);

} // namespace ui::records
