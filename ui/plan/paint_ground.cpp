#include "ui/plan/paint_ground.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace ui::plan {

namespace {

struct GroundWords {
    Q_DECLARE_TR_FUNCTIONS(GroundWords)
};

double pixelsPer(core::LengthUnit unit, const Camera& camera) {
    return camera.pixelsPerMetre * core::millimetresIn(unit) / 1000;
}

/// Lines each `every` pixels, crisp on the pixel.
void gridLines(QPainter& p, const Camera& camera, double every, const QColor& colour) {
    const QRectF seen = camera.visible();
    const QPointF offset = camera.offset();
    for (double i = std::ceil(seen.left() / every); i * every <= seen.right(); ++i)
        p.fillRect(QRectF(std::round(i * every + offset.x()), 0, 1, seen.height()), colour);
    for (double i = std::ceil(seen.top() / every); i * every <= seen.bottom(); ++i)
        p.fillRect(QRectF(0, std::round(i * every + offset.y()), seen.width(), 1), colour);
}

} // namespace

void paintGrid(QPainter& p, const Camera& camera, core::LengthUnit unit, const look::Colours& c) {
    p.fillRect(QRectF(QPointF(), camera.view), c.paper);
    p.save();
    p.setRenderHint(QPainter::Antialiasing, false);
    const double perUnit = pixelsPer(unit, camera);
    double fine = 1;
    while (fine * perUnit < 9) fine *= 10;
    if (perUnit > 400) fine = 0.1;
    const double bold = fine == 0.1 ? 1 : fine * 5;
    gridLines(p, camera, fine * perUnit, c.gridFine);
    gridLines(p, camera, bold * perUnit, c.gridBold);
    p.restore();
}

void paintGate(QPainter& p, const Camera& camera, core::MmPoint gate, const QFont& font, const look::Colours& c,
               const QString& word) {
    const QPointF at = camera.toView(gate);
    const double wide = std::clamp(camera.pixelsPerMetre * 0.35, 9.0, 18.0);
    p.setPen(QPen(c.ink, 2, Qt::SolidLine, Qt::FlatCap));
    p.drawLine(at - QPointF(wide + 8, 0), at - QPointF(8, 0));
    p.drawLine(at + QPointF(8, 0), at + QPointF(wide + 8, 0));
    p.drawLine(at - QPointF(8, 0), at + QPointF(3, -12));
    const QString text = word.isEmpty() ? GroundWords::tr("gate") : word;
    const QFontMetricsF metrics(font);
    p.setFont(font);
    p.setPen(c.quiet);
    p.drawText(at + QPointF(-metrics.horizontalAdvance(text) / 2, metrics.height() + 2), text);
}

void paintStand(QPainter& p, const Camera& camera, const StandMark& stand, double magnified, const QFont& font,
                const look::Colours& c) {
    const QPointF at = camera.toView(stand.at);
    const double half = std::max(2.5, 0.2 * magnified * camera.pixelsPerMetre);
    if (half < 5) { // a cross: a square of this size is a hive
        const QPointF on(std::round(at.x()), std::round(at.y()));
        p.fillRect(QRectF(on - QPointF(3, 0.5), QSizeF(6, 1)), c.quiet);
        p.fillRect(QRectF(on - QPointF(0.5, 3), QSizeF(1, 6)), c.quiet);
        return;
    }
    p.setPen(QPen(c.quiet, 1, Qt::DashLine));
    p.setBrush(Qt::NoBrush);
    p.drawRect(QRectF(at - QPointF(half, half), QSizeF(2 * half, 2 * half)));
    const QFontMetricsF metrics(font);
    if (half < 9 || metrics.horizontalAdvance(stand.name) > 2 * half + 24) return;
    p.setFont(font);
    p.setPen(c.quiet);
    p.drawText(QRectF(at - QPointF(half + 12, half), QSizeF(2 * half + 24, 2 * half)), Qt::AlignCenter, stand.name);
}

void paintNorth(QPainter& p, const Camera& camera, const QFont& font, const look::Colours& c) {
    const QPointF at(camera.view.width() - 34, 30);
    p.setPen(QPen(c.ink, 1.6, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    p.drawLine(at, at + QPointF(0, 40));
    p.drawPolyline(QPolygonF({at + QPointF(-5, 12), at, at + QPointF(5, 12)}));
    QFont bold = font;
    bold.setBold(true);
    p.setFont(bold);
    //: North, on the plan's arrow
    const QString text = GroundWords::tr("N");
    const QFontMetricsF metrics(bold);
    p.drawText(at + QPointF(-metrics.horizontalAdvance(text) / 2, 44 + metrics.ascent()), text);
}

double scaleBarLength(double pixelsPerUnit) {
    const double least = 90 / pixelsPerUnit;
    const double decade = std::pow(10, std::floor(std::log10(least)));
    for (const double step : {1.0, 2.0, 5.0, 10.0})
        if (decade * step >= least * 0.999) return decade * step;
    return decade * 10;
}

void paintScaleBar(QPainter& p, const Camera& camera, core::LengthUnit unit, const QFont& font,
                   const look::Colours& c) {
    const double perUnit = pixelsPer(unit, camera);
    const double length = scaleBarLength(perUnit);
    const double wide = std::round(length * perUnit);
    const QPointF right(std::round(camera.view.width() - 28) + 0.5, std::round(camera.view.height() - 22) + 0.5);
    const QPointF left = right - QPointF(wide, 0);
    const QFontMetricsF metrics(font);
    p.fillRect(QRectF(left, right).adjusted(-8, -metrics.height() - 14, 16, 8), c.paper);
    p.setPen(QPen(c.ink, 1.5, Qt::SolidLine, Qt::FlatCap));
    p.drawPolyline(QPolygonF({left - QPointF(0, 7), left, right, right - QPointF(0, 7)}));
    p.drawLine((left + right) / 2, (left + right) / 2 - QPointF(0, 4));
    p.setFont(font);
    p.setPen(c.quiet);
    const QString end = GroundWords::tr("%1 %2").arg(QString::number(length), core::unitSign(unit));
    p.drawText(left - QPointF(metrics.horizontalAdvance(QLatin1Char('0')) / 2, 10), QStringLiteral("0"));
    p.drawText(right - QPointF(metrics.horizontalAdvance(end) - 12, 10), end);
}

} // namespace ui::plan
