#pragma once

#include "core/rules/colony_figures.h"
#include "ui/desk/reading.h"

#include <QString>

#include <optional>

namespace ui::find {

enum class ColonyColumn {
    Label,
    Yard,
    Stand,
    Frames,
    Class,
    Queen,
    Born,
    Stores,
    Weight,
    Weighed,
    Visited,
    Days,
    Check,
    Mites,
    Holds,
    Boxes,
    Due,
    Ended,
    Asked
};
constexpr int kColonyColumns = 19;

QString columnTitle(ColonyColumn column);
bool isNumber(ColonyColumn column); ///< stands at the right

/// "—" where nothing is recorded or there is none.
QString cellText(const desk::Reading& reading, const core::rules::ColonyFigures& figures, ColonyColumn column);
/// What it is sorted by; nullopt: nothing recorded, which comes last. Not of the stand, whose name is sorted as it is.
std::optional<double> sortValue(const desk::Reading& reading, const core::rules::ColonyFigures& figures,
                                ColonyColumn column);

} // namespace ui::find
