#pragma once

#include "ui/board/offers.h"
#include "ui/desk/reading.h"

#include <QString>
#include <QStringList>

#include <optional>
#include <vector>

namespace ui::board {

enum class RowKind { Section, Hold, Union, Asked, Line, Note };

/// What was asked of a row, seen as a sign beside its words.
enum class AskSign { None, Pinned, Forbidden, LeftOut, Turned };

/// One row of the merge day board.
struct BoardRow {
    RowKind kind = RowKind::Line;
    std::optional<core::ColonyId> colony; ///< what the row is about: chosen with it (of a union its host)
    std::optional<core::ColonyId> other;  ///< of a union the moved one
    int order = 0;                        ///< of a union
    QString mark;                         ///< a hold's letter
    QString title;                        ///< "K2 → K4", "K7: do not unite"; a line's left column
    QString right;                        ///< "9.25 frames"
    QStringList lines;                    ///< reasons; of a union only the first while it is not chosen
    QStringList more;                     ///< reasons and steps, shown where it is chosen
    QStringList cautions;
    core::rules::Reason why;
    QString rules;       ///< its rule and limits, small; worked out where it is chosen
    QString tip;         ///< where a note comes from
    bool atRisk = false; ///< left alone at risk: what was given up is worked out where it is chosen
    AskSign sign = AskSign::None;
    QString askedText;         ///< "pinned", beside the sign
    std::vector<Offer> offers; ///< what can be asked here
    size_t offersAlways = 0;   ///< so many of the first show on a row that is not open too
    bool about(core::ColonyId id) const { return colony == id || other == id; }
    QString spoken() const; ///< the whole for a screen reader
};

/// A hold in its sentences: why it stands, and what would lift it.
BoardRow holdRow(const core::Snapshot& s, const core::rules::Hold& hold);

/// The plan of one yard as rows, holds first. `mayAsk`: with what can be asked of it.
std::vector<BoardRow> boardRows(const desk::Reading& reading, core::YardIx yard, bool mayAsk = true);

/// "Expected in spring: 4.7 as it is, 7.6 as planned (an assumption)."
QString expectedText(const desk::Reading& reading, core::YardIx yard);

} // namespace ui::board
