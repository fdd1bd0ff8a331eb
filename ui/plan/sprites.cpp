#include "ui/plan/sprites.h"

#include "ui/plan/paint_hive.h"

#include <QPainter>

#include <algorithm>
#include <cmath>

namespace ui::plan {

namespace {

constexpr int kMostStamps = 8192; // at the largest about 30 MB

/// The same hive as far as a stamp tells.
HiveMark coarse(const HiveMark& m) {
    HiveMark out;
    out.headingDeg = (m.headingDeg + 7) / 15 * 15 % 360;
    out.combs = m.combs;
    out.boxes = m.boxes;
    if (m.bees) out.bees = core::Quarters{std::min(m.bees->value, 4 * m.combs) / 2 * 2};
    if (m.held()) out.holdLetters = QStringLiteral("B");
    return out;
}

/// The size that a stamp is painted in: of a row of levels 5 % apart, so that a zoom finds most of its stamps painted.
QSize levelOf(const QSizeF& size) {
    constexpr double kStep = 1.05;
    const double level = std::pow(kStep, std::round(std::log(size.width()) / std::log(kStep)));
    return {static_cast<int>(std::lround(level)), static_cast<int>(std::lround(size.height() * level / size.width()))};
}

quint64 keyOf(const HiveMark& m, const QSize& size) {
    quint64 key = m.bees ? static_cast<quint64>(m.bees->value) + 1 : 0;
    key = key << 5 | static_cast<quint64>(m.headingDeg / 15);
    key = key << 6 | static_cast<quint64>(m.combs);
    key = key << 2 | (m.boxes == 2 ? 2u : 0u) | (m.held() ? 1u : 0u);
    key = key << 10 | static_cast<quint64>(size.width());
    return key << 10 | static_cast<quint64>(size.height());
}

} // namespace

namespace {

QPixmap blank(const QSize& size, double ratio) {
    QPixmap stamp(size * ratio);
    stamp.setDevicePixelRatio(ratio);
    stamp.fill(Qt::transparent);
    return stamp;
}

void stampAt(QPainter& p, const QPointF& centre, const QPixmap& stamp) {
    const QSizeF half = stamp.deviceIndependentSize() / 2;
    p.drawPixmap(QPoint(static_cast<int>(std::lround(centre.x() - half.width())),
                        static_cast<int>(std::lround(centre.y() - half.height()))),
                 stamp);
}

void drawSign(QPainter& p, const QPointF& centre, int order, bool chosen, const QFont& font, const look::Colours& c) {
    const double r = signRadius(font);
    p.setPen(QPen(c.planned, 1.7));
    p.setBrush(chosen ? c.planned : c.paper);
    p.drawEllipse(centre, r, r);
    p.setFont(font);
    p.setPen(chosen ? c.onPlanned : c.planned);
    p.drawText(QRectF(centre - QPointF(r + 3, r + 3), QSizeF(2 * r + 6, 2 * r + 6)), Qt::AlignCenter,
               QString::number(order));
}

} // namespace

QPixmap& Sprites::stamp(quint64 key, const look::Colours& c, double ratio) {
    if (m_paper != c.paper.rgb() || m_ratio != ratio || m_stamps.size() > kMostStamps) m_stamps.clear();
    m_paper = c.paper.rgb();
    m_ratio = ratio;
    return m_stamps[key];
}

void Sprites::paint(QPainter& p, const HiveMark& mark, const HivePlace& place, const look::Colours& c) {
    if (m_kind == Kind::Strokes) return paintHive(p, mark, place, Detail::Bar, c);
    const QSize size = levelOf(place.size);
    const HiveMark m = coarse(mark);
    const double ratio = p.device()->devicePixelRatioF();
    QPixmap& picture = stamp(keyOf(m, size), c, ratio);
    if (picture.isNull()) {
        const int side = static_cast<int>(std::ceil(std::hypot(size.width(), size.height()))) + 8;
        picture = blank(QSize(side, side), ratio);
        HivePlace alone;
        alone.size = size;
        alone.centre = QPointF(side / 2.0, side / 2.0);
        alone.box = outlineOf(alone.centre, alone.size, m.headingDeg).boundingRect();
        QPainter on(&picture);
        on.setRenderHint(QPainter::Antialiasing, true);
        paintHive(on, m, alone, Detail::Bar, c);
    }
    stampAt(p, place.centre, picture);
}

void Sprites::paintSign(QPainter& p, const QPointF& at, int order, bool chosen, const QFont& font,
                        const look::Colours& c) {
    if (m_kind == Kind::Strokes) return drawSign(p, at, order, chosen, font, c);
    const double ratio = p.device()->devicePixelRatioF();
    const double high = QFontMetricsF(font).height();
    const quint64 key =
        quint64{1} << 63 | static_cast<quint64>(order) << 20 | static_cast<quint64>(high * 8) << 1 | (chosen ? 1u : 0u);
    QPixmap& picture = stamp(key, c, ratio);
    if (picture.isNull()) {
        const double r = signRadius(font);
        const int side = static_cast<int>(2 * r) + 6;
        picture = blank(QSize(side, side), ratio);
        QPainter on(&picture);
        on.setRenderHint(QPainter::Antialiasing, true);
        drawSign(on, QPointF(side / 2.0, side / 2.0), order, chosen, font, c);
    }
    stampAt(p, at, picture);
}

double signRadius(const QFont& font) { return QFontMetricsF(font).height() * 0.5 + 2; }

} // namespace ui::plan
