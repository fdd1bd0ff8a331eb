#pragma once

#include <QByteArray>

#include <optional>
#include <vector>

namespace core::store {

/// One cell of a row as it lies in the file.
struct RawValue {
    enum class Kind { Null, Integer, Real, Text, Blob };
    Kind kind = Kind::Null;
    qint64 integer = 0;
    double real = 0;
    QByteArray bytes; ///< of a text (UTF-8, checked) or blob
};

struct RawColumn {
    enum class Type { Integer, Real, Text, Blob };
    Type type = Type::Integer;
    bool needed = false; ///< never NULL
};

/// What the record's cells may be. A record written before a column was added ends before it.
struct RecordShape {
    bool idFirst = true;            ///< the first is the row's id, which lies elsewhere
    std::vector<RawColumn> columns; ///< all, the id too
    size_t least = 0;               ///< so many of them when the table was made first
};

/// The record's cells, less the id, filled up with NULL. nullopt: it is none of this shape.
std::optional<std::vector<RawValue>> rawRecord(const QByteArray& record, const RecordShape& shape);

} // namespace core::store
