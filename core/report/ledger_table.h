#pragma once

#include "core/report/page.h"
#include "core/report/page_origin.h"
#include "core/rules/ledger.h"

#include <QString>
#include <QStringList>

#include <vector>

// The ledger of colonies as a table, as sentences, and as pages.

namespace core::report {

/// "2025/26", in the south "2025": the year of a ledger and its winter.
QString winterName(int year, bool southern);

/// One season of one yard: as many cells as there are columns.
struct LedgerRow {
    size_t year = 0; ///< position in the ledger
    QStringList cells;
};
/// "Yard", "Year", "Season", "From", "Until", "At its start", …, "At its end".
QStringList ledgerColumns();
/// Of the same columns: "yard", "year", …: of the CSV file.
QStringList ledgerFileColumns();
/// A blank instead of 0 between start and end, but in the file: there 0.
std::vector<LedgerRow> ledgerRows(const Snapshot& s, const std::vector<rules::LedgerYear>& years, bool forFile = false);

/// What was given up in fall, what winter took, what came back: a sentence each.
QStringList ledgerSentences(const Snapshot& s, const rules::LedgerYear& year);
/// Which seasons are meant, by their settings.
QString ledgerKey(const Settings& settings);

/// A block a year and yard, none split over pages.
std::vector<Page> ledgerPages(const Snapshot& s, const std::vector<rules::LedgerYear>& years, const PageOrigin& origin,
                              const TextMeasure& measure);

} // namespace core::report
