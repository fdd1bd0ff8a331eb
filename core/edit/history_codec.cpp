#include "core/edit/history_codec.h"

#include "core/base/damaged.h"
#include "core/base/error.h"
#include "core/edit/unpacked.h"

#include <QCoreApplication>
#include <QDataStream>
#include <QIODevice>

#include <array>
#include <span>
#include <string_view>

namespace core::edit {

namespace {

constexpr quint8 kVersion = 1;
constexpr int kCompression = 3;
constexpr qint64 kMostBytes = 128 << 20; ///< some hundred thousand rows
constexpr quint16 kMostColumns = 1000;
constexpr qint64 kMostId = qint64(1) << 60;

enum class Cell : quint8 { Null, Integer, Real, Text };

[[noreturn]] void damaged(const QString& detail) {
    throw Damaged(
        QCoreApplication::translate("History", "A line of the book's history cannot be read. Restore a backup."),
        detail);
}

void writeCell(QDataStream& out, const Value& value) {
    out << static_cast<quint8>(value.index());
    if (const auto* n = std::get_if<qint64>(&value)) out << *n;
    if (const auto* r = std::get_if<double>(&value)) out << *r;
    if (const auto* t = std::get_if<QString>(&value)) out << t->toUtf8();
}

Value readCell(QDataStream& in) {
    quint8 kind = 0;
    in >> kind;
    switch (static_cast<Cell>(kind)) {
    case Cell::Null:
        return {};
    case Cell::Integer: {
        qint64 n = 0;
        in >> n;
        return n;
    }
    case Cell::Real: {
        double r = 0;
        in >> r;
        return r;
    }
    case Cell::Text: {
        QByteArray utf8;
        in >> utf8;
        return QString::fromUtf8(utf8);
    }
    }
    damaged(QStringLiteral("unknown cell kind %1").arg(kind));
}

void skipCell(QDataStream& in) {
    quint8 kind = 0;
    quint32 bytes = 8;
    in >> kind;
    if (static_cast<Cell>(kind) == Cell::Text) in >> bytes;
    constexpr quint32 kNullText = 0xFFFFFFFF;
    if (static_cast<Cell>(kind) != Cell::Null && bytes != kNullText) in.skipRawData(static_cast<int>(bytes));
}

void writeRow(QDataStream& out, const Row& row) {
    for (const Value& value : row) writeCell(out, value);
}

/// How the columns of one table stood when the line was written, mapped to those of today.
struct Columns {
    Table table = Table::Yard;
    std::vector<int> now; ///< position today of each column then; −1: gone

    Row read(QDataStream& in) const {
        Row row(columnsOf(table).size());
        for (const int at : now) {
            Value value = readCell(in);
            if (at >= 0) row[static_cast<size_t>(at)] = std::move(value);
        }
        return row;
    }
    void skip(QDataStream& in) const {
        for (size_t i = 0; i < now.size(); ++i) skipCell(in);
    }
};

void writeColumns(QDataStream& out, Table table) {
    const auto columns = columnsOf(table);
    out << QByteArray(tableName(table)) << static_cast<quint16>(columns.size());
    for (const char* column : columns) out << QByteArray(column);
}

/// Mostly where it was; −1: gone.
int positionOf(const QByteArray& column, std::span<const char* const> today, size_t then) {
    const std::string_view name(column.constData());
    if (then < today.size() && name == today[then]) return static_cast<int>(then);
    const auto at = std::find(today.begin(), today.end(), name);
    return at == today.end() ? -1 : static_cast<int>(at - today.begin());
}

Columns readColumns(QDataStream& in) {
    QByteArray name;
    quint16 count = 0;
    in >> name >> count;
    const auto table = tableNamed(QString::fromUtf8(name));
    if (!table || count == 0 || count > kMostColumns) damaged(QStringLiteral("table %1").arg(QString::fromUtf8(name)));
    Columns columns{*table, {}};
    const auto today = columnsOf(*table);
    for (int i = 0; i < count; ++i) {
        QByteArray column;
        in >> column;
        columns.now.push_back(positionOf(column, today, static_cast<size_t>(i)));
    }
    return columns;
}

/// Tables in the order in which a line first names them: a line names a table's columns once.
class TableWriter {
public:
    void write(QDataStream& out, Table table) {
        quint8& number = m_numbers.at(static_cast<size_t>(table));
        const bool fresh = number == 0;
        if (fresh) number = ++m_count;
        out << number;
        if (fresh) writeColumns(out, table);
    }

private:
    std::array<quint8, kTableCount> m_numbers{};
    quint8 m_count = 0;
};

class TableReader {
public:
    const Columns& read(QDataStream& in) {
        quint8 number = 0;
        in >> number;
        if (number == 0 || number > m_tables.size() + 1) damaged(QStringLiteral("table number %1").arg(number));
        if (number == m_tables.size() + 1) m_tables.push_back(readColumns(in));
        return m_tables[number - 1u];
    }

private:
    std::vector<Columns> m_tables;
};

template <class Write> QByteArray packed(Write&& write) {
    QByteArray raw;
    QDataStream out(&raw, QIODevice::WriteOnly);
    out.setVersion(QDataStream::Qt_6_0);
    out << kVersion;
    write(out);
    return qCompress(raw, kCompression);
}

template <class Read> void unpack(const QByteArray& bytes, Read&& read) {
    const auto raw = unpacked(bytes, kMostBytes);
    if (!raw) damaged(QStringLiteral("history line not packed as it should be"));
    QDataStream in(*raw);
    in.setVersion(QDataStream::Qt_6_0);
    quint8 version = 0;
    in >> version;
    if (version != kVersion) damaged(QStringLiteral("history format %1").arg(version));
    read(in);
    if (in.status() != QDataStream::Ok || !in.atEnd()) damaged(QStringLiteral("history line cut short or too long"));
}

void writeRanges(QDataStream& out, TableWriter& tables, const std::vector<RowRange>& ranges) {
    out << static_cast<quint32>(ranges.size());
    for (const RowRange& range : ranges) {
        tables.write(out, range.table);
        out << range.firstId << range.count;
    }
}

std::vector<RowRange> readRanges(QDataStream& in, TableReader& tables) {
    quint32 count = 0;
    in >> count;
    std::vector<RowRange> ranges;
    for (quint32 i = 0; i < count && in.status() == QDataStream::Ok; ++i) {
        RowRange range;
        range.table = tables.read(in).table;
        in >> range.firstId >> range.count;
        if (range.firstId < 0 || range.firstId > kMostId || range.count < 0 || range.count > kMostId)
            damaged(QStringLiteral("range of %1 rows from %2").arg(range.count).arg(range.firstId));
        ranges.push_back(range);
    }
    return ranges;
}

void writeChange(QDataStream& out, TableWriter& tables, const RowChange& change) {
    tables.write(out, change.table);
    out << change.id << static_cast<quint8>((change.before ? 1 : 0) | (change.after ? 2 : 0));
    if (change.before) writeRow(out, *change.before);
    if (change.after) writeRow(out, *change.after);
}

RowChange readChange(QDataStream& in, TableReader& tables, bool cells) {
    const Columns& columns = tables.read(in);
    RowChange change;
    change.table = columns.table;
    quint8 has = 0;
    in >> change.id >> has;
    if (cells) {
        if (has & 1) change.before = columns.read(in);
        if (has & 2) change.after = columns.read(in);
    } else {
        if (has & 1) columns.skip(in);
        if (has & 2) columns.skip(in);
    }
    return change;
}

HistoryRecord decoded(const QByteArray& bytes, bool cells) {
    HistoryRecord record;
    unpack(bytes, [&](QDataStream& in) {
        TableReader tables;
        record.inserted = readRanges(in, tables);
        quint32 count = 0;
        in >> count;
        for (quint32 i = 0; i < count && in.status() == QDataStream::Ok; ++i)
            record.rows.push_back(readChange(in, tables, cells));
        record.deleted = readRanges(in, tables);
    });
    return record;
}

} // namespace

QByteArray encode(const HistoryRecord& record) {
    return packed([&](QDataStream& out) {
        TableWriter tables;
        writeRanges(out, tables, record.inserted);
        out << static_cast<quint32>(record.rows.size());
        for (const RowChange& change : record.rows) writeChange(out, tables, change);
        writeRanges(out, tables, record.deleted);
    });
}

HistoryRecord decode(const QByteArray& bytes) { return decoded(bytes, true); }

HistoryRecord decodeKeys(const QByteArray& bytes) { return decoded(bytes, false); }

QByteArray encodeRows(Table table, const std::vector<Row>& rows) {
    return packed([&](QDataStream& out) {
        writeColumns(out, table);
        out << static_cast<quint32>(rows.size());
        for (const Row& row : rows) writeRow(out, row);
    });
}

std::vector<Row> decodeRows(Table table, const QByteArray& bytes) {
    std::vector<Row> rows;
    unpack(bytes, [&](QDataStream& in) {
        const Columns columns = readColumns(in);
        if (columns.table != table) damaged(QStringLiteral("packed rows of another table"));
        quint32 count = 0;
        in >> count;
        for (quint32 i = 0; i < count && in.status() == QDataStream::Ok; ++i) rows.push_back(columns.read(in));
    });
    return rows;
}

} // namespace core::edit
