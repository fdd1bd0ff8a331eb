#include "ui/plan/paint_asked.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace ui::plan {

namespace {

struct AskedWords {
    Q_DECLARE_TR_FUNCTIONS(AskedWords)
};

constexpr double kWidestKey = 0.6; // of the view

/// A pennant to the left of the pole, its free end notched.
void paintFlag(QPainter& p, const QRectF& flag, const QString& text, const QFont& font, const look::Colours& c) {
    const double notch = flag.height() * 0.3;
    const QPointF middle(flag.left() + notch, flag.center().y());
    p.setPen(QPen(c.paper, 1));
    p.setBrush(c.ink);
    p.drawPolygon(QPolygonF({flag.topRight(), flag.topLeft(), middle, flag.bottomLeft(), flag.bottomRight()}));
    if (text.isEmpty()) return;
    p.setFont(font);
    p.setPen(c.paper);
    p.drawText(flag.adjusted(notch, 0, -1, 0), Qt::AlignCenter, text);
}

QSizeF flagSize(const QString& text, const QFont& font) {
    const QFontMetricsF metrics(font);
    const double high = metrics.height();
    return {metrics.horizontalAdvance(text) + high * 0.3 + 7, high};
}

QFont flagFont(const QFont& font) {
    QFont bold = font;
    bold.setBold(true);
    return bold;
}

} // namespace

void paintAsked(QPainter& p, const HiveMark& m, const HivePlace& place, Detail detail, const QFont& font,
                const look::Colours& c) {
    if (m.asked.isEmpty()) return;
    const QFont bold = flagFont(font);
    const bool small = detail == Detail::Dot;
    const QSizeF size = small ? QSizeF(6, 5) : flagSize(m.asked, bold);
    const QPointF foot = place.box.topLeft() + QPointF(1, small ? 2 : place.box.height() * 0.25);
    const QRectF flag(foot - QPointF(size.width(), size.height() + (small ? 1 : 2)), size);
    p.setPen(QPen(c.ink, small ? 1 : 1.6, Qt::SolidLine, Qt::FlatCap));
    p.drawLine(flag.topRight(), foot);
    paintFlag(p, flag, small ? QString() : m.asked, bold, c);
}

void paintAskedKey(QPainter& p, const Camera& camera, const Scene& scene, const QFont& font, const look::Colours& c) {
    if (scene.asked.empty()) return;
    const QFontMetricsF metrics(font);
    const QFont bold = flagFont(font);
    const double most = camera.view.width() * kWidestKey;
    const double line = metrics.height() + 4;
    QStringList texts;
    double wide = 0;
    for (const AskedMark& a : scene.asked) {
        const QString count = a.found == 1 ? AskedWords::tr("1 hive") : AskedWords::tr("%1 hives").arg(a.found);
        const QString name = metrics.elidedText(a.name, Qt::ElideRight, most);
        texts << QStringLiteral("%1: %2").arg(name, count);
        wide = std::max(wide, metrics.horizontalAdvance(texts.back()));
    }
    const double sign = flagSize(QString::number(texts.size()), bold).width() + 8;
    const double high = line * static_cast<double>(texts.size());
    const QRectF area(10, camera.view.height() - high - 18, wide + sign + 16, high + 8);
    p.setPen(QPen(c.rule, 1));
    p.setBrush(c.paper);
    p.drawRoundedRect(area, 4, 4);
    for (int i = 0; i < texts.size(); ++i) {
        const QString number = QString::number(i + 1);
        const QSizeF size = flagSize(number, bold);
        const double top = area.top() + 4 + i * line;
        paintFlag(p, QRectF(QPointF(area.left() + 8, top + 2), size), number, bold, c);
        p.setFont(font);
        p.setPen(c.ink);
        p.drawText(QRectF(area.left() + 8 + sign, top, wide + 4, line), Qt::AlignLeft | Qt::AlignVCenter, texts[i]);
    }
}

} // namespace ui::plan
