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

    bool operator==(const BookHolder&) const = default;
};

/// A book cannot be opened for writing since another window or program has it.
class BookHeld : public Error {
public:
    BookHeld(const QString& userMessage, const QString& detail, BookHolder by)
        : Error(Kind::Book, userMessage, detail), holder(std::move(by)) {}

    const BookHolder holder;
};

} // namespace core
