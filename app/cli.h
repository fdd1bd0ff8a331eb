#pragma once

#include "app/commands.h"

#include <QStringList>

namespace app {

/// Which application object the words after the program's name need.
enum class Needs { Console, Pages, Window };
Needs needs(const QStringList& words);

/// Runs the command that the words name. Exit status: 0 done, 1 internal error, 2 wrong usage, 3 `check` found a
/// problem, 4 bad input data, 5 the book or an output cannot be used, 130 stopped (interrupt.h).
int runCli(const QStringList& words, const core::Clock& clock, Streams io);

} // namespace app
