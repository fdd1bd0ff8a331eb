#pragma once

#include "core/report/page.h"
#include "core/report/text_lines.h"

#include <QString>

#include <vector>

namespace core::report {

/// A part of a sheet that is never split over pages. Its marks count from its own top left corner, in mm.
struct Block {
    double height = 0;
    double gapAfter = 2;
    QString zone; ///< becomes a Zone of the page; empty: none
    double zoneWidth = 0;
    std::vector<Mark> marks;
    std::vector<Zone> parts = {}; ///< zones within it, from its corner as the marks
};

/// Writes marks into a block, from the top downwards.
class BlockPen {
public:
    BlockPen(const TextMeasure& measure, Block& block) : m_measure(measure), m_block(block) {}

    const TextMeasure& measure() const { return m_measure; }
    double width(const QString& text, const Type& type) const;

    /// One line whose top is at y. Returns the y below it.
    double line(double x, double y, const QString& text, const Type& type, Align align = Align::Left);
    /// Wrapped; `lead` in bold before it. Lines after the first begin at x + hang. Returns the y below.
    double paragraph(double x, double y, double width, const QString& text, const Type& type, const QString& lead = {},
                     double hang = 0);
    void stroke(Point from, Point to, double lineWidth, std::vector<double> dash = {});
    void frame(const Rect& rect, double lineWidth);
    void fill(const Rect& rect, Ink ink);
    /// A box to tick with its words to the right; returns the x after them.
    double tick(double x, double y, const QString& text, const Type& type = kLarge);
    void add(Mark mark) { m_block.marks.push_back(std::move(mark)); }

private:
    const TextMeasure& m_measure;
    Block& m_block;
};

constexpr double kTickSide = 5;

} // namespace core::report
