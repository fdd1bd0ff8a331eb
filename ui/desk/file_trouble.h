#pragma once

#include "core/base/book_held.h"
#include "core/base/clock.h"
#include "core/base/error.h"

#include <QString>

namespace ui::desk {

/// What became of an open book's file in the hands of others, so that nothing can be written.
struct FileTrouble {
    enum class Kind {
        None,
        Gone,      ///< nothing lies at its path
        Other,     ///< another file lies there
        Rewritten, ///< another program wrote over it
        Noted,     ///< a note from another machine came, which says that the book is open there
        Held       ///< another window has come to write it
    };

    Kind kind = Kind::None;
    QString sentence; ///< to say
    QString nowAt;    ///< Gone, Other: where the open file lies by now; empty: nowhere any more
};

/// None where the error is of another kind.
FileTrouble troubleOf(const core::Error& error, const core::Clock& clock);

/// "Ana on barn-laptop has this book open since 14:05: here it can only be read."
QString heldSentence(const core::BookHeld& held, const core::Clock& clock);

} // namespace ui::desk
