#pragma once

#include "core/edit/session.h"
#include "core/exchange/fault.h"

#include <optional>

namespace core::exchange {

/// What a closing came to.
struct CloseReport {
    Faults faults;
    int done = 0, notDone = 0, changed = 0;
    std::optional<edit::HistoryLine> line; ///< not set where nothing was written

    bool good() const { return faults.none(); }
};

/// Takes merge days back from a CSV of what came of each strip (yard, date, moved, host, outcome, note): all rows or
/// none, as one edit; each is judged on its own date, after the rows above it. What stands against a row is a fault of
/// that row. Throws Error(Book) where the book fails, Error(Correction) where a hold would go with it.
CloseReport closeDays(edit::Session& session, const QString& path);

} // namespace core::exchange
