#pragma once

#include "core/report/block.h"
#include "core/report/row_order.h"
#include "core/rules/contacts.h"
#include "core/rules/hold.h"

#include <QString>

#include <optional>
#include <span>
#include <vector>

// The contacts of a colony drawn in time: a line a colony, a stroke a gift. Black and white suffices.

namespace core::report {

struct ContactRow {
    ColonyIx colony;
    QString label;
    QString letters; ///< of its holds: "CY"; empty: none
    TimeRow line;
    std::optional<Day> reached; ///< from then on (back: up to then) it is linked to the colony asked for
    bool ended = false;         ///< its line ends with it
};

struct ContactStroke {
    TimeStroke stroke; ///< `a` gave to `b`
    rules::GiftKind kind = rules::GiftKind::Frames;
    bool first = false; ///< it is how its far colony was reached first
};

struct ContactDrawing {
    Day from, until;
    bool onwards = true;
    size_t asked = 0;             ///< row of the colony asked for
    std::vector<ContactRow> rows; ///< from the top
    std::vector<ContactStroke> strokes;
    size_t left = 0; ///< colonies reached that are not drawn: those most gifts away
};

/// At most `most` colonies, the nearest by gifts. Its rows are ordered so that few lines are crossed.
ContactDrawing contactDrawing(const Snapshot& s, const rules::Contacts& contacts, std::span<const rules::Hold> holds,
                              Day from, Day until, size_t most = 40);

/// In `width` mm; texts are at least 11 pt. Zone "contacts".
Block contactBlock(const ContactDrawing& drawing, const TextMeasure& measure, double width);

/// Its height, and where a row stands in it, mm.
double contactHeight(const ContactDrawing& drawing);
Rect contactRow(size_t row);

/// What the strokes mean, one sentence.
QString contactKey();

} // namespace core::report
