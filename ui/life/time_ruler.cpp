#include "ui/life/time_ruler.h"

#include "ui/look/colours.h"
#include "ui/look/type.h"

#include <QFontMetricsF>
#include <QPainter>

namespace ui::life {

namespace {
constexpr double kMargin = 14;
constexpr int kTick = 4;
} // namespace

TimeRuler::TimeRuler(QWidget* parent) : QWidget(parent) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    setAttribute(Qt::WA_TransparentForMouseEvents);
}

void TimeRuler::setDays(core::Day first, core::Day last) {
    m_scale.setDays(first, last);
    m_scale.showAll();
    update();
}

void TimeRuler::setRoom(int width) {
    m_room = width;
    m_scale.setWidth(width, kMargin);
    m_scale.showAll();
    update();
}

void TimeRuler::setStrip(int high, std::function<void(QPainter&, const QRectF&)> paint) {
    m_strip = high;
    m_paint = std::move(paint);
    updateGeometry();
    update();
}

QSize TimeRuler::sizeHint() const {
    return {100, QFontMetrics(look::lesserFont(font())).height() + kTick + 2 + m_strip};
}

void TimeRuler::resizeEvent(QResizeEvent*) {
    if (m_room == 0) {
        m_scale.setWidth(width(), kMargin);
        m_scale.showAll();
    }
}

void TimeRuler::paintEvent(QPaintEvent*) {
    QPainter p(this);
    p.setRenderHint(QPainter::Antialiasing);
    const look::Colours c = look::coloursOf(*this);
    const QFont font = look::lesserFont(this->font());
    const QFontMetricsF text(font);
    p.setFont(font);
    const double line = text.height() + kTick;
    for (const time::ScaleMark& m :
         m_scale.marks([&](const QString& words) { return text.horizontalAdvance(words); })) {
        p.setPen(QPen(c.quiet, 1));
        p.drawLine(QPointF(m.x, line - kTick), QPointF(m.x, line));
        p.setPen(m.year ? c.ink : c.quiet);
        const double half = text.horizontalAdvance(m.text) / 2;
        p.drawText(QRectF(m.x - half, 0, 2 * half + 1, text.height()), Qt::AlignLeft, m.text);
    }
    p.setPen(QPen(c.rule, 1));
    p.drawLine(QPointF(kMargin, line), QPointF((m_room > 0 ? m_room : width()) - kMargin, line));
    if (m_paint) m_paint(p, QRectF(0, line + 2, m_room > 0 ? m_room : width(), m_strip));
}

} // namespace ui::life
