#pragma once

#include "core/rules/calc/mites.h"
#include "core/rules/season_book.h"

#include <map>

namespace core::rules {

/// So few yards tell too little of how yards differ: between one and these there is no interval. An assumption.
inline constexpr int kYardsForInterval = 4;

/// The mite samples of one week, a colony's latest each.
struct MiteWeek {
    calc::DayRange days;
    int living = 0;   ///< colonies at the end of the week
    int colonies = 0; ///< sampled
    int yards = 0;    ///< that these stood in
    /// Mites per 100 bees. Of one yard the mean of its colonies (calc::yardMites); of several all mites of all bees,
    /// with the interval of yards that differ (calc::clusteredShare): the colonies of a yard are not independent.
    double rate = 0;
    std::optional<calc::Range> interval; ///< of 95 %; not set for a single colony, nor for two or three yards
    double highest = 0;                  ///< of a colony
    bool enough = false;                 ///< of each yard sampled eight colonies, or all of a smaller one
    /// By rule 4.5, of the day and half of the earth of the latest sample; not set where yards of both halves were.
    std::optional<Millionths> threshold;
    int above = 0; ///< colonies above the threshold of their own day and yard
};

/// A colony's sample, and where the colony stood.
struct PlacedSample {
    Day day;
    YardIx yard;
    calc::MiteSample counted;
};
using PlacedSamples = std::map<ColonyIx, PlacedSample>;
/// What these say together; one at least. `living`: colonies of each yard. `yard`: the only one that counts.
MiteWeek miteEstimate(const Snapshot& s, calc::DayRange days, const std::map<YardIx, int>& living,
                      std::optional<YardIx> yard, const PlacedSamples& samples);

/// Weeks with samples, in order.
std::vector<MiteWeek> mitesByWeek(const SeasonBook& book);

/// Mites per 100 bees from which on rule 4.5 cautions, in force that day.
Millionths miteThreshold(const Settings& settings, Day day, bool southern);

enum class MiteVerdict { Below, Open, Above };
/// What a week says of its threshold: below, above, or open where the interval holds it (or there is none).
MiteVerdict verdictOf(const MiteWeek& week);

} // namespace core::rules
