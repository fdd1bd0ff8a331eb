#pragma once

#include "core/report/worksheet_flow.h"

#include <QString>

#include <optional>

namespace core::report {

/// Of what book pages were made, when, and for what paper.
struct PageOrigin {
    Paper paper = Paper::A4;
    QString book;                 ///< its title
    qint64 revision = 0;          ///< number of its last history line
    std::optional<Day> printedOn; ///< not set: not printed on the pages
};

/// What stands on each page of that title.
PageTexts textsFrom(const PageOrigin& origin, const QString& title, const QString& summary);

} // namespace core::report
