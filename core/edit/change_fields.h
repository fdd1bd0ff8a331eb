#pragma once

#include "core/model/row.h"

#include <QString>

#include <span>

namespace core::edit {

/// How the cell of a column is told.
enum class CellKind {
    Hidden, ///< never: keys, marks
    Text,
    Number,
    Frames,      ///< quarter frames
    Kilograms,   ///< hundredths
    Litres,      ///< of millilitres
    Metres,      ///< of millimetres
    Millimetres, ///< as they are
    Points,      ///< of a drawn shape, in metres
    Degrees,
    YesNo,
    Word, ///< a word of the store
    Colony,
    Yard,
    Stand,
    BoxKind
};

struct FieldKind {
    const char* label; ///< untranslated; translate in context "History"
    CellKind kind;
};

/// In the order of columnsOf(table).
std::span<const FieldKind> fieldsOf(Table table);
/// "a record" of a table, for counts: one and many.
QString recordsText(Table table, qint64 count);
/// A word of the store as it is read: "drone-layer" is "drone layer".
QString wordText(const QString& word);

} // namespace core::edit
