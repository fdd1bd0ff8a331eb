#pragma once

#include "core/rules/facts.h"
#include "core/rules/plan.h"

#include <optional>
#include <span>
#include <vector>

namespace core::rules {

/// What lists show of one colony on the day, and questions ask for. Not recorded is not set, never 0.
struct ColonyFigures {
    ColonyIx colony;
    std::optional<YardIx> yard; ///< of an ended colony the last
    const SnapStay* place = nullptr;
    bool living = true; ///< of an ended one nothing below is set
    std::optional<Day> visited;
    int daysUnvisited = 0; ///< since the last visit; without one since the colony began
    std::optional<Quarters> strength;
    std::optional<StrengthClass> strengthClass;
    QueenSeen queen = QueenSeen::Unknown; ///< by 4.2
    std::optional<int> queenBorn;
    std::optional<int> queenAge;    ///< the day's year less hers
    std::optional<Quarters> stores; ///< of all brood boxes noted, valid
    std::optional<Decagrams> gross; ///< the last weighing, however old
    std::optional<Day> weighed;
    std::optional<Day> checked;     ///< the last clean brood check (4.4.3)
    bool checkCounts = false;       ///< not held as brood-not-checked (4.4.10)
    std::optional<Day> checkUntil;  ///< the last day on which that check counts, where nothing else happens
    bool checkedThisSeason = false; ///< since the season of 4.4.10 began
    std::optional<SnapMites> mites; ///< the last sample, however old
    quint16 holds = 0;              ///< bit n: held as the n-th HoldKind
    int boxes = 1;
    std::optional<DueKind> due; ///< the next check due (4.14)
    std::optional<Day> dueOn;

    bool held() const { return holds != 0; }
    bool heldAs(HoldKind kind) const { return (holds >> static_cast<int>(kind)) & 1; }
    std::optional<double> mitesPer100() const;
};

/// One a colony, ended ones too, in the snapshot's order. `facts`, `holds` and `due`: of all yards, of that day.
std::vector<ColonyFigures> colonyFigures(const Snapshot& s, std::span<const ColonyFacts> facts,
                                         std::span<const Hold> holds, std::span<const Due> due);

} // namespace core::rules
