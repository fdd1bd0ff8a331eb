#pragma once

#include "core/base/clock.h"

#include <QStringList>
#include <QTextStream>

namespace app {

/// Whether the words ask for the window: none, or one that is no command and no option.
bool isWindow(const QStringList& words);

/// Opens the window, on the book if one is given, and runs until it is closed. The exit status.
int runWindow(const QStringList& words, const core::Clock& clock, QTextStream& err);

} // namespace app
