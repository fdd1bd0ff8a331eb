#pragma once

#include "core/base/shown_units.h"
#include "core/edit/bulk_change.h"
#include "ui/bulk/common.h"
#include "ui/form/judge.h"

#include <functional>
#include <vector>

// The fields of visits that are changed, or written, together; in the order of the tally sheet.

namespace ui::bulk {

/// One figure of a visit: how it is shown, and how it is read into what is written. `read` false: it cannot be read.
struct VisitFigure {
    form::Field field;
    std::function<QString(const core::Visit&)> typed;
    std::function<bool(const QString&, core::edit::VisitPut&)> read; ///< of an empty text: not recorded
    QString expected;                                                ///< where it cannot be read
    std::function<QString(const QString&)> shown = {};               ///< of a choice: its words
};
std::vector<VisitFigure> visitFigures(core::WeightUnit unit);

} // namespace ui::bulk
