#include "ui/plan/rect_grid.h"

#include <algorithm>
#include <cmath>

namespace ui::plan {

RectGrid::RectGrid(const QRectF& area, double cell)
    : m_area(area),
      m_cell(std::max({cell, area.width() / 128, area.height() / 128, 1.0})),
      m_columns(static_cast<int>(area.width() / m_cell) + 1),
      m_rows(static_cast<int>(area.height() / m_cell) + 1),
      m_heads(static_cast<size_t>(m_columns) * static_cast<size_t>(m_rows), -1) {}

int RectGrid::column(double x) const {
    return static_cast<int>(std::clamp((x - m_area.left()) / m_cell, 0.0, m_columns - 1.0));
}

int RectGrid::row(double y) const {
    return static_cast<int>(std::clamp((y - m_area.top()) / m_cell, 0.0, m_rows - 1.0));
}

void RectGrid::insert(const QRectF& rect, int owner) {
    const int entry = static_cast<int>(m_entries.size());
    m_entries.push_back({rect, owner});
    for (int r = row(rect.top()); r <= row(rect.bottom()); ++r)
        for (int c = column(rect.left()); c <= column(rect.right()); ++c) {
            int& head = m_heads[static_cast<size_t>(r) * static_cast<size_t>(m_columns) + static_cast<size_t>(c)];
            m_links.push_back({entry, head});
            head = static_cast<int>(m_links.size()) - 1;
        }
}

bool RectGrid::free(const QRectF& rect, int passOver) const {
    for (int r = row(rect.top()); r <= row(rect.bottom()); ++r)
        for (int c = column(rect.left()); c <= column(rect.right()); ++c) {
            int link = m_heads[static_cast<size_t>(r) * static_cast<size_t>(m_columns) + static_cast<size_t>(c)];
            for (; link >= 0; link = m_links[static_cast<size_t>(link)].next) {
                const Entry& e = m_entries[static_cast<size_t>(m_links[static_cast<size_t>(link)].entry)];
                if (e.owner != passOver && e.rect.intersects(rect)) return false;
            }
        }
    return true;
}

void RectGrid::each(const QRectF& rect, const std::function<void(int owner)>& take) const {
    for (int r = row(rect.top()); r <= row(rect.bottom()); ++r)
        for (int c = column(rect.left()); c <= column(rect.right()); ++c) {
            int link = m_heads[static_cast<size_t>(r) * static_cast<size_t>(m_columns) + static_cast<size_t>(c)];
            for (; link >= 0; link = m_links[static_cast<size_t>(link)].next) {
                const Entry& e = m_entries[static_cast<size_t>(m_links[static_cast<size_t>(link)].entry)];
                if (e.rect.intersects(rect)) take(e.owner);
            }
        }
}

bool RectGrid::free(const QPointF& point, int passOver, int passOverToo) const {
    int link = m_heads[static_cast<size_t>(row(point.y())) * static_cast<size_t>(m_columns) +
                       static_cast<size_t>(column(point.x()))];
    for (; link >= 0; link = m_links[static_cast<size_t>(link)].next) {
        const Entry& e = m_entries[static_cast<size_t>(m_links[static_cast<size_t>(link)].entry)];
        if (e.owner != passOver && e.owner != passOverToo && e.rect.contains(point)) return false;
    }
    return true;
}

} // namespace ui::plan
