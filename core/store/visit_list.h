#pragma once

#include "core/model/visit_list.h"
#include "core/store/database.h"

#include <vector>

namespace core::store {

// Lists out of many visits. All go colony by colony, so that a period is read from the index of colony and day; an
// order by anything else keeps no more than `most` of them.

std::vector<VisitId> visitsFound(const Database& db, const VisitFilter& filter, VisitOrder order, int most);
VisitTotals visitTotals(const Database& db, const VisitFilter& filter);

} // namespace core::store
