#pragma once

#include "core/model/tally_order.h"
#include "core/report/worksheet_flow.h"
#include "core/report/worksheet_part.h"

#include <QString>

#include <optional>
#include <vector>

// The tally sheet: a row a colony in walking order, in the order in which visits are typed in; and the card of one
// colony, the same row with its last visits below it.

namespace core::report {

/// A box to tick. Its letter stands in it, pale: what is typed for it (core/model/tally_order.h).
struct TallyTick {
    QString words;
    QChar letter = u' ';
};
/// One box to fill in. Those of one `group` that stand beside each other share its words in the head.
struct TallyCell {
    TallyColumn column;
    QString group;                          ///< first line of the head, or with no `caption` all of it
    QString caption = {};                   ///< below it
    std::vector<TallyTick> ticks = {};      ///< two rows, filled downwards; empty: room to write
    bool upper = false;                     ///< of the upper box
    std::optional<TallyColumn> second = {}; ///< two figures are written, a stroke between them
    double width = 0;                       ///< mm
};
/// "queen": ends the name of its zone.
QString tallyName(TallyColumn column);
using TallyLine = std::vector<TallyCell>;
constexpr size_t kTickRows = 2;
constexpr double kAfterTick = 1.2;  ///< mm from a box to tick to its word
constexpr double kBetweenTicks = 2; ///< mm between two columns of them
constexpr double kTallyPad = 1;     ///< mm beside words in a box

/// What a row asks, in the order of kTallyOrder, as wide as the sheet; boxes and note follow in every row.
struct TallyForm {
    TallyLine first;  ///< bees, queen, brood
    TallyLine second; ///< signs, stores, honey boxes, weight, mites
};
/// A sign in a word that fits a box.
QString tallyWord(const SheetInput& in, Sign sign);
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
