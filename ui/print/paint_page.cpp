#include "ui/print/paint_page.h"

#include "ui/print/measures.h"

#include "ui/print/font_measure.h"
#include "ui/print/yard_picture.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace ui::print {

using namespace core::report;

namespace {

QPen penOf(double width, const QColor& colour, const std::vector<double>& dash) {
    if (width <= 0) return QPen(Qt::NoPen);
    QPen pen(colour, width, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin);
    if (dash.empty()) return pen;
    QList<qreal> pattern; // in widths of the pen
    for (const double d : dash) pattern << d / width;
    pen.setDashPattern(pattern);
    if (dash.front() <= width) pen.setCapStyle(Qt::RoundCap); // dots
    return pen;
}

QPointF pointOf(const Point& p) { return {p.x, p.y}; }

QPolygonF polygonOf(const std::vector<Point>& points) {
    QPolygonF out;
    for (const Point& p : points) out << pointOf(p);
    return out;
}

/// Paints marks; the painter counts in mm.
class MarkPainter {
public:
    MarkPainter(QPainter& p, const YardPicture* yard, const Inks& inks) : m_p(p), m_yard(yard), m_inks(inks) {}

    void operator()(const TextMark& mark) const {
        const QFont font = paperFont(kTypePixels, mark.bold);
        const double scale = mark.pointSize * kMmPerPoint / kTypePixels;
        double left = 0;
        if (mark.align != Align::Left) {
            const double width = QFontMetricsF(font).horizontalAdvance(mark.text);
            left = mark.align == Align::Right ? -width : -width / 2;
        }
        m_p.save();
        m_p.translate(pointOf(mark.at));
        m_p.scale(scale, scale);
        m_p.setFont(font);
        m_p.setPen(colourOf(mark.ink));
        m_p.drawText(QPointF(left, 0), mark.text);
        m_p.restore();
    }

    void operator()(const PathMark& mark) const {
        m_p.setPen(penOf(mark.lineWidth, colourOf(mark.line), mark.dash));
        m_p.setBrush(mark.filled ? QBrush(colourOf(mark.fill)) : QBrush(Qt::NoBrush));
        if (mark.closed)
            m_p.drawPolygon(polygonOf(mark.points));
        else
            m_p.drawPolyline(polygonOf(mark.points));
    }

    void operator()(const CurveMark& mark) const {
        QPainterPath path(pointOf(mark.from));
        path.cubicTo(pointOf(mark.control1), pointOf(mark.control2), pointOf(mark.to));
        m_p.setPen(penOf(mark.lineWidth, m_inks.black, mark.dash));
        m_p.setBrush(Qt::NoBrush);
        m_p.drawPath(path);
        if (mark.arrow) arrow(pointOf(mark.control2), pointOf(mark.to), mark.lineWidth);
    }

    void operator()(const CircleMark& mark) const {
        m_p.setPen(penOf(mark.lineWidth, m_inks.black, {}));
        m_p.setBrush(mark.filled ? QBrush(colourOf(mark.fill)) : QBrush(Qt::NoBrush));
        m_p.drawEllipse(pointOf(mark.centre), mark.radius, mark.radius);
    }

    void operator()(const HatchMark& mark) const {
        const QPolygonF area = polygonOf(mark.polygon);
        const QRectF box = area.boundingRect();
        QPainterPath clip;
        clip.addPolygon(area);
        clip.closeSubpath();
        m_p.save();
        m_p.setClipPath(clip, Qt::IntersectClip);
        m_p.setPen(QPen(m_inks.black, mark.lineWidth, Qt::SolidLine, Qt::FlatCap));
        for (double x = box.left() - box.height(); x < box.right(); x += mark.spacing)
            m_p.drawLine(QPointF(x, box.bottom()), QPointF(x + box.height(), box.top()));
        m_p.restore();
    }

    void operator()(const YardMark& mark) const {
        if (m_yard)
            m_yard->paint(m_p, QRectF(mark.area.x, mark.area.y, mark.area.width, mark.area.height),
                          QRectF(mark.ground.x, mark.ground.y, mark.ground.width, mark.ground.height), mark.enlarged);
    }

private:
    QColor colourOf(Ink ink) const {
        switch (ink) {
        case Ink::Black:
            return m_inks.black;
        case Ink::Grey:
            return m_inks.grey;
        case Ink::Pale:
            return m_inks.pale;
        case Ink::White:
            break;
        }
        return m_inks.white;
    }

    void arrow(const QPointF& from, const QPointF& tip, double width) const {
        const QPointF way = tip - from;
        const double length = std::hypot(way.x(), way.y());
        if (length < 1e-9) return;
        const QPointF unit = way / length;
        const QPointF side(-unit.y(), unit.x());
        const double size = std::max(2.0, 5 * width);
        m_p.setPen(Qt::NoPen);
        m_p.setBrush(m_inks.black);
        m_p.drawPolygon(QPolygonF({tip, tip - unit * size + side * size * 0.4, tip - unit * size - side * size * 0.4}));
    }

    QPainter& m_p;
    const YardPicture* m_yard;
    const Inks& m_inks;
};

} // namespace

void paintPage(QPainter& p, const Page& page, double dotsPerMm, const YardPicture* yard, const Inks& inks) {
    p.save();
    p.setRenderHint(QPainter::Antialiasing, true);
    p.setRenderHint(QPainter::TextAntialiasing, true);
    p.scale(dotsPerMm, dotsPerMm);
    const MarkPainter painter(p, yard, inks);
    for (const Mark& mark : page.marks) std::visit(painter, mark);
    p.restore();
}

} // namespace ui::print
