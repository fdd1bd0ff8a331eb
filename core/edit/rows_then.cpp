#include "core/edit/rows_then.h"

#include "core/edit/change_writer.h"
#include "core/store/row_store.h"

namespace core::edit {

namespace {

constexpr int kFewLines = 3000;

const RowChange* changeOf(const HistoryRecord& record, Table table, qint64 id) {
    for (const RowChange& change : record.rows)
        if (change.table == table && change.id == id) return &change;
    return nullptr;
}

} // namespace

std::optional<Row> RowsThen::row(Table table, qint64 id) const {
    if (const RowChange* own = changeOf(m_record, table, id)) return own->after ? own->after : own->before;
    if (!m_standing)
        if (auto then = foundLater(table, id, kFewLines)) return then;
    if (auto now = store::readRow(m_db, table, id)) return now;
    if (auto packed = deletedRow(m_db, m_seq, m_record, table, id)) return packed;
    return foundLater(table, id, INT_MAX);
}

std::optional<Row> RowsThen::foundLater(Table table, qint64 id, int most) const {
    std::optional<Row> found;
    store::eachHistoryAfter(m_db, m_seq, [&](const store::HistoryRow& line) {
        const HistoryRecord record = decode(store::historyChanges(m_db, line.seq));
        const RowChange* change = changeOf(record, table, id);
        found = change ? change->before : deletedRow(m_db, line.seq, record, table, id);
        return !found && !change && --most > 0; // another row of this id made later is not the one
    });
    return found;
}

} // namespace core::edit
