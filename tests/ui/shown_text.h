#pragma once

#include "ui/window/main_window.h"

#include <QStringList>

namespace tests {

/// All that a window shows, as text, a line each: yards, table of hives, drawing, the record list of the card, and
/// what would be undone. Two windows on one book show the same.
QStringList shownIn(const ui::window::MainWindow& window);

} // namespace tests
