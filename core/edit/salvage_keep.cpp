#include "core/edit/salvage_keep.h"

#include "core/edit/change_fields.h"
#include "core/edit/edit_checks.h"
#include "core/model/row_days.h"

#include <algorithm>

namespace core::edit {

namespace {

bool isOneOf(const Row& row, size_t column, std::initializer_list<const char*> words) {
    const auto* text = column < row.size() ? std::get_if<QString>(&row[column]) : nullptr;
    return text && std::ranges::any_of(words, [&](const char* word) { return *text == QLatin1String(word); });
}

/// A sign of foulbrood or a doubt of it.
bool isTrouble(const Row& sign) { return isOneOf(sign, 1, {"afb", "efb", "brood-doubt"}); }

/// A positive or an order.
bool isAgainst(const Row& result) { return isOneOf(result, 4, {"positive", "order"}); }

void count(SalvagedTable& counted, Fate fate) {
    counted.kept += fate != Fate::Gone && fate != Fate::Lost;
    counted.fromHistory += fate == Fate::FromHistory;
    counted.fromBackup += fate == Fate::FromBackup;
    counted.against += fate == Fate::Against;
    counted.lost += fate == Fate::Lost;
}

} // namespace

Choosing::Choosing(const store::Remains& remains, const ToldRows& told) : m_remains(remains), m_told(told) {
    if (told.whole()) return;
    std::set<qint64> signs;
    for (const auto& [id, row] : remains.table(Table::VisitSign).rows) signs.insert(id);
    told.addIds(Table::VisitSign, signs);
    for (const qint64 id : signs)
        for (const auto& row : {remains.row(Table::VisitSign, id), told.of(Table::VisitSign, id).row})
            if (row && isTrouble(*row))
                if (const auto* visit = std::get_if<qint64>(&(*row)[0])) m_troubled.insert(*visit);
}

Fate Choosing::of(Table table, qint64 id, std::optional<Row>& row) const {
    const ToldRows::Told told = m_told.of(table, id);
    row = m_remains.row(table, id);
    const bool there = row.has_value();
    const bool sure = there && m_remains.sure(table, id);
    const bool same = there && told.row == row;
    if (told.firm && !told.exists) return Fate::Gone;
    if (same || (sure && !(told.firm && told.row))) return Fate::Read;
    if (told.firm && told.row) {
        row = told.row;
        return told.byBackup ? Fate::FromBackup : Fate::FromHistory;
    }
    row.reset();
    if (!there && !told.firm && !(told.exists && m_remains.table(table).mayLack(id))) return Fate::Gone;
    if (told.firm || !told.exists || !told.row || !speaksAgainst(table, id, *told.row)) return Fate::Lost;
    row = told.row;
    return Fate::Against;
}

bool Choosing::speaksAgainst(Table table, qint64 id, const Row& row) const {
    if (table == Table::Result) return isAgainst(row);
    if (table == Table::VisitSign) return isTrouble(row);
    return table == Table::Visit && m_troubled.contains(id);
}

Keeping::Keeping(const store::Remains& remains, const ToldRows& told, const store::Database& to,
                 const Progress& progress)
    : m_remains(remains), m_told(told), m_choosing(remains, told), m_to(to), m_progress(progress) {}

SalvagedTable Keeping::keep(Table table, std::set<qint64>& lost) {
    SalvagedTable counted;
    counted.table = table;
    std::set<qint64> ids;
    for (const auto& [id, row] : m_remains.table(table).rows) ids.insert(id);
    m_told.addIds(table, ids);
    m_inserter.emplace(m_to, table);
    const int number = static_cast<int>(table);
    Ticker ticker(m_progress.part(double(number) / kTableCount, double(number + 1) / kTableCount), std::ssize(ids));
    qint64 strays = 0;
    for (const qint64 id : ids) {
        ticker.tick();
        std::optional<Row> row;
        Fate fate = m_choosing.of(table, id, row);
        if (row && fate != Fate::Gone && !inserted(table, id, *row)) fate = Fate::Lost;
        strays += fate == Fate::Gone && m_remains.sure(table, id);
        counted.disputed += fate != Fate::Read && fate != Fate::Lost && m_remains.sure(table, id);
        count(counted, fate);
        if (fate == Fate::Lost) lost.insert(id);
    }
    counted.mayLack = !m_told.whole() && !m_remains.table(table).lost.empty();
    if (strays > 0)
        leftOut << Edits::tr("%1 left out: the history knows nothing of them, or took them back.")
                       .arg(recordsText(table, strays));
    return counted;
}

/// False where our own rules refuse the row.
bool Keeping::inserted(Table table, qint64 id, const Row& row) {
    if (!daysExist(table, row)) return false;
    try {
        m_inserter->insert(id, row);
        return true;
    } catch (const Error& e) {
        if (e.kind() != Error::Kind::BadData) throw;
        m_inserter.emplace(m_to, table); // the failed one cannot go on
        return false;
    }
}

} // namespace core::edit
