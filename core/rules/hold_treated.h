#pragma once

#include "core/rules/hold_days.h"
#include "core/rules/hold_standing.h"

namespace core::rules {

/// Rule 4.4.3, *treated*: by an antibiotic of its own or of its yard, or through bees or comb of a treated colony.
class Treated {
public:
    Treated(const Snapshot& s, const Gifts& gifts, const Standing& standing);
    /// The latest day on which it was treated, as far as that had reached it by `day`.
    std::optional<Day> latestKnown(ColonyIx colony, Day day) const;
    /// Whether it was treated on one of the `days` days before `day`, or on `day`.
    bool within(ColonyIx colony, Day day, int days) const;
    /// Whether it was treated on a day from `first` to `last`, by whatever it had received up to `known`.
    bool everWithin(ColonyIx colony, Day first, Day last, Day known) const;

private:
    struct Step { // from `known` on, the latest treated day is `treated`
        qint32 colony;
        Day known;
        Day treated;
    };
    void spread(const std::vector<std::pair<qint32, Day>>& own);

    const Gifts& m_gifts;
    Day m_on;
    size_t m_colonies;
    DaysBy m_own;
    std::vector<Step> m_steps; // by colony, then known
};

} // namespace core::rules
