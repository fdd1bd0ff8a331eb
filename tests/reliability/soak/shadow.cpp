#include "tests/reliability/soak/shadow.h"

#include "core/edit/edit_context.h"
#include "core/model/row_codec.h"

#include <algorithm>
#include <string_view>

namespace tests::soak {

namespace {

quint64 mixed(quint64 x) { // splitmix64's last steps
    x = (x ^ (x >> 30)) * 0xbf58476d1ce4e5b9ULL;
    x = (x ^ (x >> 27)) * 0x94d049bb133111ebULL;
    return x ^ (x >> 31);
}

quint64 hashOf(Table table, qint64 id, const Row& row) {
    quint64 seed = mixed(static_cast<quint64>(id) * 64 + static_cast<quint64>(table) + 1);
    for (const Value& value : row) {
        quint64 cell = value.index();
        if (const auto* n = std::get_if<qint64>(&value)) cell += mixed(static_cast<quint64>(*n) + 7);
        if (const auto* r = std::get_if<double>(&value)) cell += qHash(*r, size_t(11));
        if (const auto* t = std::get_if<QString>(&value)) cell += qHash(*t, size_t(13));
        seed = mixed(seed + cell + 1);
    }
    return seed;
}

std::vector<size_t> colonyColumns(Table table) {
    constexpr std::string_view kNames[] = {"colony", "giver", "receiver", "into_colony", "moved",
                                           "host",   "upper", "other",    "mother"};
    std::vector<size_t> columns;
    const auto all = columnsOf(table);
    for (size_t i = 0; i < all.size(); ++i)
        if (std::ranges::find(kNames, std::string_view(all[i])) != std::end(kNames)) columns.push_back(i);
    return columns;
}

const std::vector<size_t>& columnsWithColonies(Table table) {
    static const auto columns = [] {
        std::array<std::vector<size_t>, kTableCount> all;
        for (size_t i = 0; i < all.size(); ++i) all[i] = colonyColumns(static_cast<Table>(i));
        return all;
    }();
    return columns[static_cast<size_t>(table)];
}

/// Settings are keyed by name: their ids say nothing.
std::set<Row> cellsOf(const Shadow::Rows& rows) {
    std::set<Row> cells;
    for (const auto& [id, row] : rows) cells.insert(row);
    return cells;
}

Shadow::Rows rowsOf(const EditContext& c, Table table) {
    Shadow::Rows rows;
    c.eachRow(table, [&](qint64 id, Row&& row) { rows.emplace(id, std::move(row)); });
    return rows;
}

} // namespace

void addColonies(Table table, const Row& row, std::set<qint64>& colonies) {
    for (const size_t column : columnsWithColonies(table))
        if (const auto* id = std::get_if<qint64>(&row[column])) colonies.insert(*id);
}

bool namesColony(Table table, const Row& row, const std::set<qint64>& colonies) {
    return std::ranges::any_of(columnsWithColonies(table), [&](size_t column) {
        const auto* id = std::get_if<qint64>(&row[column]);
        return id && colonies.contains(*id);
    });
}

void Shadow::put(Table table, qint64 id, const Row& row) {
    drop(table, id);
    m_hash += hashOf(table, id, row);
    m_rows[static_cast<size_t>(table)].emplace(id, row);
    if (table == Table::Colony) (fromRow<Colony>(id, row).ended ? m_ended : m_living).insert(id);
}

void Shadow::drop(Table table, qint64 id) {
    Rows& rows = m_rows[static_cast<size_t>(table)];
    const auto old = rows.find(id);
    if (old == rows.end()) return;
    m_hash -= hashOf(table, id, old->second);
    rows.erase(old);
    if (table != Table::Colony) return;
    m_living.erase(id);
    m_ended.erase(id);
}

void Shadow::read(const Session& session) {
    session.read([&](const EditContext& c) {
        for (int i = 0; i < kTableCount; ++i)
            for (const auto& [id, row] : rowsOf(c, static_cast<Table>(i))) put(static_cast<Table>(i), id, row);
    });
}

void Shadow::take(const Session& session, const ChangeSet& what) {
    if (!what.bulk.empty())
        session.read([&](const EditContext& c) {
            for (const BulkInsert& range : what.bulk)
                for (qint64 id = range.firstId; id < range.firstId + range.count; ++id)
                    if (const auto row = c.row(range.table, id)) put(range.table, id, *row);
        });
    for (const RowChange& row : what.rows) {
        if (row.after)
            put(row.table, row.id, *row.after);
        else
            drop(row.table, row.id);
    }
    for (const BulkDelete& range : what.gone)
        for (qint64 id = range.firstId; id < range.firstId + range.count; ++id) drop(range.table, id);
}

qint64 Shadow::rowCount() const {
    size_t count = 0;
    for (const Rows& rows : m_rows) count += rows.size();
    return static_cast<qint64>(count);
}

std::string Shadow::differing(const Session& session) const {
    std::string table;
    session.read([&](const EditContext& c) {
        for (int i = 0; i < kTableCount && table.empty(); ++i) {
            const auto t = static_cast<Table>(i);
            const Rows there = rowsOf(c, t);
            const bool same = t == Table::Setting ? cellsOf(there) == cellsOf(rows(t)) : there == rows(t);
            if (!same) table = tableName(t);
        }
    });
    return table;
}

} // namespace tests::soak
