#include "core/store/yard_days.h"

namespace core::store {

namespace {

/// `here`: whose hive stood in the yard, and when. The numbers are those of Recorded. A record of two colonies of the
/// yard is one.
constexpr const char* kRecorded =
    "WITH here AS MATERIALIZED (SELECT p.colony, p.since, p.until, p.first FROM stand s JOIN placement p "
    "ON p.stand = s.id WHERE s.yard = ?1), "
    "pair (what, id, day) AS ("
    "SELECT l.how, l.id, l.day FROM here h JOIN lineage l ON l.colony = h.colony "
    "WHERE l.day >= h.since AND (h.until IS NULL OR l.day <= h.until) "
    "UNION SELECT l.how, l.id, l.day FROM here h JOIN lineage l ON l.into_colony = h.colony "
    "WHERE l.day >= h.since AND (h.until IS NULL OR l.day <= h.until) "
    "UNION SELECT 'gift', t.id, t.day FROM here h JOIN transfer t ON t.giver = h.colony "
    "WHERE t.day >= h.since AND (h.until IS NULL OR t.day <= h.until) "
    "UNION SELECT 'gift', t.id, t.day FROM here h JOIN transfer t ON t.receiver = h.colony "
    "WHERE t.day >= h.since AND (h.until IS NULL OR t.day <= h.until)), "
    // A carry within the yard is in `here` twice: it ends one stay and begins the next.
    "moved AS (SELECT h.colony, h.since AS day, EXISTS (SELECT 1 FROM here b WHERE b.colony = h.colony AND "
    "b.until = h.since) AS within FROM here h WHERE h.first = 0) "
    "SELECT day, 0, count(DISTINCT id) FROM (SELECT v.day, v.id FROM here h CROSS JOIN visit v ON v.colony = h.colony "
    "AND v.day >= h.since AND (h.until IS NULL OR v.day <= h.until)) GROUP BY day "
    "UNION ALL SELECT since, 1, count(*) FROM here WHERE first = 1 GROUP BY since "
    "UNION ALL SELECT day, 2, count(*) FROM moved WHERE NOT within GROUP BY day "
    "UNION ALL SELECT day, 3, count(*) FROM moved WHERE within GROUP BY day "
    "UNION ALL SELECT h.until, 4, count(*) FROM here h WHERE EXISTS (SELECT 1 FROM placement p JOIN stand s "
    "ON s.id = p.stand WHERE p.colony = h.colony AND p.first = 0 AND p.since = h.until AND s.yard <> ?1) "
    "GROUP BY h.until "
    "UNION ALL SELECT day, CASE what WHEN 'united' THEN 5 WHEN 'shaken-out' THEN 6 WHEN 'divided' THEN 7 ELSE 9 END, "
    "count(*) FROM pair GROUP BY what, day "
    "UNION ALL SELECT c.ended, 8, count(DISTINCT c.id) FROM here h JOIN colony c ON c.id = h.colony "
    "WHERE c.ended >= h.since AND (h.until IS NULL OR c.ended <= h.until) "
    "AND c.end_kind NOT IN ('united', 'shaken-out') GROUP BY c.ended "
    "UNION ALL SELECT day, 10, count(*) FROM (SELECT r.day, r.id FROM here h JOIN result r ON r.colony = h.colony "
    "WHERE r.day >= h.since AND (h.until IS NULL OR r.day <= h.until) "
    "UNION SELECT day, id FROM result WHERE yard = ?1) GROUP BY day "
    "UNION ALL SELECT day, 11, count(*) FROM (SELECT t.day, t.id FROM here h JOIN treatment t ON t.colony = h.colony "
    "WHERE t.day >= h.since AND (h.until IS NULL OR t.day <= h.until) "
    "UNION SELECT day, id FROM treatment WHERE yard = ?1) GROUP BY day "
    "ORDER BY 1, 2";

} // namespace

std::vector<RecordedDay> recordedDays(const Database& db, YardId yard) {
    Statement s = db.prepare(kRecorded);
    s.bind(1, yard.value);
    std::vector<RecordedDay> out;
    while (s.step()) out.push_back({s.day(0), static_cast<Recorded>(s.small(1)), s.small(2)});
    return out;
}

std::vector<StandUse> standUses(const Database& db, YardId yard) {
    Statement s = db.prepare("SELECT s.id, min(p.since), max(p.until), sum(p.until IS NULL) FROM stand s "
                             "JOIN placement p ON p.stand = s.id WHERE s.yard = ? GROUP BY s.id");
    s.bind(1, yard.value);
    std::vector<StandUse> out;
    while (s.step()) out.push_back({{s.integer(0)}, s.day(1), s.integer(3) > 0 ? std::nullopt : s.optionalDay(2)});
    return out;
}

} // namespace core::store
