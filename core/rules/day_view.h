#pragma once

#include "core/model/snapshot.h"
#include "core/rules/facts.h"
#include "core/rules/hold.h"
#include "core/rules/hold_evidence.h"
#include "core/rules/value.h"

#include <memory>
#include <optional>
#include <vector>

namespace core::rules {

/// What the plan's rules ask of a yard's half year on the day.
struct YardSeasons {
    bool strength = false;     ///< 4.3
    bool queenTrouble = false; ///< 4.3
    bool reverse = false;      ///< 4.11: 15 March to 31 May
    bool divide = false;       ///< 4.13: 20 April to 15 June
    bool firstHalf = false;    ///< 4.5: January to July
};

/// A snapshot with what the rules before 4.5 say of it: what the plan is judged on. Living colonies only, by index.
struct DayView {
    const Snapshot& s; ///< outlives the view
    std::vector<ColonyFacts> facts;
    std::vector<Hold> holds;
    std::vector<quint16> heldAs;        ///< bit n: held as the n-th HoldKind
    std::vector<YardSeasons> seasons;   ///< by yard
    std::vector<const SnapStay*> place; ///< where it stands on the day
    ValueOf value;
    std::unique_ptr<const Evidence> evidence; ///< what holds rest on; none after a plan

    const ColonyFacts& of(ColonyIx ix) const { return facts[static_cast<size_t>(ix.value)]; }
    const SnapStay& placeOf(ColonyIx ix) const { return *place[static_cast<size_t>(ix.value)]; }
    const YardSeasons& seasonsOf(ColonyIx ix) const { return seasons[static_cast<size_t>(of(ix).yard.value)]; }
    bool held(ColonyIx ix) const { return heldAs[static_cast<size_t>(ix.value)] != 0; }
    bool heldAsKind(ColonyIx ix, HoldKind kind) const {
        return (heldAs[static_cast<size_t>(ix.value)] >> static_cast<int>(kind)) & 1;
    }
    bool southern(ColonyIx ix) const { return s.yard(of(ix).yard).southern(); }
    const QString& name(ColonyIx ix) const { return s.colony(ix).shown; }
    /// E of the colony as it stands: 0 where it lacks a queen; nullopt without a strength.
    std::optional<int> valueAlone(ColonyIx ix) const;
    /// Frames of bees that the boxes of its kind hold, one box.
    Quarters boxRoom(ColonyIx ix) const { return {4 * s.boxKindOf(ix).frames}; }
};

DayView viewOf(const Snapshot& s);
/// The same from what a plan found already, without evidence: for questions after a plan.
DayView viewOf(const Snapshot& s, std::vector<ColonyFacts> facts, std::vector<Hold> holds);

} // namespace core::rules
