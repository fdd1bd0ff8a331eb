#pragma once

#include "core/base/clock.h"
#include "core/base/error.h"
#include "core/base/progress.h"
#include "core/edit/backups.h"
#include "core/model/row.h"

#include <QString>
#include <QStringList>

#include <memory>
#include <optional>
#include <vector>

// What can be read of a damaged book, put into a new one. The damaged file is never written. Three things are asked of
// each row: the file itself, the history, the newest sound backup; a row is taken where its page is whole, or where the
// history or the backup says it and nothing later can be missing. What is lost is named. No disease hold is lost by it:
// where a record that holds rest on may be missing, every living colony gets one more record that holds it (a brood
// in doubt, rule 4.4.12) until a brood check or a finding lifts that.

namespace core::edit {

struct SalvageFrom {
    QString damaged;
    QString backup;       ///< a sound copy of the same book; empty: looked for below
    QString backupFolder; ///< where backups lie; empty: none is looked for
    QString to = {};      ///< where the new book is to be, where that is known before
};

/// What became of the rows of one table.
struct SalvagedTable {
    Table table = Table::Visit;
    qint64 kept = 0;        ///< in the new book, all in all
    qint64 fromHistory = 0; ///< of these: not to be read in their table, but in the history
    qint64 fromBackup = 0;
    qint64 against = 0;   ///< taken though they may have been taken back since: they speak against a hive
    qint64 added = 0;     ///< of the new book: in the place of what is lost, or held for doubt
    qint64 leftOut = 0;   ///< read, and not in the new book: what it belonged to is lost
    qint64 lost = 0;      ///< known to have been there
    bool mayLack = false; ///< others may be lost that nothing tells of
    qint64 disputed = 0;  ///< of whole pages, and the history says otherwise or nothing: one of the two is of before
};

/// What was read, what is missing, and what was done about it.
struct SalvageAccount {
    QString damaged; ///< file name
    Day day;
    QString wrong;                ///< one sentence: what is wrong with the book
    std::optional<Backup> backup; ///< the one that was used
    qint64 sinceBackup = 0;       ///< changes made after it, as far as the history can be read
    QStringList sinceBackupLines; ///< the newest of them
    QString backupRefused;        ///< why another was not
    std::vector<SalvagedTable> tables;
    QStringList lost;   ///< which records: of which hives, when, one sentence each
    QStringList mended; ///< what stands in the place of what is lost
    QStringList leftOut;
    bool historyKept = false;
    qint64 linesKept = 0;
    qint64 linesMissing = 0; ///< known ones
    bool linesEndUnknown = false;
    int tornTexts = 0;    ///< files of imports, kept with the history, that are lost (known once the book is made)
    int held = 0;         ///< living colonies held for what may be missing
    QStringList problems; ///< what the check of the new book says; empty: it is in order

    bool nothingLost() const;
};

/// The account as text, for people: "What could be read of ... ".
QString accountText(const SalvageAccount& account);

class Salvage {
public:
    /// Reads and puts together, in a folder of its own. Throws Error(Book): the file cannot be opened, is another
    /// program's or a newer one's, nothing can be read, or no new book can be made at `from.to`; BookHeld; Stopped.
    static std::unique_ptr<Salvage> read(const SalvageFrom& from, const Clock& clock, const Progress& progress = {});
    ~Salvage();

    const SalvageAccount& account() const;
    /// Makes the new book at `to`, checked, and the account beside it as text; both whole or not at all. Returns the
    /// account's path. Throws Error(Book) where `to` exists or cannot be made; Stopped.
    QString write(const QString& to, const Progress& progress = {});

private:
    struct Private;
    explicit Salvage(std::unique_ptr<Private> d);
    std::unique_ptr<Private> d;
};

/// Whether what opening or reading the file said means that it is a book, or was one, of which some may be read: it is
/// damaged, or no book in spite of its name.
bool mayBeSalvaged(const Error& said, const QString& path);

} // namespace core::edit
