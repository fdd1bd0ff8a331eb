#include "ui/look/colours.h"
#include "ui/look/type.h"
#include "ui/time/strip.h"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>

// How the strip is drawn: a line with the beginnings of months or years, a dot for each day with visits, other records
// as small marks above it, and the knob.

namespace ui::time {

namespace {

constexpr double kLine = 2.5; // pixels thick
constexpr double kKnob = 7.5; // radius
constexpr double kMarkUp = 12;

using core::Recorded;

/// What is drawn above the line on a day; of several the first. Told apart by its shape alone.
enum class Shape { None, Ring, Square, Up, Cross };

Shape shapeOf(Recorded what) {
    switch (what) {
    case Recorded::Visit:
    case Recorded::Gift:
        return Shape::None;
    case Recorded::Result:
    case Recorded::Treatment:
        return Shape::Cross;
    case Recorded::United:
    case Recorded::ShakenOut:
    case Recorded::Divided:
        return Shape::Ring;
    case Recorded::Carried:
    case Recorded::CarriedIn:
    case Recorded::CarriedOut:
        return Shape::Square;
    case Recorded::Began:
    case Recorded::Ended:
        return Shape::Up;
    }
    return Shape::None;
}

void paintShape(QPainter& p, Shape shape, const QPointF& at) {
    switch (shape) {
    case Shape::None:
        return;
    case Shape::Ring:
        p.drawEllipse(at, 2.6, 2.6);
        return;
    case Shape::Square:
        p.drawRect(QRectF(at.x() - 2, at.y() - 2, 4, 4));
        return;
    case Shape::Up:
        p.drawPolygon(QPolygonF{{at.x() - 2.6, at.y() + 2}, {at.x() + 2.6, at.y() + 2}, {at.x(), at.y() - 2.6}});
        return;
    case Shape::Cross:
        p.drawLine(QPointF(at.x() - 2.6, at.y()), QPointF(at.x() + 2.6, at.y()));
        p.drawLine(QPointF(at.x(), at.y() - 2.6), QPointF(at.x(), at.y() + 2.6));
        return;
    }
}

} // namespace

int Strip::lineY() const { return static_cast<int>(height() - fontMetrics().height() - 14); }

void Strip::paintLine(QPainter& p) const {
    const look::Colours c = look::coloursOf(*this);
    const double y = lineY();
    const auto stretch = [&](core::Day from, core::Day to, const QColor& colour, Qt::PenStyle style) {
        p.setPen(QPen(colour, kLine, style, Qt::RoundCap));
        const double left = std::max(m_scale.xOf(from), 3.0);
        const double right = std::min(m_scale.xOf(to), width() - 3.0);
        if (left < right) p.drawLine(QPointF(left, y), QPointF(right, y));
    };
    stretch(m_scale.first(), std::min(m_today, m_scale.last()), c.pale, Qt::SolidLine);
    if (m_scale.last() > m_today) stretch(m_today, m_scale.last(), c.pale, Qt::DotLine); // has not come yet
}

void Strip::paintMarks(QPainter& p) const {
    const look::Colours c = look::coloursOf(*this);
    QFont lesser = look::lesserFont(font());
    QFont years = lesser;
    years.setBold(true);
    const QFontMetricsF wide(years);
    const double y = lineY();
    for (const ScaleMark& mark : m_scale.marks([&](const QString& text) { return wide.horizontalAdvance(text); })) {
        p.setPen(QPen(mark.text.isEmpty() ? c.rule : c.pale, 1.5));
        p.drawLine(QPointF(mark.x, y - 6), QPointF(mark.x, y + 6));
        p.setFont(mark.year ? years : lesser);
        p.setPen(mark.year ? c.ink : c.quiet);
        p.drawText(QRectF(mark.x - 100, y + 8, 200, height() - y - 8), Qt::AlignHCenter | Qt::AlignTop, mark.text);
    }
}

/// Days that fall on one pixel are drawn as one.
void Strip::paintRecords(QPainter& p) const {
    const look::Colours c = look::coloursOf(*this);
    const double y = lineY();
    const auto shown = recordsIn(m_records, m_scale.from(), m_scale.to());
    double before = -10;
    for (auto r = shown.begin(); r != shown.end();) {
        const double x = m_scale.xOf(r->day);
        int visits = 0;
        Shape shape = Shape::None;
        const double until = std::max(x, before + 1) + 1;
        for (; r != shown.end() && m_scale.xOf(r->day) < until; ++r) {
            if (r->what == Recorded::Visit) visits += r->count;
            if (shape == Shape::None) shape = shapeOf(r->what);
        }
        before = x;
        if (visits > 0) {
            const double share = std::min(1.0, double(visits) / m_mostVisits);
            p.setPen(Qt::NoPen);
            p.setBrush(share > 0.4 ? c.ink : c.quiet);
            const double w = 2.2, h = 2.2 + 3.2 * share; // the more visits, the taller and the darker
            p.drawRoundedRect(QRectF(x - w, y - h, 2 * w, 2 * h), w, w);
        }
        p.setPen(QPen(c.ink, 1.2));
        p.setBrush(c.desk);
        paintShape(p, shape, {x, y - kMarkUp});
    }
}

void Strip::paintKnob(QPainter& p) const {
    const look::Colours c = look::coloursOf(*this);
    const QPointF at(std::clamp(m_scale.xOf(m_day), 0.0, double(width())), lineY());
    if (m_day != m_today && m_today >= m_scale.from() && m_today <= m_scale.to()) {
        p.setPen(QPen(c.planned, 2));
        p.setBrush(c.desk);
        p.drawEllipse(QPointF(m_scale.xOf(m_today), lineY()), 4.5, 4.5); // the present
    }
    p.setPen(QPen(c.desk, 2));
    p.setBrush(c.planned);
    p.drawEllipse(at, kKnob, kKnob);
    if (!hasFocus()) return;
    p.setPen(QPen(c.ink, 2));
    p.setBrush(Qt::NoBrush);
    p.drawEllipse(at, kKnob + 2.5, kKnob + 2.5);
}

void Strip::paintEvent(QPaintEvent*) {
    QPainter p(this);
    p.setRenderHint(QPainter::Antialiasing);
    paintLine(p);
    paintMarks(p);
    paintRecords(p);
    paintKnob(p);
}

} // namespace ui::time
