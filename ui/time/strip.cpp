#include "ui/time/strip.h"

#include "ui/look/words.h"
#include "ui/time/strip_accessible.h"

#include <QHelpEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QToolTip>
#include <QWheelEvent>

#include <algorithm>
#include <cmath>

namespace ui::time {

namespace {

constexpr double kMargin = 14;    // pixels free at either end, half the knob and more
constexpr double kSnapPixels = 4; // a click this near to a day with records means that day
constexpr double kZoomStep = 1.3;

core::Day monthsOn(core::Day day, int months) { return core::dayOf(core::toDate(day).addMonths(months)); }

} // namespace

Strip::Strip(QWidget* parent) : QWidget(parent) {
    installStripAccessible();
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setAccessibleName(tr("Day of the yard"));
    setAccessibleDescription(tr("Left and right go a day, with Shift a week, with Ctrl to the next day with a record; "
                                "page up and down a month, plus and minus zoom, space plays"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

QSize Strip::sizeHint() const { return {420, minimumSizeHint().height()}; }
QSize Strip::minimumSizeHint() const { return {160, 2 * fontMetrics().height() + 12}; }

void Strip::setRecords(Records records) {
    m_records = std::move(records);
    m_mostVisits = 1;
    for (const core::RecordedDay& r : m_records)
        if (r.what == core::Recorded::Visit) m_mostVisits = std::max(m_mostVisits, r.count);
    update();
}

void Strip::setDays(core::Day first, core::Day last, core::Day today) {
    m_today = today;
    if (first != m_scale.first() || last != m_scale.last()) m_scale.setDays(first, last);
    tell();
}

void Strip::setDay(core::Day day) {
    m_day = day;
    if (!m_dragging) m_scale.bringIntoView(day);
    tell();
}

void Strip::tell() {
    update();
    announceDay(*this);
}

void Strip::settleScale() {
    m_scale.setWidth(width(), kMargin);
    update();
}

void Strip::showAll() {
    m_scale.showAll();
    update();
}

void Strip::showDays(int days) {
    m_scale.showDays(days, m_day);
    update();
}

void Strip::zoomBy(double factor) {
    m_scale.zoomBy(factor, m_scale.xOf(m_day));
    update();
}

void Strip::askFor(core::Day day) { emit dayAsked(std::clamp(day, first(), last()), false); }

QString Strip::spoken(core::Day day) const {
    const QString words = recordWords(recordsIn(m_records, day, day));
    return words.isEmpty() ? look::dayText(day) : tr("%1: %2").arg(look::dayText(day), words);
}

/// The day under the pointer, or one with records that is hardly beside it.
core::Day Strip::nearby(double x) const {
    const core::Day here = m_scale.dayAt(x);
    const auto in = recordsIn(m_records, m_scale.dayAt(x - kSnapPixels), m_scale.dayAt(x + kSnapPixels));
    core::Day best = here;
    double away = kSnapPixels + 1;
    for (const core::RecordedDay& r : in) {
        const double off = std::abs(m_scale.xOf(r.day) - x);
        if (off < away) {
            best = r.day;
            away = off;
        }
    }
    return best;
}

void Strip::mousePressEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton) return;
    m_dragging = true;
    emit dayAsked(nearby(event->position().x()), true);
}

void Strip::mouseMoveEvent(QMouseEvent* event) {
    if (!m_dragging) return;
    const double x = event->position().x();
    if (x < 0) m_scale.scrollBy(x); // beyond the ends the line goes on
    if (x > width()) m_scale.scrollBy(x - width());
    const core::Day day = nearby(x);
    if (day != m_day) emit dayAsked(day, true);
}

void Strip::mouseReleaseEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton || !m_dragging) return;
    m_dragging = false;
    emit dropped();
}

void Strip::wheelEvent(QWheelEvent* event) {
    const QPoint turned = event->angleDelta();
    const bool along = std::abs(turned.x()) > std::abs(turned.y()) || event->modifiers().testFlag(Qt::ShiftModifier);
    if (along)
        m_scale.scrollBy(-(turned.x() != 0 ? turned.x() : turned.y()));
    else
        m_scale.zoomBy(std::pow(kZoomStep, turned.y() / 120.0), event->position().x());
    update();
    event->accept();
}

std::optional<core::Day> Strip::dayOfKey(const QKeyEvent& event) const {
    const bool far = event.modifiers().testFlag(Qt::ShiftModifier);
    const bool recorded = event.modifiers().testFlag(Qt::ControlModifier);
    switch (event.key()) {
    case Qt::Key_Left:
    case Qt::Key_Down:
        return recorded ? dayBefore(m_records, m_day).value_or(m_day) : m_day - (far ? 7 : 1);
    case Qt::Key_Right:
    case Qt::Key_Up:
        return recorded ? std::min(dayAfter(m_records, m_day).value_or(m_day), last()) : m_day + (far ? 7 : 1);
    case Qt::Key_PageDown:
        return monthsOn(m_day, far ? -12 : -1);
    case Qt::Key_PageUp:
        return monthsOn(m_day, far ? 12 : 1);
    case Qt::Key_Home:
        return first();
    case Qt::Key_End:
        return last();
    default:
        return std::nullopt;
    }
}

bool Strip::zoomKey(const QKeyEvent& event) {
    if (event.modifiers() & (Qt::ControlModifier | Qt::AltModifier)) return false;
    if (event.key() == Qt::Key_Plus || event.key() == Qt::Key_Equal)
        zoomBy(kZoomStep);
    else if (event.key() == Qt::Key_Minus)
        zoomBy(1 / kZoomStep);
    else if (event.key() == Qt::Key_0)
        showAll();
    else
        return false;
    return true;
}

void Strip::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Space) {
        if (!event->isAutoRepeat()) emit playAsked();
        return;
    }
    if (zoomKey(*event)) return;
    const auto day = dayOfKey(*event);
    if (!day) return QWidget::keyPressEvent(event);
    m_held = event->isAutoRepeat();
    const core::Day in = std::clamp(*day, first(), last());
    if (in != m_day) emit dayAsked(in, m_held);
}

void Strip::keyReleaseEvent(QKeyEvent* event) {
    if (event->isAutoRepeat() || !std::exchange(m_held, false)) return QWidget::keyReleaseEvent(event);
    emit dropped();
}

void Strip::focusInEvent(QFocusEvent* event) {
    QWidget::focusInEvent(event);
    tell();
}

void Strip::focusOutEvent(QFocusEvent* event) {
    QWidget::focusOutEvent(event);
    if (std::exchange(m_held, false)) emit dropped();
    update();
}

void Strip::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    settleScale();
}

void Strip::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange) updateGeometry();
}

bool Strip::event(QEvent* event) {
    if (event->type() != QEvent::ToolTip) return QWidget::event(event);
    const auto* help = static_cast<QHelpEvent*>(event);
    const core::Day day = nearby(help->pos().x());
    QToolTip::showText(help->globalPos(), spoken(day), this);
    return true;
}

} // namespace ui::time
