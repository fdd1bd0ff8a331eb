#pragma once

#include "core/edit/change_set.h"
#include "core/edit/edits.h"

#include <optional>
#include <vector>

// What all edits that carry hives have in common.

namespace core::edit {

/// A hive on its way: where it stands now, and where it is to stand.
struct OnTheWay {
    Colony colony;
    Placement open; ///< its present place
    Stand stand;
    std::optional<Placement> today;  ///< `open`, when it is a carry of the day asked for
    std::optional<Placement> before; ///< of `today`: where it stood before that carry
    CarryTo to;

    bool staysInYard() const { return stand.yard == to.yard; }
    bool movesNowhere() const { return staysInYard() && stand.at == to.to; }
};

/// Refuses (Error(BadData)) where the colony, its life, the day, the yard or the heading stand against it.
OnTheWay onTheWay(const EditContext& c, const CarryTo& carry);

/// The rows that set them all down, of one day: those that go make room for those that come. Refuses where another
/// hive stands, or where two of them would stand nearer than kStandApartMm.
std::vector<RowChange> setDown(const EditContext& c, const std::vector<OnTheWay>& hives);

/// ChangeSet::against of carries from yard to yard; not set where all stay in their yards.
std::function<QString(const EditContext&)> againstYards(const std::vector<OnTheWay>& hives);

} // namespace core::edit
