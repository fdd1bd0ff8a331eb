#pragma once

#include "core/model/rows.h"
#include "core/model/settings.h"

#include <optional>
#include <span>

// Natural mite fall, a method of its own: shown in mites a day, never turned into mites per 100 bees or into all mites
// of a colony. Source: Oliver, Re-evaluating varroa monitoring part 1, 2020: fall and infestation agree poorly in some
// studies; there is no agreed factor.

namespace core::rules {

/// Days of a count as advised (club advice, North Germany: buckfastimker-weser-ems.de, Kontrolle Milbenfall).
inline constexpr int kBoardDays = 5;

double mitesADay(const MiteFall& fall);
/// The first day that the board lay under the hive.
Day boardSince(const MiteFall& fall);

/// Mites a day from which on the advice is to treat, as the setting table says: July to October `drop.summer`, November
/// and December `drop.late`; in the south six months later. In other months there is none.
std::optional<Millionths> dropThreshold(const Settings& settings, Day day, bool southern);
/// Whether the count lies above it, exactly.
bool above(Millionths threshold, const MiteFall& fall);

/// All but antibiotics: the book does not say what a product is against (an assumption).
bool againstMites(const Treatment& t);

/// The days on which a treatment works in one hive, both included.
struct TreatedDays {
    Day first;
    Day last;
    friend bool operator==(const TreatedDays&, const TreatedDays&) = default;
};
/// To the day on which it was taken out of the hive, where that is recorded; else as many days as are recorded; else
/// that day alone.
TreatedDays treatedDays(const Treatment& t, ColonyId colony, std::span<const StripsOut> out);
/// The board lay there on one of these days; treated on the day of the count, it had fallen before. It is no natural
/// fall then.
bool whileTreated(const MiteFall& fall, std::span<const TreatedDays> ofColony);

} // namespace core::rules
