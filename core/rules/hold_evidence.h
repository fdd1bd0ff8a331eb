#pragma once

#include "core/rules/hold_checks.h"
#include "core/rules/hold_findings.h"

namespace core::rules {

inline constexpr size_t kMostChains = 12; ///< of gifts, told in one reason
inline size_t position(ColonyIx colony) { return static_cast<size_t>(colony.value); }

/// The limits of rule 4.4 in force: never laxer than the defaults, whatever the book says.
Settings strictLimits(const Settings& settings);

/// All that the holds of one day rest on, put in order once. Keeps a reference to the snapshot.
struct Evidence {
    explicit Evidence(const Snapshot& snapshot);
    Evidence(const Evidence&) = delete;
    Evidence& operator=(const Evidence&) = delete;

    const Snapshot& s;
    const Settings limits;
    const Gifts gifts;
    const Standing standing;
    const Findings findings;
    const Treated treated;
    const Checks checks;
};

} // namespace core::rules
