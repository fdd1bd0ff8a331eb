#pragma once

#include "core/base/book_held.h"

#include <QByteArray>

namespace core::store {

/// What a writer leaves in the file `BOOK-lock` for others to read. On one machine the lock alone decides who writes;
/// a folder that is carried between machines carries the note and not the lock.
QByteArray noteOf(const BookHolder& holder);

/// Never fails: what is not understood is left out, and no part is longer than a line of a window.
BookHolder holderIn(const QByteArray& note);

/// Another name for each machine, which tells nobody which it is; empty where this one has no number of its own.
QString thisMachine();

/// Whether another machine wrote it. What names none did not.
bool ofAnotherMachine(const BookHolder& holder);

/// The most of a note that is read, in bytes.
constexpr qint64 kLongestNote = 1024;

} // namespace core::store
