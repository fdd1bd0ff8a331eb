#pragma once

#include "core/edit/history.h"

#include <QString>
#include <QStringList>

#include <functional>
#include <optional>
#include <vector>

// Two files of one book: copies that a sync program, a stick or a backup made. They are compared by their histories:
// what both begin with, and what each has since. Nothing is merged here, and neither is called the right one.

namespace core::store {
class Database;
}

namespace core::edit {

enum class BooksStand {
    Alike,      ///< the same history
    HereGoesOn, ///< there lies an older state of here
    ThereGoesOn,
    Parted,   ///< each has edits that the other has not
    Strangers ///< of two books
};

struct BooksCompared {
    BooksStand stand = BooksStand::Alike;
    qint64 shared = 0;                     ///< lines of the history that both begin with
    std::optional<HistoryLine> lastShared; ///< the newest of them
    struct Side {
        qint64 count = 0;               ///< lines that the other has not
        std::vector<HistoryLine> lines; ///< the newest of them, at most kLinesCompared, newest first
        int version = 0;                ///< of the book's tables
    };
    Side here;
    Side there;
    QStringList differ; ///< where the histories are alike: tables whose rows are not, which no edit explains
};
constexpr size_t kLinesCompared = 500;

/// Reads both files, whole histories line by line; older versions too. Throws Error(Book) where one cannot be read.
/// `stopped`: asked now and then; then what is returned says nothing.
BooksCompared compareBooks(const QString& here, const QString& there, const std::function<bool()>& stopped = {});

/// How they stand by the last lines alone: quick.
BooksStand standOf(const store::Database& here, const store::Database& there);

/// The number of the last line of the history; 0 where there is none.
qint64 lastLine(const store::Database& db);

/// Whether both histories have this line, of the same content; of 0 they do.
bool bothHave(const store::Database& here, const store::Database& there, qint64 seq);

} // namespace core::edit
