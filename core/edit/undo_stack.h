#pragma once

#include "core/store/history_rows.h"

#include <optional>

namespace core::edit {

/// A `do` line of the history that can be taken back or done again, and the line that did so last.
struct UndoStep {
    qint64 doneAs = 0; ///< the `do` line
    qint64 last = 0;   ///< the line to reverse: of an undo the `do` line or its latest redo, of a redo its latest undo
    QString text;      ///< sentence of the `do` line
};

/// What undo and redo would take next, read from the history alone: last in, first out; a new edit ends all redos.
struct UndoTops {
    std::optional<UndoStep> undo;
    std::optional<UndoStep> redo;
};
UndoTops undoTops(const store::Database& db);

} // namespace core::edit
