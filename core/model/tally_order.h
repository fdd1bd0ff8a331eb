#pragma once

#include "core/model/rows.h"

#include <QChar>

#include <array>
#include <optional>
#include <vector>

// The row of a tally sheet and of the grid that it is typed into: one order and one set of letters for both, so that
// the eye on the paper and the keys go the same way.

namespace core {

/// What is noted of a colony at a visit, in that order. Lower: the lower box, or the only one.
enum class TallyColumn {
    BeesTop, ///< frames of bees, lower box, seen from above
    BeesBottom,
    UpperTop,
    UpperBottom,
    Queen,
    Brood,
    Checked, ///< brood frames examined for disease
    Signs,
    Stores,
    UpperStores,
    Supers,
    Weight,
    Mites,
    Sample, ///< bees in the sample
    Boxes,  ///< brood boxes from that day on, where that changed
    Note
};

inline constexpr std::array kTallyOrder{
    TallyColumn::BeesTop, TallyColumn::BeesBottom,  TallyColumn::UpperTop, TallyColumn::UpperBottom,
    TallyColumn::Queen,   TallyColumn::Brood,       TallyColumn::Checked,  TallyColumn::Signs,
    TallyColumn::Stores,  TallyColumn::UpperStores, TallyColumn::Supers,   TallyColumn::Weight,
    TallyColumn::Mites,   TallyColumn::Sample,      TallyColumn::Boxes,    TallyColumn::Note};

/// The letter that is ringed or written for it, and typed; the same in every language.
QChar tallyLetter(QueenSeen seen);
QChar tallyLetter(Sign sign);
/// Whatever its case; nullopt: no such letter.
std::optional<QueenSeen> queenOfLetter(QChar letter);
std::optional<Sign> signOfLetter(QChar letter);

/// Whether the visit says something in that column.
bool recorded(const Visit& visit, TallyColumn column);
/// Those that one of the visits says something in, in order.
std::vector<TallyColumn> columnsUsed(const std::vector<Visit>& visits);

} // namespace core
