#pragma once

#include "ui/board/board_rows.h"

#include <vector>

namespace ui::board {

/// What was asked of the plan of a yard, on the rows of the board and as rows of its own; and what can be asked.
class AskedRows {
public:
    /// The reading outlives this. `mayAsk`: with what can be asked.
    AskedRows(const desk::Reading& reading, core::YardIx yard, bool mayAsk);

    void addToUnion(BoardRow& row) const;
    /// That the one colony of the row was left out, or can be.
    void addToColony(BoardRow& row) const;
    /// Each thing asked, to be taken back.
    std::vector<BoardRow> rows() const;

private:
    const desk::Reading& m_r;
    core::edit::MergeChoices m_asked;
    bool m_mayAsk;
};

} // namespace ui::board
