#pragma once

#include "core/rules/hold_treated.h"

namespace core::rules {

/// Rule 4.4.3: clean, full and lifting brood checks.
class Checks {
public:
    Checks(const Snapshot& s, const Settings& limits, const Treated& treated);
    std::span<const SnapCheck> of(ColonyIx colony) const;
    bool clean(const SnapCheck& check) const;
    bool full(const SnapCheck& check) const;
    bool masked(const SnapCheck& check) const;
    /// The latest clean check in [first, last].
    const SnapCheck* latestClean(ColonyIx colony, Day first, Day last) const;
    /// Whether a full check that no antibiotic masks lies in [first, last].
    bool liftingWithin(ColonyIx colony, Day first, Day last) const;
    /// Whether a full check lies in [first, last], not 0 to `treatedDays` days after a day on which it was treated.
    bool fullWithin(ColonyIx colony, Day first, Day last, int treatedDays) const;

private:
    template <class Fits> const SnapCheck* latest(ColonyIx colony, Day first, Day last, Fits fits) const;

    const Snapshot& m_snapshot;
    const Settings& m_limits;
    const Treated& m_treated;
    std::vector<qint32> m_start;
};

} // namespace core::rules
