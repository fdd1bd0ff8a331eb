#pragma once

#include "core/model/rows.h"
#include "core/model/snapshot.h"
#include "core/rules/calc/mites_change.h"
#include "core/rules/mite_fall.h"

#include <map>
#include <optional>
#include <span>
#include <vector>

// Mites before and after a treatment, by washes and, kept apart, by natural fall. A change says nothing of its cause:
// colonies that were not treated stand beside, where there are any.

namespace core::rules {

// Own windows, assumptions: the latest wash in so many days before the first day of the treatment or on it, the first
// one in these days after its last.
inline constexpr int kBeforeTreating = 45;
inline constexpr int kAfterFirst = 14;
inline constexpr int kAfterLast = 60;

/// Natural fall of the same colonies before and after.
struct FallenTwice {
    int colonies = 0;
    double before = 0; ///< mites a day, the mean of the colonies
    double after = 0;
};

/// The colonies of one yard that got one product on one day.
struct TreatmentSeen {
    Treatment treatment; ///< the first of its rows
    YardIx yard;
    TreatedDays days;                       ///< the last: of the colony treated longest
    bool daysKnown = false;                 ///< recorded, or taken out; else it counts as that day alone
    int treated = 0;                        ///< colonies
    std::optional<calc::MiteChange> washes; ///< of those treated that were washed before and after
    int mixed = 0;                          ///< washed so, but treated otherwise too between the two washes: left out
    std::optional<calc::MiteChange> untreated; ///< of others, washed on the same days and not treated in between
    std::optional<FallenTwice> fallen;
    int boardsDuring = 0;    ///< counts of what fell while it worked: no natural fall
    double fallenDuring = 0; ///< mites a day, their mean
};

struct TreatmentBook {
    const Snapshot& s;
    Day from;                                   ///< treatments from that day on
    std::optional<YardIx> yard = {};            ///< treatments of one yard
    std::span<const Visit> visits = {};         ///< with washes, from kBeforeTreating days earlier on; by day
    std::span<const MiteFall> falls = {};       ///< the same
    std::span<const Treatment> treatments = {}; ///< all
    std::span<const StripsOut> out = {};
};

/// Treatments against mites (againstMites), the latest first.
std::vector<TreatmentSeen> treatmentsSeen(const TreatmentBook& book);

/// The days on which each colony was treated against mites, by its id.
std::map<ColonyId, std::vector<TreatedDays>> treatedByColony(const TreatmentBook& book);

} // namespace core::rules
