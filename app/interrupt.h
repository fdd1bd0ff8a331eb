#pragma once

#include "core/base/progress.h"

#include <QString>

#include <array>

namespace app {

/// Exit status of a command that was stopped, as shells have it of Ctrl+C.
constexpr int kInterrupted = 130;

/// While it lives, Ctrl+C (and a polite end from elsewhere) asks the long work to stop instead of ending the program;
/// pressed again it ends it. Where standard error is a terminal, a line on it shows how far the work is.
class Interrupt {
public:
    Interrupt();
    ~Interrupt();
    Interrupt(const Interrupt&) = delete;
    Interrupt& operator=(const Interrupt&) = delete;

    core::Progress progress();

private:
    void show(const QString& what, double share);

    bool m_terminal;
    std::array<void (*)(int), 3> m_before{}; ///< what was done with the signals
    qsizetype m_shown = 0;                   ///< letters on the line
};

/// Ends the program by the signal that asked it to stop, so that whoever started it sees that; does nothing where none
/// did.
void endAsAsked();

} // namespace app
