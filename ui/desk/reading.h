#pragma once

#include "core/model/snapshot.h"
#include "core/rules/facts.h"
#include "core/rules/plan.h"

#include <map>
#include <optional>
#include <vector>

namespace ui::desk {

/// The book as it stands on one day, and what the rules say of it: read and worked out once, shown by everything.
struct Reading {
    core::Snapshot snapshot;
    std::vector<core::rules::ColonyFacts> facts; ///< one a living colony, in the snapshot's order
    core::rules::Plan plan;                      ///< of all yards

    std::optional<core::ColonyIx> find(core::ColonyId colony) const; ///< living that day
    std::optional<core::YardIx> find(core::YardId yard) const;
    const core::rules::ColonyFacts& factsOf(core::ColonyIx colony) const {
        return facts[static_cast<size_t>(colony.value)];
    }
    std::vector<core::rules::Hold> holdsOf(core::ColonyIx colony) const;
    /// The union that carries or hosts it.
    const core::rules::Union* unionOf(core::ColonyIx colony) const;

    std::map<core::ColonyId, core::ColonyIx> byId; ///< the living
};

/// Throws Error where the rules do.
Reading readingOf(core::Snapshot snapshot);

/// One line of the list of yards: how many hives, and what is to be done.
struct YardLine {
    core::YardId yard;
    QString name;
    int hives = 0;
    QString status; ///< "3 unions · 1 held", "not counted", "nothing to do"
};
std::vector<YardLine> yardLines(const Reading& reading);

} // namespace ui::desk
