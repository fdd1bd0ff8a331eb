#pragma once

#include "core/base/progress.h"
#include "core/edit/session.h"

#include <QString>

namespace core::exchange {

/// Writes the ten files into folder `dir`, which is made where it is missing; files that are there are replaced, each
/// whole or not at all. Rows are in natural order of names, then by day, so that the same book gives the same bytes,
/// and importing the ten into a new book and exporting that gives them again. What the ten do not hold goes into
/// further files, where there is any: `kit.csv`, `stands.csv` (stands that no hive ever stood on, or taken off the
/// plan), `notes.csv` (of colonies), `closed_yards.csv`, `people.csv`, `fixed_things.csv` (fences, hedges and the like
/// of the drawings), `merge_days.csv`, `merge_choices.csv`, `merge_strips.csv`, `divide_choices.csv`,
/// `divide_strips.csv`, `quick_sentences.csv`, `feedings.csv`, `queens.csv`, `samples.csv`, `kit_ends.csv`,
/// `mite_falls.csv` (an import reads these five). Besides, the history: `history.csv` (who changed what and when) and
/// `changes.csv` (from what to what), and `columns.csv`, which says what every column of every file means, in what
/// unit, which words it may have and what an empty cell says (file_guide.h). Throws Error(Book): the book fails, or the
/// folder or a file cannot be written; Stopped. Then no file is there that was not.
void exportBook(const edit::Session& session, const QString& dir, const Progress& progress = {});

} // namespace core::exchange
