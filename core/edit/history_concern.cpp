#include "core/edit/history_concern.h"

#include "core/edit/rows_then.h"
#include "core/model/references.h"
#include "core/store/row_store.h"

#include <algorithm>
#include <string>

namespace core::edit {

namespace {

qint64 numberAt(const Row& row, size_t column) {
    const auto* n = std::get_if<qint64>(&row[column]);
    return n ? *n : 0;
}

/// A reference of the row to this very row.
bool pointsTo(Table table, const Row& row, Table to, qint64 id) {
    const auto all = references();
    return std::any_of(all.begin(), all.end(), [&](const Reference& r) {
        return r.from == table && r.to == to && numberAt(row, r.column) == id;
    });
}

/// The day of a record; empty where its table has none.
QString dayOf(Table table, const Row& row) {
    const auto columns = columnsOf(table);
    for (size_t i = 0; i < columns.size(); ++i)
        if (std::string_view(columns[i]) == "day")
            if (const auto* day = std::get_if<QString>(&row[i])) return *day;
    return {};
}

template <class Fn> bool eitherRow(const RowChange& change, Fn&& fits) {
    return (change.before && fits(*change.before)) || (change.after && fits(*change.after));
}

bool exists(store::Statement&& rows) { return rows.step(); }

/// Whether rows of the range are in the book: all of them are, or none.
bool there(const store::Database& db, const RowRange& range) {
    return store::readRow(db, range.table, range.firstId).has_value();
}

} // namespace

bool ColonyConcern::of(qint64 seq, const HistoryRecord& record) const {
    const auto concerned = [&](const RowChange& change) {
        if (change.table == Table::VisitSign)
            return eitherRow(change, [&](const Row& row) {
                const auto visit = RowsThen(m_db, seq, record).row(Table::Visit, numberAt(row, 0));
                return visit && numberAt(*visit, 0) == m_colony.value;
            });
        return eitherRow(change, [&](const Row& row) { return names(change.table, change.id, row); });
    };
    const auto inRange = [this](const RowRange& r) { return range(r); };
    return std::any_of(record.rows.begin(), record.rows.end(), concerned) ||
           std::any_of(record.inserted.begin(), record.inserted.end(), inRange) ||
           std::any_of(record.deleted.begin(), record.deleted.end(), inRange);
}

bool ColonyConcern::names(Table table, qint64 id, const Row& row) const {
    return (table == Table::Colony && id == m_colony.value) || pointsTo(table, row, Table::Colony, m_colony.value);
}

bool ColonyConcern::range(const RowRange& range) const {
    const qint64 last = range.firstId + range.count - 1;
    if (range.table == Table::Colony) return m_colony.value >= range.firstId && m_colony.value <= last;
    for (const Reference& r : references()) {
        if (r.from != range.table || r.to != Table::Colony) continue;
        if (!there(m_db, range)) return true;
        store::Statement rows = m_db.prepare(std::string("SELECT 1 FROM ") + tableName(r.from) + " WHERE " +
                                             columnsOf(r.from)[r.column] + " = ? AND id BETWEEN ? AND ? LIMIT 1");
        rows.bind(1, m_colony.value).bind(2, range.firstId).bind(3, last);
        if (exists(std::move(rows))) return true;
    }
    return false; // signs come with their visits
}

YardConcern::YardConcern(const store::Database& db, YardId yard) : m_db(db), m_yard(yard) {
    store::Statement stands = db.prepare("SELECT id FROM stand WHERE yard = ?");
    stands.bind(1, yard.value);
    while (stands.step()) m_stands.insert(stands.integer(0));
    store::Statement stays = db.prepare("SELECT p.colony, p.since, p.until FROM stand s JOIN placement p "
                                        "ON p.stand = s.id WHERE s.yard = ?");
    stays.bind(1, yard.value);
    while (stays.step()) m_stays[stays.integer(0)].push_back({stays.text(1), stays.text(2)});
}

bool YardConcern::of(qint64 seq, const HistoryRecord& record) const {
    const auto concerned = [&](const RowChange& change) {
        return eitherRow(change, [&](const Row& row) { return names(change, row, seq, record); });
    };
    const auto inRange = [this](const RowRange& r) { return range(r); };
    return std::any_of(record.rows.begin(), record.rows.end(), concerned) ||
           std::any_of(record.inserted.begin(), record.inserted.end(), inRange) ||
           std::any_of(record.deleted.begin(), record.deleted.end(), inRange);
}

bool YardConcern::stood(qint64 colony, const QString& day) const {
    const auto stays = m_stays.find(colony);
    if (stays == m_stays.end()) return false;
    return day.isEmpty() || std::any_of(stays->second.begin(), stays->second.end(), [&](const Stay& stay) {
               return stay.since <= day && (stay.until.isEmpty() || day <= stay.until);
           });
}

bool YardConcern::names(const RowChange& change, const Row& row, qint64 seq, const HistoryRecord& record) const {
    const Table table = change.table;
    if (table == Table::Yard) return change.id == m_yard.value;
    if (pointsTo(table, row, Table::Yard, m_yard.value)) return true;
    const RowsThen then(m_db, seq, record);
    if (table == Table::Placement) {
        if (m_stands.contains(numberAt(row, 1))) return true;
        const auto stand = then.row(Table::Stand, numberAt(row, 1));
        return stand && numberAt(*stand, 0) == m_yard.value;
    }
    if (table == Table::Colony) return stood(change.id, {});
    if (table == Table::VisitSign) {
        const auto visit = then.row(Table::Visit, numberAt(row, 0));
        return visit && stood(numberAt(*visit, 0), dayOf(Table::Visit, *visit));
    }
    const auto all = references();
    return std::any_of(all.begin(), all.end(), [&](const Reference& r) {
        return r.from == table && r.to == Table::Colony && stood(numberAt(row, r.column), dayOf(table, row));
    });
}

bool YardConcern::range(const RowRange& range) const {
    const qint64 last = range.firstId + range.count - 1;
    if (range.table == Table::Yard) return m_yard.value >= range.firstId && m_yard.value <= last;
    if (range.table == Table::Stand) {
        const auto stand = m_stands.lower_bound(range.firstId);
        if (stand != m_stands.end() && *stand <= last) return true;
        return !there(m_db, range);
    }
    if (range.table == Table::Colony) {
        const auto colony = m_stays.lower_bound(range.firstId);
        return (colony != m_stays.end() && colony->first <= last) || !there(m_db, range);
    }
    if (range.table == Table::VisitSign || range.table == Table::BoxKind || range.table == Table::Setting) return false;
    if (!there(m_db, range)) return true;
    for (const Reference& r : references()) {
        if (r.from != range.table) continue;
        const std::string column = columnsOf(r.from)[r.column];
        std::string sql =
            std::string("SELECT 1 FROM ") + tableName(r.from) + " WHERE id BETWEEN ?2 AND ?3 AND " + column;
        if (r.to == Table::Yard)
            sql += " = ?1 LIMIT 1";
        else if (r.to == Table::Stand)
            sql += " IN (SELECT id FROM stand WHERE yard = ?1) LIMIT 1";
        else
            sql += " IN (SELECT p.colony FROM stand s JOIN placement p ON p.stand = s.id WHERE s.yard = ?1) LIMIT 1";
        store::Statement rows = m_db.prepare(sql);
        rows.bind(1, m_yard.value).bind(2, range.firstId).bind(3, last);
        if (exists(std::move(rows))) return true;
    }
    return false;
}

} // namespace core::edit
