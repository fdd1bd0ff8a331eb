#include "core/store/box_visits.h"

namespace core::store {

std::optional<std::pair<Day, int>> latestBoxes(const Database& db, ColonyId colony, Day day) {
    Statement read = db.prepare("SELECT day, boxes FROM visit WHERE colony = ? AND day <= ? AND boxes IS NOT NULL "
                                "ORDER BY day DESC LIMIT 1");
    read.bind(1, colony.value).bind(2, day);
    if (!read.step()) return std::nullopt;
    return std::pair(read.day(0), read.small(1));
}

std::optional<VisitId> visitAbove(const Database& db, BoxKindId kind, int frames) {
    Statement read = db.prepare(
        "SELECT v.id FROM colony c JOIN visit v ON v.colony = c.id WHERE c.box = ?1 "
        "AND max(coalesce(v.bees_top_q, 0), coalesce(v.bees_bottom_q, 0), coalesce(v.upper_bees_top_q, 0), "
        "coalesce(v.upper_bees_bottom_q, 0), coalesce(v.stores_q, 0), coalesce(v.upper_stores_q, 0)) > 4 * ?2 LIMIT 1");
    read.bind(1, kind.value).bind(2, qint64(frames));
    return read.step() ? std::optional(VisitId{read.integer(0)}) : std::nullopt;
}

} // namespace core::store
