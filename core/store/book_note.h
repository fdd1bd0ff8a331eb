#pragma once

#include "core/base/book_held.h"

#include <QByteArray>

namespace core::store {

/// What a writer leaves in the file `BOOK-lock` for others to read. It is read only where the lock itself is held; it
/// never decides whether it is.
QByteArray noteOf(const BookHolder& holder);

/// Never fails: what is not understood is left out, and no part is longer than a line of a window.
BookHolder holderIn(const QByteArray& note);

/// The most of a note that is read, in bytes.
constexpr qint64 kLongestNote = 1024;

} // namespace core::store
