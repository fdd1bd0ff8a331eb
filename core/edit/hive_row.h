#pragma once

#include "core/edit/change_set.h"
#include "core/edit/edit_context.h"

#include <QString>

#include <optional>
#include <vector>

namespace core::edit {

/// A straight row of hives, all alike, to be set up on bare ground.
struct HiveRow {
    YardId yard;
    int count = 12;       ///< 1..400
    QString firstLabel;   ///< "K1", "K01", "A": a number or one letter at its end goes on
    int labelStep = 1;    ///< not 0
    MmPoint start;        ///< the first hive
    int spacingMm = 1500; ///< kStandApartMm .. 100 m, between centres
    int bearingDeg = 90;  ///< where the row goes, clockwise from north, 0..359
    int headingDeg = 180; ///< where every entrance looks, 0..359
    BoxKindId box;
    int broodBoxes = 1;
    Day since;
};

/// One hive of a row to come.
struct RowSpot {
    QString label;
    MmPoint at;
    friend bool operator==(const RowSpot&, const RowSpot&) = default;
};

/// The label `steps` after this one: "K9" → "K10", "K09" → "K10", "B" → "C". nullopt where it cannot go on (no number
/// or letter at its end, below 0, beyond Z).
std::optional<QString> labelAfter(const QString& label, int steps);
/// Labels and places of the row, for drawing it before it is made; fewer than `count` where the labels end.
std::vector<RowSpot> rowSpots(const HiveRow& row);
/// Colonies, stands and placements of the whole row: one edit. Throws Error(BadData): a label in use, a place that is
/// not bare, a number out of its range.
ChangeSet addHiveRow(const EditContext& c, const HiveRow& row);

} // namespace core::edit
