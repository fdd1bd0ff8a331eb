#pragma once

#include "core/base/clock.h"
#include "core/base/progress.h"
#include "core/edit/history.h"

#include <QDateTime>
#include <QString>
#include <QStringList>

#include <memory>
#include <optional>
#include <vector>

namespace core::store {
class BookCopy;
}

// Backups of a book in a folder: made, kept for their time, compared with the book and put in its place. A book's
// backups are told by their names, its id among them; a file of another name is never touched.

namespace core::edit {

class Session;

struct Backup {
    QString path;
    QString title;  ///< of the book, as it was called then
    QDateTime at;   ///< UTC
    qint64 seq = 0; ///< of the last line of its history
    qint64 bytes = 0;
};

/// Positions of those of `at` (UTC) that need not be kept: kept are the newest ten, the newest of each of the last 30
/// days and the newest of each of the last 12 months, today and this month counted.
std::vector<size_t> outlived(const std::vector<QDateTime>& at, const QDateTime& now);

/// Of the book with this id, newest first. A folder that is not there has none.
std::vector<Backup> backupsIn(const QString& folder, const QString& bookId);

/// Those of any book that had this title, newest first.
std::vector<Backup> backupsTitled(const QString& folder, const QString& title);

/// The backup as this program reads it: itself, or, where an older version made it, a copy in `folder` that was brought
/// up to date; the backup stays as it is. Throws Error(Book).
QString upToDate(const QString& backup, const QString& folder, const Progress& progress = {});

/// The making of one backup, in slices; then those that are outlived go. The folder is made. Given up: nothing is left.
class BackupRun {
public:
    /// Throws Error(Book) where the folder or the copy cannot be made.
    BackupRun(const Session& session, const QString& folder);
    ~BackupRun();
    /// As store::BookCopy::step.
    bool step(int milliseconds);
    double share() const;
    const Backup& made() const { return m_made; } ///< once step() said false

private:
    void clear() const;

    QString m_folder;
    QString m_part;
    QString m_bookId;
    QDateTime m_now;
    Backup m_made;
    std::unique_ptr<store::BookCopy> m_copy;
};

/// Whether no backup of this title holds the book as it is: its id, and its last line.
bool backupNeeded(const Session& session, const QString& folder);

/// What putting a backup in the book's place would change.
struct BackupCompared {
    bool sameBook = false; ///< the id is that of the book
    bool earlier = false;  ///< the book is the backup with further edits: its history begins with the backup's
    QStringList problems;  ///< what check says of the backup
    QDateTime lastEdit;    ///< in the backup, UTC; not valid: none
    int lost = 0;          ///< lines of the book that the backup has not
    std::vector<HistoryLine> lostLines; ///< the newest of them, at most 200
    struct Count {
        QString now;  ///< in the book: "212 visits"
        QString then; ///< in the backup
    };
    std::vector<Count> counts; ///< of records whose number differs
    QStringList holds;         ///< that would go with it (holds_gone.h); none are looked for in one that has faults
};
/// Of an older version too. Throws Error(Book) where the backup cannot be read; Stopped.
BackupCompared compareWith(const Session& session, const QString& backup, const Progress& progress = {});

/// Who puts a backup in the book's place though holds go with that, and why: a correction of the record.
struct PutBack {
    QString by;
    QString reason;
    QStringList holds; ///< that go; empty: not known, the book could not be read
    QDateTime at;      ///< UTC
};

/// The backup becomes the book at `book`, which no one has open; what was there is kept under `aside`. All or nothing:
/// the copy is made, brought up to date where it is of an older version, and checked beside the book before it takes
/// its name. `why`: becomes a line of its history, the holds that went among it; needed where holds go
/// (BackupCompared). Throws Error(Book); Error(BadData): no reason or no name in `why`; BookHeld: by another; Stopped.
void putInPlace(const QString& backup, const QString& book, const QString& aside, const Progress& progress = {},
                const std::optional<PutBack>& why = {});

} // namespace core::edit
