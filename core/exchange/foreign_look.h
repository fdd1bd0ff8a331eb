#pragma once

#include "core/exchange/mapping.h"

// What can be seen of a file of another program before it comes in.

namespace core::exchange {

/// The kind that its columns fit best, by their names; visits where none fits.
FileKind guessedKind(const QByteArray& text, const CellForms& forms);

/// Words that a column of ours takes ("seen", "eggs", …); empty: it takes others, or anything.
QStringList wordsOfColumn(FileKind kind, const QString& column);

/// The different cells of a column in the first rows, in their order, at most `most`; blank ones left out.
QStringList wordsInFile(const QByteArray& text, char separator, const QString& column, int most);

/// The first cell of each column that is not blank; empty where the first rows have none.
QStringList samplesOf(const QByteArray& text, char separator);

/// A row as it would come in, a cell for each column of the mapping.
struct RowSeen {
    qint64 line = 1;
    QStringList cells;
};
/// The first rows, header left out; rows that are no CSV too.
std::vector<RowSeen> firstRowsSeen(const QByteArray& text, const Mapping& mapping, size_t most);

} // namespace core::exchange
