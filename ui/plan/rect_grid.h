#pragma once

#include <QRectF>

#include <functional>
#include <vector>

namespace ui::plan {

/// Finds which of many rectangles a point or a rectangle touches, in constant time for evenly spread ones.
class RectGrid {
public:
    /// `area`: where most rectangles lie (others are kept in its outermost cells). `cell`: size of a cell, at least
    /// an 128th of the area.
    RectGrid(const QRectF& area, double cell);

    /// `owner` is passed over where asked; rectangles of one thing share it.
    void insert(const QRectF& rect, int owner);
    bool free(const QRectF& rect, int passOver = kNobody) const;
    /// Calls `take` with the owner of each rectangle that touches `rect`; with some more than once.
    void each(const QRectF& rect, const std::function<void(int owner)>& take) const;
    bool free(const QPointF& point, int passOver = kNobody, int passOverToo = kNobody) const;

    static constexpr int kNobody = -1;

private:
    struct Entry {
        QRectF rect;
        int owner;
    };
    struct Link {
        int entry;
        int next;
    };
    int column(double x) const;
    int row(double y) const;

    QRectF m_area;
    double m_cell;
    int m_columns;
    int m_rows;
    std::vector<Entry> m_entries;
    std::vector<Link> m_links;
    std::vector<int> m_heads;
};

} // namespace ui::plan
