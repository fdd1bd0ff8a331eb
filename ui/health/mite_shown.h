#pragma once

#include "core/rules/mite_treatments.h"
#include "ui/season/shown.h"

#include <vector>

// What the page of mites says and draws. No widgets. Washes (mites in 100 bees) and natural fall (mites a day on the
// board) are two methods: each has a chart and thresholds of its own.

namespace ui::health {

/// What the parts rest on, read once.
struct MiteRows {
    std::vector<core::Visit> visits; ///< from kBeforeTreating days before the span on
    std::vector<core::MiteFall> falls;
    std::vector<core::Treatment> treatments; ///< all
    std::vector<core::StripsOut> out;
};
/// Throws Error(Book).
MiteRows miteRows(const season::SeasonDesk& desk);
core::rules::TreatmentBook treatmentBook(const season::SeasonDesk& desk, const MiteRows& rows);

season::Part washesPart(season::SeasonDesk& desk);
season::Part washesOverTimePart(season::SeasonDesk& desk, const MiteRows& rows);
season::Part fallenPart(season::SeasonDesk& desk, const MiteRows& rows);
season::Part treatmentsPart(season::SeasonDesk& desk, const MiteRows& rows);

/// All of it. Throws Error(Book).
season::Shown mitesOfHealth(season::SeasonDesk& desk);

/// "A2 (4.3), A5 (3.7) and 3 more"
QString someOf(const QStringList& named);
/// A yard's treatments in the time shown, as marks of a chart over time.
std::vector<chart::Mark> treatmentMarks(const season::SeasonDesk& desk, const MiteRows& rows);
/// The half of the earth of what is shown; nullopt: yards of both.
std::optional<bool> southernOf(const season::SeasonDesk& desk);

} // namespace ui::health
