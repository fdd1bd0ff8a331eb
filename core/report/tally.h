#pragma once

#include "core/report/worksheet_flow.h"
#include "core/report/worksheet_part.h"

#include <QString>
#include <QStringList>

#include <vector>

// The tally sheet: a row a colony in walking order, in the order in which visits are typed in; and the card of one
// colony, the same row with its last visits below it.

namespace core::report {

/// One box to fill in. Those of one `group` that stand beside each other share its words in the head.
struct TallyCell {
    QString name;         ///< of its zone, never shown: "above"
    QString group;        ///< first line of the head; empty: `caption` has both
    QString caption;      ///< below it
    QStringList ticks;    ///< boxes to tick, two rows, filled downwards; empty: room to write
    bool upper = false;   ///< of the upper box
    QString between = {}; ///< printed in its middle: two figures are written
    double width = 0;     ///< mm
};
using TallyLine = std::vector<TallyCell>;
constexpr qsizetype kTickRows = 2;
constexpr double kAfterTick = 1.2;  ///< mm from a box to tick to its word
constexpr double kBetweenTicks = 2; ///< mm between two columns of them
constexpr double kTallyPad = 1;     ///< mm beside words in a box

/// What a row asks, in the order of the entry form, as wide as the sheet.
struct TallyForm {
    TallyLine first;  ///< bees, queen, brood
    TallyLine second; ///< signs, stores, honey boxes, weight, mites
};
TallyForm tallyForm(const SheetInput& in);

/// The captions of both lines; stands on each page.
Block tallyHead(const SheetInput& in, const TallyForm& form);
/// The colony's row: label and last figures (not where the page is its own), hold, what is due, boxes, room for words.
Block tallyRow(const SheetInput& in, const TallyForm& form, ColonyIx colony, bool labelled);

/// One line for all rows: day, weather and people, which the entry form carries on from visit to visit.
Block dayLine(const SheetInput& in);

/// Paper of the sheet: upright; in large print across. The card: half a sheet, in large print a whole one across.
PageSize tallySize(const WorksheetOptions& options);
std::vector<Section> tallySections(const SheetInput& in);
/// The colony that the card is of, living on the day; else nullopt.
std::optional<ColonyIx> cardColony(const SheetInput& in);
std::vector<Section> cardSections(const SheetInput& in);

} // namespace core::report
