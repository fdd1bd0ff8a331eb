#pragma once

#include "core/model/note_found.h"
#include "core/model/row.h"
#include "core/store/database.h"

#include <optional>
#include <vector>

// The words of all notes (table note_words, FTS5): written with the notes, in the same transaction.

namespace core::store {

/// The notes of a table; nullopt: it has none that are searched.
std::optional<NoteOf> notesOf(Table table);
Table tableOfNotes(NoteOf of);

/// After one row was written.
void wordsOfRow(const Database& db, const RowChange& change);
/// After a range of rows was inserted.
void wordsOfNewRange(const Database& db, Table table, qint64 firstId, qint64 count);
/// Before a range of rows is deleted.
void dropWordsOfRange(const Database& db, Table table, qint64 firstId, qint64 count);

/// The search for what was typed; empty: there is no word in it. All words must be there, the last one may go on; what
/// stands in double quotes must be there in that order. Nothing that is typed is a fault.
QString noteQuery(const QString& typed);

/// Notes with the words typed, newest first, at most `most`. Looks at the 20,000 notes written last that have them.
NotesFound notesFound(const Database& db, const QString& typed, int most);

/// Where the words are not those of the notes: what is wrong and where, one a note.
std::vector<QString> wrongWords(const Database& db);

} // namespace core::store
