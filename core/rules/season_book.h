#pragma once

#include "core/model/rows.h"
#include "core/model/snapshot.h"
#include "core/rules/calc/range.h"

#include <optional>
#include <span>
#include <unordered_map>
#include <vector>

// What the figures of a season rest on, and what they share: weeks, and where colonies stood.

namespace core::rules {

/// The rows of a period, read once. All of it outlives the figures' making.
struct SeasonBook {
    Day from;               ///< the first day; the last is that of `s`
    const Snapshot& before; ///< of the day before `from`
    const Snapshot& s;
    std::optional<YardIx> yard = {}; ///< of `s`; not set: all yards
    /// From `from` to the last day, by day: at least all of every colony that stood in the yard meanwhile, also those
    /// made elsewhere. Others are passed over.
    std::span<const Visit> visits = {};
    std::span<const Feeding> feedings = {}; ///< the same
};

/// Weeks end on Sundays; the first begins on `from`, the last ends on `until`. None where `until` lies before `from`.
std::vector<calc::DayRange> weeksBetween(Day from, Day until);
/// Position of the week that holds the day. The day lies in one of them.
size_t weekOf(const std::vector<calc::DayRange>& weeks, Day day);

/// Where colonies stood on any day up to the snapshot's (rule 4.0: on the day of a carry in the new yard).
class ColonyPlaces {
public:
    explicit ColonyPlaces(const Snapshot& s);

    std::optional<ColonyIx> find(ColonyId id) const;
    /// Of a colony living that day; nullopt for one that is not.
    std::optional<YardIx> livingIn(ColonyIx c, Day day) const;
    /// The last yard it had come to by that day, whether or not it lives; nullopt before its first day.
    std::optional<YardIx> yardOn(ColonyIx c, Day day) const;

private:
    const Snapshot& m_s;
    std::unordered_map<qint64, ColonyIx> m_byId;
};

/// Whether the colony stood in the yard, or there is none chosen. False: it is in no figure.
bool stoodThere(const SeasonBook& book, ColonyIx c);

} // namespace core::rules
