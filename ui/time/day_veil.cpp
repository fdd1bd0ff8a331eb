#include "ui/time/day_veil.h"

#include "ui/look/colours.h"

#include <QEvent>
#include <QPainter>

namespace ui::time {

DayVeil::DayVeil(QWidget* over) : QWidget(over) {
    setAttribute(Qt::WA_TransparentForMouseEvents);
    setAttribute(Qt::WA_NoSystemBackground);
    setFocusPolicy(Qt::NoFocus);
    setGeometry(over->rect());
    over->installEventFilter(this);
    hide();
}

void DayVeil::setText(const QString& text) {
    m_text = text;
    setVisible(!text.isEmpty());
    raise();
    update();
}

void DayVeil::paintEvent(QPaintEvent*) {
    const look::Colours c = look::coloursOf(*this);
    QPainter p(this);
    p.setRenderHint(QPainter::Antialiasing);
    p.setPen(QPen(c.planned, 4));
    p.drawRect(QRectF(rect()).adjusted(1, 1, -1, -1));
    QFont bold = font();
    bold.setBold(true);
    p.setFont(bold);
    const QFontMetrics m(bold);
    const QRectF plate(0, 0, m.horizontalAdvance(m_text) + 24, m.height() + 10);
    p.setPen(Qt::NoPen);
    p.setBrush(c.planned);
    p.drawRect(plate);
    p.setPen(c.onPlanned);
    p.drawText(plate, Qt::AlignCenter, m_text);
}

bool DayVeil::eventFilter(QObject* watched, QEvent* event) {
    if (watched == parent() && event->type() == QEvent::Resize) resize(parentWidget()->size());
    return QWidget::eventFilter(watched, event);
}

} // namespace ui::time
