#pragma once

#include "core/report/page.h"

#include <QString>
#include <QStringList>

#include <vector>

namespace tests::report {

/// Every character is as wide as every other: pages do not depend on installed fonts.
struct EvenMeasure : core::report::TextMeasure {
    double widthMm(const QString& text, double pointSize, bool bold) const override;
};

/// What the mark's ink covers, from the measure: letters' height, not the line's.
core::report::Rect inkOf(const core::report::TextMark& mark, const core::report::TextMeasure& measure);

std::vector<core::report::TextMark> textsOf(const core::report::Page& page);
/// All text of the page, a mark a line.
QString textOf(const core::report::Page& page);
bool within(const core::report::Rect& inner, const core::report::Rect& outer);
bool overlap(const core::report::Rect& a, const core::report::Rect& b, double by);

/// The pages for a reviewer's eye: each text with its place, size and weight, each zone with its rectangle.
QString dumpOf(const std::vector<core::report::Page>& pages);

/// Faults that no page may have: text under `least` pt, off the page, over other text, or out of the box it begins in;
/// a box that runs into the foot. One sentence each.
QStringList faultsOf(const std::vector<core::report::Page>& pages, const core::report::TextMeasure& measure,
                     double least = 11);

} // namespace tests::report
