#pragma once

namespace ui::chart {

class ChartView;

/// Charts are told to screen readers as one: its summary, and the stop that is read as its value. Once, or again.
void installChartAccessible();
void announceReading(ChartView& view);

} // namespace ui::chart
