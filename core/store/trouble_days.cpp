#include "core/store/trouble_days.h"

namespace core::store {

bool anyTrouble(const Database& db) {
    return db.number("SELECT EXISTS (SELECT 1 FROM visit_sign WHERE sign IN ('afb', 'efb', 'brood-doubt')) "
                     "OR EXISTS (SELECT 1 FROM result WHERE verdict IN ('positive', 'order'))") != 0;
}

std::vector<Day> troubleDays(const Database& db, Table table, qint64 first, qint64 last, int most) {
    Statement read = db.prepare(
        table == Table::Result
            ? "SELECT DISTINCT day FROM result WHERE id BETWEEN ?1 AND ?2 AND verdict IN ('positive', 'order') "
              "ORDER BY day LIMIT ?3"
            : "SELECT DISTINCT day FROM visit_sign CROSS JOIN visit ON visit.id = visit_sign.visit "
              "WHERE visit_sign.id BETWEEN ?1 AND ?2 AND sign IN ('afb', 'efb', 'brood-doubt') ORDER BY day LIMIT ?3");
    read.bind(1, first).bind(2, last).bind(3, qint64(most));
    std::vector<Day> days;
    while (read.step()) days.push_back(read.day(0));
    return days;
}

std::vector<qint64> troubleRows(const Database& db, Table table, qint64 first, qint64 last, int most) {
    Statement read = db.prepare(
        table == Table::Result
            ? "SELECT id FROM result WHERE id BETWEEN ?1 AND ?2 AND verdict IN ('positive', 'order') ORDER BY id LIMIT "
              "?3"
            : "SELECT id FROM visit_sign WHERE id BETWEEN ?1 AND ?2 AND sign IN ('afb', 'efb', 'brood-doubt') "
              "ORDER BY id LIMIT ?3");
    read.bind(1, first).bind(2, last).bind(3, qint64(most));
    std::vector<qint64> ids;
    while (read.step()) ids.push_back(read.integer(0));
    return ids;
}

} // namespace core::store
