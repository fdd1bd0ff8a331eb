#pragma once

#include "core/rules/facts.h"
#include "core/rules/season_book.h"

#include <array>

namespace core::rules {

inline constexpr size_t kFeedKinds = 6; ///< of FeedKind

/// What was given.
struct FeedGiven {
    std::array<qint64, kFeedKinds> millilitres{}; ///< by FeedKind, what was noted by volume
    std::array<qint64, kFeedKinds> decagrams{};   ///< by FeedKind, what was noted by weight
    /// In syrup whose mix is recorded (by mass; volumes at 20 °C, core/rules/calc/syrup), and sugar fed dry by weight.
    double sugarKg = 0;
    int sugarUnknown = 0; ///< feedings of syrup or dry sugar that say not how much sugar was in them
    int colonies = 0;     ///< fed
    int feedings = 0;
};
struct FeedWeek {
    calc::DayRange days;
    FeedGiven given;
};

/// Sugar in one feeding, kg; nullopt where it cannot be known: no mix, no density printed for it, another kind of feed.
std::optional<double> sugarIn(const Feeding& feeding);

/// Weeks with feedings, in order.
std::vector<FeedWeek> feedByWeek(const SeasonBook& book);
/// The whole period.
FeedGiven feedGiven(const SeasonBook& book);

/// What rule 4.12 says is still needed on the plan's day.
struct FeedNeed {
    const Feed* feed = nullptr;
    YardIx yard;
    std::optional<Day> weighed; ///< not set for a union of the plan: both were weighed
};
struct FeedNeeds {
    bool asked = false;           ///< the day lies in the rule's season, in one of the yards
    std::vector<FeedNeed> needs;  ///< in the plan's order
    qint64 shortMillionthsKg = 0; ///< sums of these
    int halfLitres = 0;
    int living = 0;
    int weighed = 0; ///< with a valid weight
};
/// Of the yard, or of all. `plan` is of the same day; it outlives what is returned.
FeedNeeds feedNeeds(const Snapshot& s, std::span<const ColonyFacts> facts, const Plan& plan,
                    std::optional<YardIx> yard);

} // namespace core::rules
