#pragma once

#include "core/edit/change_set.h"
#include "core/edit/history_codec.h"
#include "core/model/medicine_change.h"
#include "core/store/database.h"
#include "core/store/history_rows.h"

#include <QStringList>

#include <vector>

// Which lines of the history altered an entry of the medicine book, removed it or put it back: an index over the
// history (table medicine_line), never a record of its own.

namespace core::edit {

/// Notes line `seq` for each treatment that it altered, removed or, where it undoes or does again, put back. Within the
/// transaction that wrote the line.
void noteMedicine(const store::Database& db, qint64 seq, store::HistoryKind kind, const ChangeSet& change);

/// Makes the index of a book of an earlier version from its history, once; nothing where that was done.
void makeMedicineLines(const store::Database& db);

/// Reads of the history what makeMedicineLines would; throws Damaged where it cannot be read.
void needMedicineLines(const store::Database& db);

/// What those lines did, by treatment, then line. Of a book whose index was not made yet, from the history.
std::vector<MedicineChange> medicineChanges(const store::Database& db);

/// Where the index and the history do not agree, either way; one sentence each.
QStringList medicineLineProblems(const store::Database& db);

} // namespace core::edit
