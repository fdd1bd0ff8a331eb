#pragma once

#include "core/edit/session.h"
#include "core/rules/hold_span.h"

#include <map>
#include <optional>
#include <vector>

namespace ui::life {

/// One colony's whole life, read in full for what is drawn of it over time.
struct ColonyLife {
    core::Colony colony;
    QString name;                            ///< that means it on its last day shown
    core::Day last;                          ///< it ended, or the day shown
    std::vector<core::Visit> visits;         ///< by day
    std::vector<core::Lineage> lineage;      ///< on either side, by day
    std::map<core::ColonyId, QString> names; ///< of the others in it
    std::vector<core::Queen> queens;
    std::vector<core::Treatment> treatments;  ///< its own, and of yards while it stood there; by day
    std::vector<core::rules::HoldSpan> holds; ///< empty until they are worked out
    core::Settings settings;
    bool southern = false;
};

/// Up to `on`; nullopt: no such colony, or it began later. Throws Error(Book).
std::optional<ColonyLife> lifeOf(const core::edit::Session& book, core::ColonyId colony, core::Day on);

} // namespace ui::life
