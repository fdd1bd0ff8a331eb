#pragma once

#include "core/base/error.h"

#include <utility>

namespace core {

/// The file at a book's path is not, or no longer as, the one that is open: nothing was written.
class BookReplaced : public Error {
public:
    enum class How {
        Gone,      ///< nothing lies there; what is open can still be read
        Other,     ///< another file lies there; what is open can still be read
        Rewritten, ///< the same file with the content of another: what was open is no more
    };

    BookReplaced(How what, QString openNowAt, const QString& userMessage, const QString& detail)
        : Error(Kind::Book, userMessage, detail), how(what), nowAt(std::move(openNowAt)) {}

    const How how;
    const QString nowAt; ///< where the file that is open lies by now; empty: nowhere any more, it was deleted
};

} // namespace core
