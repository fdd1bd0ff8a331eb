#pragma once

#include "tests/ui/book_of_test.h"

#include <QString>

namespace tests::reliability {

/// Works in the real window by simulated mouse and keys until it is killed: types visits key by key, saves them, leaves
/// them half typed, throws them away, carries hives, undoes and redoes; backups are made meanwhile. Says on `out`, a
/// line of words each:
///   shown COLONY NOTE    half typed when the window had opened, one each
///   ready                they were all
///   typing COLONY NOTE   the window has taken the key (NOTE: what the note says; empty: "-")
///   saving COLONY        Enter is about to be pressed
///   saved LINE           the window has saved it; LINE: its number in the history
///   leaving COLONY       what is typed is about to be thrown away, or taken back in part
/// A window that shows an error ends the process with 4.
[[noreturn]] void typeUntilKilled(const QString& book, const FixedClock& clock, unsigned seed, int out);

} // namespace tests::reliability
