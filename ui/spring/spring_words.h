#pragma once

#include "core/rules/divide_dates.h"
#include "core/rules/divide_work.h"

#include <QCoreApplication>
#include <QString>

#include <optional>

namespace ui::spring {

/// Translation context of divides in the window.
struct Spring {
    Q_DECLARE_TR_FUNCTIONS(Spring)
};

QString queensText(core::DivideQueens queens); ///< "sealed queen cells"
/// "cell open"
QString checkText(core::rules::DivideCheckKind what);
/// "stand 12, 2.0 m north", "a new stand, 1.0 m east".
QString placeText(const core::rules::NewPlace& place, core::MmPoint mother, core::LengthUnit unit);

} // namespace ui::spring
