#pragma once

#include "core/base/progress.h"
#include "ui/dialogs.h"

#include <QString>

#include <functional>

namespace ui::window {

class MainWindow;

/// Makes an invented book at the path, whole or not at all; runs beside the window. Throws Error, Stopped.
using DemoMaker = std::function<void(const QString& path, const core::Progress& progress)>;

/// Where no book is open, the window offers to make an invented one and opens it.
void offerDemo(MainWindow& window, Dialogs& dialogs, DemoMaker make);

} // namespace ui::window
