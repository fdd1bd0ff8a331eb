#pragma once

#include "core/rules/day_view.h"
#include "core/rules/nearby.h"
#include "core/rules/plan.h"

#include <span>
#include <vector>

// Rule 4.5: what to mind. Cautions do not bar.

namespace core::rules {

/// Works out once what the cautions of many colonies ask for.
class Cautions {
public:
    explicit Cautions(const DayView& view);

    /// A colony's own, in the order of the kinds.
    std::vector<Caution> of(ColonyIx c) const;
    /// Those of both colonies and the union's own, each kind once.
    std::vector<Caution> of(const Union& united) const;
    /// Those of the colony shaken out, of those it goes to (`hosts`: both of a union) and its own.
    std::vector<Caution> of(const ShakeOut& shaken, std::span<const ColonyIx> hosts) const;

private:
    /// One cause of a caution; an empty text where there is none.
    struct Found {
        QString because;
        Reason why;
    };
    class Reasons;
    Found mites(ColonyIx c) const;
    Found masked(ColonyIx c) const;
    Found signs(ColonyIx c) const;
    Found countBeforeTransfer(ColonyIx c) const;
    Found queenUnknown(ColonyIx c) const;
    Found roomUnknown(const Union& united) const;
    Found lowerHeavier(const Union& united) const;
    Found driftToHeld(ColonyIx emptied) const;

    const DayView& m_view;
    std::vector<NearAfb> m_nearAfb;                 ///< by yard
    std::vector<std::optional<Day>> m_lastTransfer; ///< by living colony: bees or comb went from it or to it
    std::vector<std::vector<ColonyIx>> m_held;      ///< by yard
};

} // namespace core::rules
