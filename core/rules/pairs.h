#pragma once

#include "core/rules/day_view.h"

#include <optional>

// Rule 4.7, parts 1 to 10: whether two colonies may unite, and what the union gains.

namespace core::rules {

/// What rule 4.7 says of one pair.
struct PairJudgement {
    quint16 against = 0;     ///< bit N: part N stands against it
    bool forQueen = false;   ///< 9 (b) holds: one gives the other a queen
    qint64 carry = 0;        ///< thousandths; 0 in two yards
    std::optional<int> gain; ///< in one yard and with two strengths
    int limit = 0;           ///< what 10 asks of the gain

    bool bars(int part) const { return (against >> part) & 1; }
    bool may() const { return against == 0; }
    /// A pin needs all but part 10.
    bool mayPin() const { return (against & ~(1 << 10)) == 0; }
};
PairJudgement judgePair(const DayView& view, ColonyIx a, ColonyIx b);

/// Part 7: whether the colony is in one brood box, or can be brought down to one first.
enum class OneBox { IsInOne, Fits, TooManyBees, TooMuchComb, NoStrength };
OneBox oneBox(const DayView& view, ColonyIx c);
inline bool comesToOneBox(OneBox box) { return box == OneBox::IsInOne || box == OneBox::Fits; }

/// Frames of brood and stores at the count used, in quarters, where all three were recorded.
std::optional<Quarters> combNeeded(const DayView& view, ColonyIx c);

/// Parts 2, 3, 4 and 7, which each colony must meet by itself.
bool mayTakePart(const DayView& view, ColonyIx c);

/// Gain of a union less its carry: E(a + b) − E(a) − E(b), E of one that lacks a queen being 0. Both have a strength.
int gainBeforeCarry(const DayView& view, ColonyIx a, ColonyIx b);

} // namespace core::rules
