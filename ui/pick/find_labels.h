#pragma once

#include "ui/desk/reading.h"

#include <QString>

#include <optional>
#include <vector>

namespace ui::pick {

/// A living colony whose label holds what was typed.
struct Found {
    core::ColonyId colony;
    QString label;     ///< as it is shown
    bool here = false; ///< in the yard shown
    QString yard;      ///< where it stands; empty: nowhere
    int rank = 0;      ///< 0 the very label, 1 begins so, 2 holds it
};

/// Case folds. Those of the yard `here` come first, then those of other yards whose label is or begins so; the very
/// label before what begins so, that before what holds it, each in natural order. Nothing typed: nothing found.
std::vector<Found> findLabels(const desk::Reading& reading, std::optional<core::YardIx> here, const QString& typed);

} // namespace ui::pick
