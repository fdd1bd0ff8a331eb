#pragma once

#include "core/edit/session.h"
#include "ui/records/record_rows.h"

#include <optional>
#include <vector>

namespace ui::life {

/// One place where a colony's hive stood.
struct Stay {
    core::Day since;
    std::optional<core::Day> until; ///< not set while it stands there
    QString yard, stand;
    std::optional<int> headingDeg; ///< as it was before where a carry does not say; none: never said
    QString carried;               ///< "7.4 m", "from Kiln Field"; empty: it began here
};

/// Up to `on`, in time order. Throws Error(Book).
std::vector<Stay> staysOf(const core::edit::Session& session, core::ColonyId colony, core::Day on);

/// For the list, the newest first: yard and stand with the first day; till when, entrance and metres carried.
std::vector<records::RecordRow> stayRows(const std::vector<Stay>& stays);

} // namespace ui::life
