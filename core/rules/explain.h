#pragma once

#include "core/model/snapshot.h"
#include "core/rules/reason.h"

#include <QString>

#include <optional>
#include <vector>

namespace core::rules {

/// One part of rule 4.7 that stands against a union, with its facts.
struct Objection {
    QString rule; ///< "4.7.2"
    QString because;
    Reason why = {};
};

/// Whether two colonies may unite (rule 4.7), and what of it.
struct Explanation {
    std::vector<Objection> objections; ///< empty: they may
    std::optional<int> gain;           ///< thousandths, where both have a strength
    std::optional<ColonyIx> moved;     ///< which of them is carried, where they may
    QString summary;                   ///< one sentence: the union and its reasons, or what stands against it
    Reason why = {};                   ///< of a union that may be
};
Explanation explain(const Snapshot& s, ColonyIx a, ColonyIx b);

struct DayView;
/// The same of a view made before, for many pairs of one day.
Explanation explain(const DayView& view, ColonyIx a, ColonyIx b);

} // namespace core::rules
