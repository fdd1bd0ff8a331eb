#include "core/store/box_visits.h"

namespace core::store {

std::optional<std::pair<Day, int>> latestBoxes(const Database& db, ColonyId colony, Day day) {
    Statement read = db.prepare("SELECT day, boxes FROM visit WHERE colony = ? AND day <= ? AND boxes IS NOT NULL "
                                "ORDER BY day DESC LIMIT 1");
    read.bind(1, colony.value).bind(2, day);
    if (!read.step()) return std::nullopt;
    return std::pair(read.day(0), read.small(1));
}

} // namespace core::store
