#pragma once

#include "core/report/worksheet_part.h"

#include <QString>

#include <vector>

namespace core::report {

/// Paper in mm, and what is left between margins, running head and foot.
struct PageSize {
    double width = 210;
    double height = 297;
    double margin = 14;
    double footDrop = 3; ///< of the foot into the margin
    double contentWidth() const { return width - 2 * margin; }
    double contentTop() const;
    double contentBottom() const;
    double contentHeight() const { return contentBottom() - contentTop(); }
};
PageSize pageSize(Paper paper);

/// What stands on each page besides its content.
struct PageTexts {
    QString title, summary; ///< on the first page
    QString running;        ///< on the others
    QString page;           ///< "page %1 of %2"
    QString continued;
    QString foot, book, revision, code;
};

/// Lays the sections out, one below the other: a block is never split, a heading never stands alone.
std::vector<Page> pagesOf(const std::vector<Section>& sections, const PageTexts& texts, const PageSize& size,
                          const TextMeasure& measure);

} // namespace core::report
