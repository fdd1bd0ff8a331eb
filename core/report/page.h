#pragma once

#include <QString>

#include <variant>
#include <vector>

// Pages as data: marks in millimetres from the page's top left corner, x right, y down. One painter draws them
// (ui/print); preview, PDF and paper are the same pages.

namespace core::report {

struct Point {
    double x = 0;
    double y = 0;
};
struct Rect {
    double x = 0, y = 0, width = 0, height = 0;
};

enum class Align { Left, Centre, Right };
/// Ink on paper: black and white must suffice. Grey only for what may be lost.
enum class Ink { Black, Grey, Pale, White };

struct TextMark {
    Point at; ///< baseline at its left end, middle or right end, by `align`
    QString text;
    double pointSize = 11;
    bool bold = false;
    Align align = Align::Left;
    Ink ink = Ink::Black;
};
/// A line through points; closed and filled where said. dash in millimetres (on, off), empty for a solid line.
struct PathMark {
    std::vector<Point> points;
    double lineWidth = 0.3; ///< mm; 0: no line
    Ink line = Ink::Black;
    bool closed = false;
    bool filled = false;
    Ink fill = Ink::White;
    std::vector<double> dash;
};
/// Cubic Bézier from, control, control, to; with an arrow head at its end.
struct CurveMark {
    Point from, control1, control2, to;
    double lineWidth = 0.4;
    bool arrow = true;
    std::vector<double> dash;
};
struct CircleMark {
    Point centre;
    double radius = 2;
    double lineWidth = 0.3;
    bool filled = true;
    Ink fill = Ink::White;
};
/// Barrier hatching over a polygon.
struct HatchMark {
    std::vector<Point> polygon;
    double spacing = 1.2;
    double lineWidth = 0.35;
};
/// Room for the drawing of the yard from above, which ui draws: `ground` (metres from the yard's origin, x east, y
/// south) fits into `area` (mm).
struct YardMark {
    Rect area;
    Rect ground;
    double enlarged = 1; ///< type and pens of the drawing
};
using Mark = std::variant<TextMark, PathMark, CurveMark, CircleMark, HatchMark, YardMark>;

/// A part of the page that holds together, named for whoever looks for it: "union 2".
struct Zone {
    QString name;
    Rect rect;
};

struct Page {
    double width = 210; ///< mm
    double height = 297;
    std::vector<Mark> marks;
    std::vector<Zone> zones;
};

/// Text widths come from outside, so that core needs no GUI and page breaks do not happen while painting.
struct TextMeasure {
    virtual ~TextMeasure() = default;
    virtual double widthMm(const QString& text, double pointSize, bool bold) const = 0;
};

} // namespace core::report
