#pragma once

#include "core/base/progress.h"
#include "core/report/worksheet_part.h"

#include <QString>
#include <QStringList>

#include <vector>

// A table as data, for pages and for files: the same cells on both.

namespace core::report {

struct TableColumn {
    QString shown;      ///< its head on paper
    QString file;       ///< its name in a file, with its unit: "amount_kg"
    bool right = false; ///< figures
    bool strong = false;
};

struct PaperTable {
    QString file; ///< "brood_checks": name of its file, without ".csv"
    QString heading;
    QString note; ///< below the heading
    QString none; ///< what stands in place of rows where there is none; empty: the table is left out
    std::vector<TableColumn> columns;
    std::vector<QStringList> rows; ///< a cell a column; empty: not recorded, on paper "—"
    QString after = {};            ///< a sentence below the rows
    /// Of the file, where paper says the same in fewer rows; empty: as on paper.
    std::vector<TableColumn> fileColumns = {};
    std::vector<QStringList> fileRows = {};
};

/// Columns are as wide as their words need. The table's head stands again on each page; a row is split over pages only
/// where it is long. Each row ticks, where somebody waits.
Section tableSection(const PaperTable& table, const TextMeasure& measure, double width, Ticker* ticker = nullptr);

} // namespace core::report
