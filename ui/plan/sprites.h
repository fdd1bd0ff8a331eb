#pragma once

#include "ui/look/colours.h"
#include "ui/plan/layout.h"

#include <QHash>
#include <QPixmap>

class QPainter;

namespace ui::plan {

/// Small pictures of far hives, painted once each by paintHive and then stamped: a yard of a thousand redraws within
/// a frame. Headings are drawn to 15°, strength to half a frame: less than a pixel at that size.
class Sprites {
public:
    /// Strokes: painted anew each time, for paper.
    enum class Kind { Stamps, Strokes };
    explicit Sprites(Kind kind = Kind::Stamps) : m_kind(kind) {}

    /// Draws the hive at `place` (layout pixels, under the painter's translation) as a stamp.
    void paint(QPainter& p, const HiveMark& mark, const HivePlace& place, const look::Colours& c);
    /// A union's order number in its circle around `at`.
    void paintSign(QPainter& p, const QPointF& at, int order, bool chosen, const QFont& font, const look::Colours& c);

private:
    Kind m_kind;
    QPixmap& stamp(quint64 key, const look::Colours& c, double ratio); ///< null when it must be painted first
    QHash<quint64, QPixmap> m_stamps;
    QRgb m_paper = 0;
    double m_ratio = 1;
};

/// Radius in pixels of the circle around an order number in this font.
double signRadius(const QFont& font);

} // namespace ui::plan
