#pragma once

#include "core/base/day.h"

#include <QString>
#include <QStringList>

#include <optional>
#include <vector>

// How to show figures as a chart, anywhere in the window:
//   1. fill a Chart (plain data, no widgets);
//   2. give it to a ChartPanel (chart_panel.h): the drawing, read by keys and mouse, the table behind it, print, PDF,
//      picture and CSV are there then.
// A drawing alone: ChartView (chart_view.h). All of it is laid out as data first (chart_layout.h), then drawn with Qt
// Charts (paint_chart.h).

namespace ui::chart {

enum class Kind { Line, Step, Bars, Dots };

struct Point {
    int at = 0;                         ///< a day (core::Day::number), or an index of Chart::names
    std::optional<double> value;        ///< nullopt: not recorded; a line breaks here, the table shows a dash
    std::optional<double> lower, upper; ///< its interval: both or neither
    QString note;                       ///< said after the value: "12 mites in 300 bees"
};

/// The first is drawn in ink, those after it in blue, green and grey; each with dashes, markers and filling of its own.
struct Series {
    QString name;
    Kind kind = Kind::Line;
    std::vector<Point> points; ///< ascending, one an `at`
};

enum class MarkKind { Hold, Union, Divide, Queen, Treatment, Other };

/// Something that happened on a day, or that lasted (`to`: its last day). A hold is a hatched band along the top,
/// anything else a thin line.
struct Mark {
    MarkKind kind = MarkKind::Other;
    core::Day from;
    std::optional<core::Day> to;
    QString sign; ///< a letter or two, shown where the words have no room
    QString text; ///< "united with K2"
};

/// A line across at a limit, with its words.
struct Threshold {
    double value = 0;
    QString text;
};

/// A further column of the table, not drawn; with one, the table leaves the points' notes out.
struct Column {
    QString name;
    std::vector<std::pair<int, QString>> cells; ///< by `at` of a point
};

struct Chart {
    QString title;
    QString valueTitle;          ///< what is counted, with its unit: "frames of bees"
    QString unit;                ///< said after a value: "frames"; may be empty
    int decimals = 2;            ///< at most so many; needless zeros are not shown
    QString whereTitle;          ///< what the names are: "year of the queen"; of days: empty
    std::vector<QString> names;  ///< empty: points lie on days
    std::vector<QString> levels; ///< values are the numbers of these, from the bottom up; empty: quantities
    bool fromZero = true;        ///< the axis begins at 0; false only where 0 says nothing
    std::vector<Series> series;
    std::vector<Mark> marks; ///< only with days
    std::vector<Column> more;
    std::vector<Threshold> thresholds;
    std::optional<core::Day> first, last; ///< show at least these days, so that charts stand one under the other
    QString none;                         ///< said instead of an empty frame: "Never weighed."
    QString source; ///< small print below a large drawing: where its figures are from, what is an assumption

    bool hasNames() const { return !names.empty(); }
};

/// No series has a value: `none` is shown.
bool isEmpty(const Chart& chart);
bool hasIntervals(const Series& series);
QString valueText(const Chart& chart, double value); ///< "3.25", without the unit
QString unitText(const Chart& chart, double value);  ///< "3.25 frames"
QString whereText(const Chart& chart, int at);       ///< "15 Sep 2026", or the name
/// "12 Aug to 3 Sep 2026: held, brood not checked"
QString markText(const Mark& mark);
/// Where keys stop: each `at` that has a point, each day on which a mark begins. Ascending.
std::vector<int> stopsOf(const Chart& chart);
/// All that is there, in words: "15 Sep 2026: 3.25 frames · united with K2".
QString spoken(const Chart& chart, int at);
/// The whole chart in a sentence or two, for those who do not see it.
QString summary(const Chart& chart);

} // namespace ui::chart
