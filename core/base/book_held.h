#pragma once

#include "core/base/error.h"

#include <QDateTime>

#include <utility>

namespace core {

/// Who writes a book, as the note beside it tells. Parts may be missing: the note may be an older program's, or torn.
struct BookHolder {
    QString who;     ///< a person's name; empty: not told
    QString host;    ///< the machine's
    QDateTime since; ///< UTC
    QString machine; ///< tells machines of one name apart

    bool operator==(const BookHolder&) const = default;
};

/// A book cannot be written since another window or program has it.
class BookHeld : public Error {
public:
    enum class Known {
        Locked, ///< it runs on this machine, or one whose locks are seen here
        Noted,  ///< only a note tells, of another machine that cannot be asked: it may be at work or gone
    };

    BookHeld(Known what, const QString& userMessage, const QString& detail, BookHolder by)
        : Error(Kind::Book, userMessage, detail), known(what), holder(std::move(by)) {}

    const Known known;
    const BookHolder holder;
};

} // namespace core
