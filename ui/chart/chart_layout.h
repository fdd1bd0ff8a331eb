#pragma once

#include "ui/chart/chart.h"
#include "ui/chart/value_axis.h"

#include <QFont>
#include <QPointF>
#include <QRectF>

namespace ui::chart {

/// A text with its place; an empty text is not drawn.
struct Placed {
    QRectF box;
    QString text;
};

struct PlacedTick {
    double at = 0; ///< x or y of its line
    Placed label;
    bool strong = false; ///< a year begins
};

struct PlacedMark {
    size_t mark = 0; ///< in Chart::marks
    double from = 0; ///< x
    double to = 0;   ///< x; of a single day: from
    Placed label;    ///< words, sign or nothing, above the plot
};

struct PlacedPoint {
    int at = 0;
    QPointF where;
    double lower = 0, upper = 0; ///< y
    bool interval = false;
};

/// Where everything of a chart lies, in pixels of an area that begins at 0, 0. No text lies over another.
struct ChartLayout {
    QSizeF size;
    QFont font, lesser; ///< sized in pixels
    bool empty = false; ///< `none` is all that is shown
    QRectF plot;
    ValueAxis axis;
    Placed title, valueTitle, whereTitle, none, source;
    std::vector<PlacedTick> valueTicks, whereTicks;
    std::vector<PlacedMark> marks;
    std::vector<PlacedTick> thresholds;           ///< in the order of Chart::thresholds; at: y
    std::vector<Placed> names;                    ///< by series; its sample of line or filling lies left of the text
    std::vector<std::vector<PlacedPoint>> points; ///< by series; those recorded
    std::vector<std::vector<size_t>> runs;        ///< by series: how many points hang together, run by run
    std::vector<std::vector<QRectF>> bars;        ///< by series of Kind::Bars
    std::vector<std::pair<int, double>> stops;    ///< `at` and its x, ascending

    double yOf(double value) const;
    /// The stop nearest to x: its place in `stops`; nullopt without any.
    std::optional<size_t> stopAt(double x) const;
};

/// Width of the sample before a series' name.
inline constexpr double kSample = 22;

ChartLayout layOut(const Chart& chart, const QSizeF& size, const QFont& font);

} // namespace ui::chart
