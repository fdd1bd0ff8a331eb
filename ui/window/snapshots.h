#pragma once

#include "core/base/day.h"

#include <QString>
#include <QStringList>

namespace ui::window {

/// The program's own pictures of its window at 1440 × 900, as PNG into `folder`, made where it is missing: yard plan
/// and merge day, light and dark, the yard on a past day, its survey, the colony card, the table, the visit form, the
/// history, the settings and a first row of hives. A copy of the book is opened on `on` as if it were today; needs a
/// QApplication. The paths written. Throws Error(Book).
QStringList saveScreenshots(const QString& book, core::Day on, const QString& folder);

} // namespace ui::window
