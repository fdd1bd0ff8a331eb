#pragma once

#include "core/exchange/fault.h"
#include "core/exchange/file_kind.h"
#include "core/exchange/text_source.h"

#include <QByteArray>
#include <QString>
#include <QStringList>

#include <functional>
#include <optional>
#include <utility>
#include <vector>

// How a file that another program wrote becomes one of ours.

namespace core::exchange {

/// Units that a number of a file may have; each column of ours has one (kg, m, frames), or none.
enum class CellUnit { Ours, Pounds, Feet, Inches, Centimetres };

struct ColumnMapping {
    QString from; ///< the header's name in the file; empty: no column, `value` for every row
    QString to;   ///< a column of ours
    CellUnit unit = CellUnit::Ours;
    QString value;                                  ///< where `from` is empty
    std::vector<std::pair<QString, QString>> words; ///< a cell's word (without regard to case) and ours: "ja", "yes"
    friend bool operator==(const ColumnMapping&, const ColumnMapping&) = default;
};

struct Mapping {
    FileKind kind = FileKind::Visits;
    std::optional<Encoding> encoding; ///< nullopt: as found in each file
    CellForms forms;
    std::vector<ColumnMapping> columns; ///< what is not named is left out
    friend bool operator==(const Mapping&, const Mapping&) = default;
};

/// Units that make sense of a column of ours, ours first.
std::vector<CellUnit> unitsOf(FileKind kind, const QString& column);
/// "kg", "lb", "m", "ft", "in", "cm"; of Ours the column's own, empty where it has none.
QString unitWord(FileKind kind, const QString& column, CellUnit unit);

/// The names in the file's first row. Empty where there is none.
QStringList headerOf(const QByteArray& text, char separator);

/// What can be told without asking: columns of the same name but for case, blanks and underscores ("Gross KG"), each of
/// ours once.
Mapping proposedMapping(FileKind kind, const QByteArray& text, const CellForms& forms);

/// Why the mapping cannot be used on a file with that header: a column that is not there or ours that is named twice,
/// or a required one that nothing gives.
struct MappingTrouble {
    QString column; ///< the file's, or ours where nothing gives it
    QString what;   ///< what is wrong, what was expected
};
std::vector<MappingTrouble> mappingTroubles(const Mapping& mapping, const QStringList& header);

/// The file as one of ours: UTF-8, commas, our names, ISO days, our units. Each row begins on the line that it has in
/// `text`. Rows that are no CSV become faults, named by `path`. `told` of each row: how many bytes are read.
QByteArray translated(const QByteArray& text, const Mapping& mapping, const QString& path, Faults& faults,
                      const std::function<void(qint64 bytes)>& told = {});

/// A file that is read with a mapping is held in memory whole: larger ones are refused.
constexpr qint64 kMostForeignBytes = 256 << 20;

/// JSON, as a book keeps it; and back, nullopt where it is none of ours, or larger than any that is of use.
QByteArray toJson(const Mapping& mapping);
std::optional<Mapping> mappingFromJson(const QByteArray& json);

} // namespace core::exchange
