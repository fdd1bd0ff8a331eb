#pragma once

#include "ui/chart/chart.h"

#include <vector>

class QWidget;

namespace ui::chart {

// Charts on paper and in files, black on white. Files are written beside `file` and renamed when whole; an existing one
// is replaced. They throw Error(Book) where it cannot be written.

/// What stands at the foot of a sheet: "Larkspur book · 15 Sep 2026".
struct Sheet {
    QString foot;
};

/// A sheet each, lying, on the usual paper; lines and real text.
void writeChartPdf(const std::vector<Chart>& charts, const Sheet& sheet, const QString& file);
/// 300 dots an inch.
void writeChartPng(const Chart& chart, const QString& file);
/// The table behind it.
void writeChartCsv(const Chart& chart, const QString& file);
/// Asks for the printer, and prints unless that is cancelled.
void printCharts(QWidget* parent, const std::vector<Chart>& charts, const Sheet& sheet);

} // namespace ui::chart
