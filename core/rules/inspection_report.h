#pragma once

#include "core/model/rows.h"
#include "core/model/snapshot.h"
#include "core/rules/calc/clustered.h"
#include "core/rules/facts.h"
#include "core/rules/hold.h"
#include "core/rules/kit_piles.h"
#include "core/rules/ledger.h"

#include <optional>
#include <vector>

// What an inspector asks of a period and some yards: where colonies stood, what was seen and done, what was lost.
// Sources of what is asked for: Australian Honey Bee Industry Biosecurity Code of Practice, part B (dates of
// inspections, strength, pests and how they were found, actions, honey tests, movements, bees and hives brought in,
// training); WOAH Terrestrial Animal Health Code art. 4.14.3 (places, mean number of colonies, owner); Goodwin and Van
// Eaton, Elimination of AFB without the use of drugs, ch. 8 (what a report of American foulbrood holds).

namespace core::rules {

/// The rows of a period, read once (edit/inspection_rows.h).
struct InspectionBook {
    Day from;                  ///< the first day; the last is that of `s`
    Snapshot s;                ///< all yards, as known on the last day
    std::vector<YardIx> yards; ///< asked for; ascending
    // Of these days and all colonies, by day.
    std::vector<Visit> visits = {};
    std::vector<Transfer> transfers = {};
    std::vector<Lineage> lineage = {};
    std::vector<Result> results = {};
    std::vector<Treatment> treatments = {};
    std::vector<MiteFall> falls = {};
    std::vector<Sample> samples = {}; ///< taken in these days, or before and without an answer now
    std::vector<Result> answers = {}; ///< of the samples, whatever their day
    std::vector<KitPile> kit = {};    ///< kept apart, as the book counts it now: it keeps no days of that
    std::vector<KitEnd> kitEnds = {};
    std::vector<Colony> begun = {}; ///< in these days, with their notes
    std::optional<Keeper> keeper = {};
};

/// What became of the number of colonies of a yard, or of all that were asked for.
struct YardOverTime {
    std::optional<YardIx> yard; ///< not set: all together
    LedgerCount count;          ///< carried from one yard asked for to another: in and out of each
    double mean = 0;            ///< colonies a day, counted as each day ends
    /// Dead and destroyed of those at risk (COLOSS BEEBOOK vol. II, epidemiology 1.3.3.1); united, shaken out, sold and
    /// carried away are no losses and not at risk. Not set: none was at risk.
    std::optional<calc::Counted> lost;
};

/// One row of the book, where the colony stood on its day.
struct SeenAt {
    ColonyIx colony;
    YardIx yard;
    size_t row = 0; ///< its position in the InspectionBook's rows
};

/// The visits of a day in a yard.
struct VisitDay {
    Day day;
    YardIx yard;
    int visited = 0; ///< colonies
    int checked = 0; ///< of them, brood examined for disease
    QStringList by;  ///< each name once, in the order of the rows
};

/// Hives carried from one yard to another on a day.
struct HiveMove {
    Day day;
    YardIx from, to;
    std::vector<ColonyIx> colonies; ///< natural order
};

/// A colony that began in the period, or ended in it.
struct Began {
    Day day;
    ColonyIx colony;
    YardIx yard;
    std::optional<ColonyIx> dividedFrom; ///< not set: brought in, a swarm, or new in the book
};
struct Ended {
    Day day;
    ColonyIx colony;
    YardIx yard;
    EndKind how = EndKind::Dead;
};

/// A row between two colonies, of which one at least stood in the yards.
struct Between {
    size_t row = 0;
    ColonyIx from, to;
};

/// A find of foulbrood: a sign seen, or a positive.
struct FoulbroodFind {
    Day day;
    ColonyIx colony;
    YardIx yard;
    Disease disease = Disease::Afb;
    std::optional<Method> method; ///< of a positive; not set: seen at a visit
    int hives = 0;                ///< standing in the yard that day
};

/// All by day, then yard, then colony, where nothing else is said.
struct Inspection {
    std::vector<YardOverTime> yards; ///< in their order; then all together, where there are two or more
    std::vector<ColonyIx> living;    ///< in the yards on the last day: by yard, then natural order
    std::vector<VisitDay> visitDays;
    std::vector<SeenAt> visits;      ///< all of them
    std::vector<SeenAt> checks;      ///< visits that examined brood
    std::vector<ColonyIx> unchecked; ///< living there on the last day, no brood examined in the period
    std::vector<SeenAt> signs;       ///< visits with a sign
    std::vector<FoulbroodFind> finds;
    std::vector<size_t> results;    ///< that name a yard asked for, or a colony that stood or had ended there
    std::vector<size_t> treatments; ///< the same
    std::vector<HiveMove> moves;
    std::vector<Between> transfers, lineage;
    std::vector<Began> began;
    std::vector<Ended> ended;
    std::vector<SeenAt> miteSamples; ///< visits with mites and bees
    std::vector<SeenAt> falls;
    std::vector<SeenAt> samples;
    std::vector<Hold> holds;        ///< on the last day, of those living in the yards; by yard, colony, kind
    std::vector<ColonyFacts> facts; ///< of all living ones, by ColonyIx
};

/// Pure.
Inspection inspect(const InspectionBook& book);

} // namespace core::rules
