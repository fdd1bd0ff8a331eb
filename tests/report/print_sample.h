#pragma once

#include "core/report/worksheet.h"
#include "tests/report/sample_yards.h"

#include <QString>

#include <vector>

namespace tests::report {

/// Kiln Field of tests/data/yards on its merge day.
Sample kilnField();

struct Print {
    bool large = false;
    core::report::Sheet sheet = core::report::Sheet::MergeDay;
    std::optional<core::ColonyId> card = {};
    std::vector<core::Visit> visits = {};   ///< of the card
    std::vector<core::ColonyId> round = {}; ///< of a tally sheet
};
/// A card with seven visits of which every figure is noted.
Print cardOf(const Sample& sample, core::ColonyIx colony);

/// The pages in type of even width (EvenMeasure), of the book "north-hollow", revision 4.
std::vector<core::report::Page> pagesFor(const Sample& sample,
                                         core::report::Language language = core::report::Language::English,
                                         core::report::Paper paper = core::report::Paper::A4, const Print& print = {});

/// All text, a mark a line.
QString allText(const std::vector<core::report::Page>& pages);
/// The words with line breaks taken for spaces, as a reader takes them.
QString flowing(const std::vector<core::report::Page>& pages);
std::vector<core::report::Zone> zonesNamed(const std::vector<core::report::Page>& pages, const QString& start);

} // namespace tests::report
