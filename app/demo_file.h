#pragma once

#include "core/base/clock.h"
#include "core/base/progress.h"
#include "demo/demo_book.h"

#include <QString>

namespace app {

/// A book of the demo at `path`, whole or not there. Throws Error(Book) where there is a file of that name or it cannot
/// be written; Stopped.
void makeDemo(const QString& path, const core::Clock& clock, const demo::DemoSize& size,
              const core::Progress& progress);

} // namespace app
