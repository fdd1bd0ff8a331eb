#pragma once

#include "core/base/clock.h"
#include "core/base/progress.h"
#include "core/edit/session.h"
#include "core/exchange/fault.h"
#include "core/exchange/file_kind.h"
#include "core/exchange/mapping.h"

#include <QString>

#include <array>
#include <optional>
#include <vector>

namespace core::exchange {

struct ImportFile {
    FileKind kind = FileKind::Yards;
    QString path;
    std::optional<Mapping> mapping = {}; ///< how another program's file becomes one of ours; of the same kind
};

/// Where the reading of the files and the checking of their rows end on the way of an import; measured on a million
/// visits: reading and writing take about as long.
constexpr double kRead = 0.35;
constexpr double kChecked = 0.45;

/// What one import reads. The order of files means nothing.
struct ImportFiles {
    std::vector<ImportFile> files;
    QString mapping; ///< name of a mapping kept in the book, for the files of its kind; empty: the columns as they are
    /// A row whose key the book has and that says otherwise is left out, and counted, instead of a fault. Not one that
    /// names a sign of foulbrood or doubtful brood which the book does not have.
    bool leaveOutOtherwise = false;
    Progress progress = {}; ///< may stop it
};

/// One cell of a row whose key the book has, where the two say otherwise; blank where nothing is recorded.
struct Difference {
    QString file;
    qint64 line = 1;
    QString column; ///< as in the file
    QString name;   ///< of the row: "A7 2026-05-01"
    QString given;
    QString stored;
};

/// What became of the rows of one kind.
struct KindCount {
    qint64 added = 0;
    qint64 changed = 0;    ///< an `ended` and `end` filled in, a setting changed
    qint64 passedOver = 0; ///< equal to what the book has
};

struct ImportReport {
    Faults faults;
    std::array<KindCount, kFileKindCount> counts{}; ///< by FileKind; what was written, or would be by a dry run
    std::optional<edit::HistoryLine> line;          ///< not set where nothing was written
    static constexpr size_t kMostDifferences = 500;
    std::vector<Difference> differences; ///< the first of them
    qint64 otherwise = 0;                ///< rows that say otherwise than the book
    bool stopped = false;                ///< by whom it told its progress; nothing was written

    bool good() const { return faults.none() && !stopped; }
    const KindCount& of(FileKind kind) const { return counts[static_cast<size_t>(kind)]; }
    /// "visits: 120 new, 3 passed over", one line a kind that had rows.
    QStringList summary() const;
};

/// Reads all files, checks them against each other and the book, then writes them as one undoable edit: all or
/// nothing. With faults, or on a dry run, nothing is written. Throws Error(BadData) for an unknown mapping or one
/// of a kind that no file is of, Error(Book) where the book fails. A file that cannot be read is a fault.
ImportReport importFiles(edit::Session& session, const ImportFiles& files, bool dryRun);

/// The same for the book at `bookPath`, which is made where it is missing: whole or not at all (on a dry run a missing
/// book counts as empty and stays missing).
ImportReport importIntoBook(const QString& bookPath, const Clock& clock, const ImportFiles& files, bool dryRun);

} // namespace core::exchange
