#include "ui/plan/paint_hive.h"

#include "ui/look/words.h"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace ui::plan {

namespace {

/// Draws in the hive's own frame: origin at its centre, the entrance towards +y.
class Turned {
public:
    Turned(QPainter& p, const QPointF& centre, int headingDeg) : m_p(p), m_before(p.transform()) {
        p.translate(centre);
        if (headingDeg != 180) p.rotate(headingDeg - 180);
    }
    ~Turned() { m_p.setTransform(m_before); }
    Q_DISABLE_COPY_MOVE(Turned)

private:
    QPainter& m_p;
    QTransform m_before;
};

QRectF bodyOf(const QSizeF& size) { return {-size.width() / 2, -size.height() / 2, size.width(), size.height()}; }

/// Which combs are inked first: from the middle outwards, as a cluster sits.
int combAt(int rank, int combs) {
    const int middle = (combs - 1) / 2;
    const int step = (rank + 1) / 2;
    const int at = rank % 2 == 1 ? middle + step : middle - step;
    return at;
}

/// How far each comb is covered, in quarters: 0..4, or to 8 where two boxes hold more than one has combs.
std::vector<int> covered(const HiveMark& m) {
    std::vector<int> out(static_cast<size_t>(std::max(m.combs, 1)), 0);
    int left = m.bees ? m.bees->value : 0;
    for (int round = 0; round < 2 && left > 0; ++round)
        for (int rank = 0; rank < m.combs && left > 0; ++rank) {
            const int q = std::min(4, left);
            out[static_cast<size_t>(std::clamp(combAt(rank, m.combs), 0, m.combs - 1))] += q;
            left -= q;
        }
    return out;
}

void paintCombs(QPainter& p, const HiveMark& m, const QRectF& body, const look::Colours& c) {
    const double step = body.width() / (m.combs + 0.4);
    const double thin = std::clamp(step * 0.18, 0.7, 1.6);
    const double thick = std::clamp(step * 0.42, 1.4, 9.0);
    const double margin = body.height() * 0.09;
    const double full = body.height() - 2 * margin;
    const std::vector<int> quarters = covered(m);
    for (int i = 0; i < m.combs; ++i) {
        const double x = body.left() + step * (i + 0.7);
        const int q = quarters[static_cast<size_t>(i)];
        if (q < 4) p.fillRect(QRectF(x - thin / 2, body.top() + margin, thin, full), c.pale);
        if (q == 0) continue;
        const double inked = full * std::min(q, 4) / 4;
        const double wide = q > 4 ? thick * 1.55 : thick;
        p.fillRect(QRectF(x - wide / 2, body.bottom() - margin - inked, wide, inked), c.ink);
    }
}

/// Far away: one bar as wide as the bees are many.
void paintBar(QPainter& p, const HiveMark& m, const QRectF& body, const look::Colours& c) {
    if (!m.bees) return;
    const double room = body.width() * 0.72;
    const double wide = room * std::clamp(m.bees->value / (4.0 * std::max(m.combs, 1)), 0.0, 1.0);
    const double high = body.height() * 0.66;
    p.fillRect(QRectF(-room / 2, -high / 2, room, high), c.pale);
    p.fillRect(QRectF(-wide / 2, -high / 2, wide, high), c.ink);
}

void paintEntrance(QPainter& p, const QSizeF& size, const look::Colours& c) {
    p.setPen(Qt::NoPen);
    p.setBrush(c.ink);
    p.drawConvexPolygon(entranceOf(size));
}

void paintQuestion(QPainter& p, const QPointF& centre, double size, const look::Colours& c) {
    QFont font = p.font();
    font.setBold(true);
    font.setPixelSize(std::max(8, static_cast<int>(size)));
    const QRectF behind(centre - QPointF(size * 0.34, size * 0.52), QSizeF(size * 0.68, size * 1.04));
    p.fillRect(behind, c.paper);
    p.setFont(font);
    p.setPen(c.ink);
    p.drawText(behind.adjusted(-size, -size, size, size), Qt::AlignCenter, QStringLiteral("?"));
}

QRectF onPixels(const QRectF& r) {
    return {std::round(r.x()), std::round(r.y()), std::round(r.width()), std::round(r.height())};
}

/// Held: larger and crossed out. Not counted: a ring. Else a square filled from below, as the combs are with bees.
void paintDot(QPainter& p, const HiveMark& m, const HivePlace& place, const look::Colours& c) {
    QRectF body = onPixels(bodyOf(place.size).translated(place.centre));
    if (m.boxes == 2) {
        p.fillRect(QRectF(body.left() + 2, body.top() - 2, body.width(), 1), c.ink);
        p.fillRect(QRectF(body.right() + 1, body.top() - 2, 1, body.height()), c.ink);
    }
    if (m.held()) {
        const double more = std::max(0.0, 8 - std::min(body.width(), body.height())) / 2;
        body.adjust(-more, -more, more, more);
        p.fillRect(body, c.warn);
        p.setPen(QPen(c.onWarn, 1.4, Qt::SolidLine, Qt::FlatCap));
        p.drawLine(body.topLeft(), body.bottomRight());
        p.drawLine(body.topRight(), body.bottomLeft());
        return;
    }
    if (!m.bees) {
        p.setPen(QPen(c.ink, 1));
        p.setBrush(c.paper);
        p.drawEllipse(body.adjusted(-0.5, -0.5, 0.5, 0.5));
        return;
    }
    p.fillRect(body, c.ink);
    const double empty = 1 - std::clamp(m.bees->value / (4.0 * std::max(m.combs, 1)), 0.0, 1.0);
    const QRectF inner = body.adjusted(1, 1, -1, -1);
    p.fillRect(QRectF(inner.topLeft(), QSizeF(inner.width(), std::round(inner.height() * empty))), c.paper);
}

/// Laying workers and feed where there is no room for their letter and drop: a small L at the lower left, a small drop
/// at the lower right.
void paintSmallMarks(QPainter& p, const HiveMark& m, const HivePlace& place, const look::Colours& c) {
    const double high = std::clamp(place.size.height() * 0.5, 5.0, 9.0);
    if (m.layingWorkers && place.laying.isEmpty()) {
        const QPointF foot = place.box.bottomLeft() - QPointF(5, 0);
        p.fillRect(QRectF(foot - QPointF(0, high), QSizeF(1.5, high)), c.ink);
        p.fillRect(QRectF(foot - QPointF(0, 1.5), QSizeF(4, 1.5)), c.ink);
    }
    if (m.feedHalfLitres <= 0 || !place.drop.isEmpty()) return;
    const QPointF tip = place.box.bottomRight() + QPointF(4, -high);
    p.setPen(QPen(c.paper, 1));
    p.setBrush(c.ink);
    p.drawConvexPolygon(QPolygonF({tip, tip + QPointF(3, high * 0.6), tip + QPointF(1.8, high),
                                   tip + QPointF(-1.8, high), tip + QPointF(-3, high * 0.6)}));
}

QColor outlineColour(const HiveMark& m, const look::Colours& c) { return m.held() ? c.warn : c.ink; }

} // namespace

/// The part of the line that lies in the convex polygon; null where none does.
static QLineF clipped(const QLineF& line, const QPolygonF& area) {
    double from = 0;
    double to = 1;
    const QPointF d = line.p2() - line.p1();
    for (qsizetype i = 0; i < area.size(); ++i) {
        const QPointF a = area[i];
        const QPointF edge = area[(i + 1) % area.size()] - a;
        const double across = edge.x() * d.y() - edge.y() * d.x();
        const double in = edge.x() * (line.y1() - a.y()) - edge.y() * (line.x1() - a.x());
        if (std::abs(across) < 1e-12 && in < 0) return {};
        if (across > 0) from = std::max(from, -in / across);
        if (across < 0) to = std::min(to, -in / across);
    }
    return from < to ? QLineF(line.pointAt(from), line.pointAt(to)) : QLineF();
}

void hatch(QPainter& p, const QPolygonF& area, double every, const look::Colours& c) {
    const QRectF box = area.boundingRect();
    p.setPen(QPen(c.warn, std::clamp(every * 0.32, 1.5, 3.5), Qt::SolidLine, Qt::FlatCap));
    for (double x = box.left() - box.height() + every / 2; x < box.right(); x += every) {
        const QLineF line = clipped({{x, box.bottom()}, {x + box.height(), box.top()}}, area);
        if (!line.isNull()) p.drawLine(line);
    }
}

void paintHive(QPainter& p, const HiveMark& m, const HivePlace& place, Detail detail, const look::Colours& c) {
    if (detail == Detail::Dot) return paintDot(p, m, place, c);
    const QRectF body = bodyOf(place.size);
    const double pen = detail == Detail::Combs ? std::clamp(place.size.width() / 34, 1.3, 3.0) : 1.1;
    if (m.boxes == 2) {
        const double away = secondBoxAway(place.size);
        const Turned turned(p, place.centre + QPointF(away, -away), m.headingDeg);
        const double half = pen * 0.3;
        p.fillRect(body.adjusted(-half, -half, half, half), c.ink);
        p.fillRect(body.adjusted(half, half, -half, -half), c.paper);
    }
    {
        const Turned turned(p, place.centre, m.headingDeg);
        paintEntrance(p, place.size, c);
        const double line = m.held() ? pen * 1.3 : pen;
        p.fillRect(body.adjusted(-line / 2, -line / 2, line / 2, line / 2), outlineColour(m, c));
        p.fillRect(body.adjusted(line / 2, line / 2, -line / 2, -line / 2), c.paper);
        if (detail == Detail::Combs)
            paintCombs(p, m, body.adjusted(pen, pen, -pen, -pen), c);
        else
            paintBar(p, m, body, c);
    }
    if (m.held())
        hatch(p, outlineOf(place.centre, place.size, m.headingDeg), std::clamp(place.size.width() / 6, 5.0, 14.0), c);
    if (!m.bees) paintQuestion(p, place.centre, place.size.height() * (detail == Detail::Combs ? 0.42 : 0.7), c);
}

/// One of several: the corners of a frame alone.
static void paintCorners(QPainter& p, const QRectF& frame, const look::Colours& c) {
    p.setPen(QPen(c.planned, 2.4, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
    p.setBrush(Qt::NoBrush);
    const double arm = std::clamp(frame.width() / 4, 4.0, 12.0);
    for (const double x : {-1.0, 1.0})
        for (const double y : {-1.0, 1.0}) {
            const QPointF corner(x < 0 ? frame.left() : frame.right(), y < 0 ? frame.top() : frame.bottom());
            p.drawPolyline(QPolygonF({corner - QPointF(x * arm, 0), corner, corner - QPointF(0, y * arm)}));
        }
}

void paintFrame(QPainter& p, const HivePlace& place, Emphasis emphasis, const look::Colours& c) {
    if (emphasis == Emphasis::Selected) return paintCorners(p, place.box.adjusted(-5, -5, 5, 5), c);
    if (emphasis != Emphasis::Chosen && emphasis != Emphasis::ChosenWithFocus) return;
    const double gap = emphasis == Emphasis::ChosenWithFocus ? 6.5 : 5;
    p.setPen(QPen(c.planned, emphasis == Emphasis::ChosenWithFocus ? 3 : 1.8));
    p.setBrush(Qt::NoBrush);
    p.drawRoundedRect(place.box.adjusted(-gap, -gap, gap, gap), 3, 3);
}

void paintGhost(QPainter& p, const HiveMark& m, const HivePlace& place, const look::Colours& c) {
    p.setPen(QPen(c.quiet, 1.2, Qt::DashLine));
    p.setBrush(Qt::NoBrush);
    p.drawConvexPolygon(outlineOf(place.centre, place.size, m.headingDeg));
}

void paintBadge(QPainter& p, const QRectF& rect, const QString& letters, bool warns, const QFont& font,
                const look::Colours& c) {
    p.setPen(warns ? QPen(Qt::NoPen) : QPen(c.ink, 1.5));
    p.setBrush(warns ? c.warn : c.paper);
    p.drawRoundedRect(rect.adjusted(0.75, 0.75, -0.75, -0.75), 3, 3);
    p.setFont(font);
    p.setPen(warns ? c.onWarn : c.ink);
    p.drawText(rect, Qt::AlignCenter, letters);
    if (!warns || !letters.startsWith(u'O')) return;
    p.setPen(QPen(c.onWarn, 1)); // an order: its O is much like a D
    p.setBrush(Qt::NoBrush);
    p.drawRect(rect.adjusted(2, 2, -2, -2));
}

void paintDrop(QPainter& p, const QPointF& tip, const look::Colours& c) {
    QPainterPath drop(tip);
    drop.cubicTo(tip + QPointF(1.5, 4), tip + QPointF(4.8, 6), tip + QPointF(4.8, 9.6));
    drop.cubicTo(tip + QPointF(4.8, 12.4), tip + QPointF(2.7, 14.2), tip + QPointF(0, 14.2));
    drop.cubicTo(tip + QPointF(-2.7, 14.2), tip + QPointF(-4.8, 12.4), tip + QPointF(-4.8, 9.6));
    drop.cubicTo(tip + QPointF(-4.8, 6), tip + QPointF(-1.5, 4), tip);
    p.setPen(QPen(c.ink, 1.4));
    p.setBrush(c.paper);
    p.drawPath(drop);
}

void paintTexts(QPainter& p, const HiveMark& m, const HivePlace& place, const Texts& texts, size_t hive,
                core::VolumeUnit volume, const look::Colours& c) {
    paintSmallMarks(p, m, place, c);
    if (place.badgeOn) {
        QFont small = texts.badgeFont();
        small.setPixelSize(std::max(8, static_cast<int>(place.badge.height() * 0.85)));
        paintBadge(p, place.badge, m.holdLetters.left(1), true, small, c);
    } else if (!place.badge.isEmpty()) {
        paintBadge(p, place.badge, m.holdLetters, true, texts.badgeFont(), c);
    }
    //: The plan's letter for laying workers
    if (!place.laying.isEmpty()) paintBadge(p, place.laying, QStringLiteral("L"), false, texts.badgeFont(), c);
    if (!place.label.isEmpty()) {
        p.setFont(texts.labelFont());
        p.setPen(c.ink);
        p.drawStaticText(place.label.topLeft(), texts.label(hive));
    }
    if (!place.line.isEmpty()) {
        p.setFont(texts.lineFont());
        p.setPen(c.quiet);
        p.drawStaticText(place.line.topLeft(), texts.line(hive, place.lineForm));
    }
    if (place.drop.isEmpty()) return;
    paintDrop(p, QPointF(place.drop.center().x(), place.drop.top() + 1), c);
    p.setFont(texts.lineFont());
    p.setPen(c.ink);
    const QString feed = look::feedOf(m.feedHalfLitres, volume);
    p.drawText(place.drop.adjusted(0, 17, 0, 0), Qt::AlignHCenter | Qt::AlignTop, feed);
}

} // namespace ui::plan
