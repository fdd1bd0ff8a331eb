#pragma once

#include "core/edit/session.h"
#include "core/edit/undo_stack.h"
#include "core/store/database.h"
#include "core/store/history_rows.h"

#include <functional>

namespace core::edit {

struct Session::Private {
    std::unique_ptr<store::Database> db;
    const Clock* clock = nullptr;
    QString author;
    QString bookId;
    Progress progress;                    ///< of what is written
    mutable std::optional<UndoTops> tops; ///< of the history as it stands; forgotten with each write

    QDateTime since;                  ///< when it was opened, UTC
    std::optional<qint64> othersSeen; ///< the others' version that was last told of
    std::optional<HistoryLine> last;  ///< of the history, as it was last written or read

    /// The book from now on. Says beside it who writes it.
    void begin(std::unique_ptr<store::Database> opened);
    void sign() const;
    bool takeFileThere();
    /// Throws Error(Book) where this session only reads.
    void needWritable() const;
    /// Before each write: the file at the path is the one that is open, and answers. The same book, put back as another
    /// file, is opened again. Throws Error(Book).
    void needFile();
    bool openAgain();
    /// A line is written: what was known of the history is no more.
    void wrote(const HistoryLine& line);
    const UndoTops& undoTops() const;

    /// Within the caller's transaction: guard, rows and line; `written` looks at what is written before the guard does.
    /// The transaction is then to be committed.
    HistoryLine write(const ChangeSet& change, store::HistoryKind kind, std::optional<qint64> of,
                      const std::optional<Correction>& why, const std::function<void()>& written = {});
    /// It can no longer be stopped then, and that is told.
    void commit(store::Transaction& transaction) const;
};

HistoryLine shownLine(const store::HistoryRow& row);

} // namespace core::edit
