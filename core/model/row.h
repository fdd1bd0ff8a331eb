#pragma once

#include <QString>

#include <optional>
#include <span>
#include <variant>
#include <vector>

namespace core {

/// The tables an edit may write. Settings are keyed by name; all others by a rowid.
enum class Table {
    Yard,
    Stand,
    BoxKind,
    Colony,
    Placement,
    Visit,
    VisitSign,
    Transfer,
    Result,
    Treatment,
    Lineage,
    Kit,
    Setting,
    Person,
    FixedThing,
    MergeDay,
    MergeChoice,
    MergeStrip,
    DivideChoice,
    DivideStrip,
    Feeding,
    Queen,
    FileMapping,
    Phrase,
    Question,
    Sample,
    MiteFall,
    StripsOut,
    KitEnd,
    Notifiable,
    Keeper
};
constexpr int kTableCount = 31;

/// One stored cell: NULL, integer, real or text.
using Value = std::variant<std::monostate, qint64, double, QString>;

/// The cells of one row in the order of columnsOf(table), without its id.
using Row = std::vector<Value>;

/// No number of a record that is no id comes near it (a place is at most 10 km from its yard's origin, in mm), and sums
/// of a few such never overflow: beyond it a file is damaged.
constexpr qint64 kMostSmall = 100'000'000;

/// SQL name of a table ("visit"), and its columns without `id`, in the order of the migration.
const char* tableName(Table table);
std::span<const char* const> columnsOf(Table table);
/// The table of this SQL name.
std::optional<Table> tableNamed(QStringView name);

/// One row before and after: no `before` is an insert, no `after` a delete.
struct RowChange {
    Table table = Table::Yard;
    qint64 id = 0;
    std::optional<Row> before;
    std::optional<Row> after;
    friend bool operator==(const RowChange&, const RowChange&) = default;
};

} // namespace core
