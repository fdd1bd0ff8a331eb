#include "ui/chart/chart_view.h"

#include "ui/chart/chart_accessible.h"
#include "ui/chart/paint_chart.h"

#include <QKeyEvent>
#include <QPainter>

#include <cmath>

namespace ui::chart {

namespace {

constexpr int kRim = 4; // the frame of focus

} // namespace

ChartView::ChartView(QWidget* parent) : QWidget(parent) {
    installChartAccessible();
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Chart")); // until it has one
    setMouseTracking(true);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
}

void ChartView::setChart(Chart chart) {
    const std::optional<int> was = stop();
    m_chart = std::move(chart);
    m_layout.reset();
    m_picture = {};
    m_stop.reset();
    m_hovered.reset();
    setAccessibleName(m_chart.title);
    setAccessibleDescription(summary(m_chart));
    if (was) setStop(*was);
    tell();
}

QRectF ChartView::inside() const { return QRectF(rect()).adjusted(kRim, kRim, -kRim, -kRim); }

const ChartLayout& ChartView::layedOut() const {
    if (!m_layout) m_layout = layOut(m_chart, inside().size(), font());
    return *m_layout;
}

QString ChartView::reading() const {
    const auto stop = shownStop();
    return stop && *stop < layedOut().stops.size() ? spoken(m_chart, layedOut().stops[*stop].first) : QString();
}

std::optional<int> ChartView::stop() const {
    if (!m_stop || *m_stop >= layedOut().stops.size()) return std::nullopt;
    return layedOut().stops[*m_stop].first;
}

void ChartView::setStop(int at) {
    const auto& stops = layedOut().stops;
    if (stops.empty()) return;
    const auto nearest = std::ranges::min_element(stops, {}, [at](const auto& s) { return std::abs(s.first - at); });
    m_stop = static_cast<size_t>(nearest - stops.begin());
    tell();
}

void ChartView::setLowest(int height) {
    m_lowest = height;
    updateGeometry();
}

QSize ChartView::sizeHint() const { return {minimumSizeHint().width() * 2, minimumSizeHint().height()}; }

QSize ChartView::minimumSizeHint() const {
    const double scale = fontMetrics().height() / 17.0; // a usual line of text
    return {static_cast<int>(200 * scale), static_cast<int>(std::lround(m_lowest * scale))};
}

void ChartView::paintEvent(QPaintEvent*) {
    const look::Colours c = look::coloursOf(*this);
    if (m_picture.isNull()) {
        m_picture = QPixmap(size() * devicePixelRatioF());
        m_picture.setDevicePixelRatio(devicePixelRatioF());
        m_picture.fill(c.paper);
        QPainter drawn(&m_picture);
        drawn.translate(inside().topLeft());
        paintChart(drawn, m_chart, layedOut(), c);
    }
    QPainter p(this);
    p.drawPixmap(0, 0, m_picture);
    if (const auto stop = shownStop(); stop && (m_hovered || hasFocus())) {
        p.save();
        p.translate(inside().topLeft());
        paintStop(p, m_chart, layedOut(), *stop, c);
        p.restore();
    }
    if (hasFocus()) {
        p.setPen(QPen(c.ink, 2));
        p.drawRect(rect().adjusted(1, 1, -1, -1));
    }
}

void ChartView::resizeEvent(QResizeEvent*) {
    m_layout.reset();
    m_picture = {};
}

void ChartView::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    m_layout.reset();
    m_picture = {};
    if (event->type() == QEvent::FontChange) updateGeometry();
    update();
}

void ChartView::goTo(size_t stop) {
    m_hovered.reset();
    m_stop = stop;
    tell();
}

void ChartView::hover(std::optional<size_t> stop) {
    if (m_hovered == stop) return;
    m_hovered = stop;
    tell();
}

void ChartView::tell() {
    update();
    emit readingChanged(reading());
    announceReading(*this);
}

void ChartView::keyPressEvent(QKeyEvent* event) {
    const size_t count = layedOut().stops.size();
    const bool plain = (event->modifiers() & ~Qt::KeypadModifier) == Qt::NoModifier;
    if (plain && (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter)) {
        emit openAsked();
        return;
    }
    if (!plain || count == 0) return QWidget::keyPressEvent(event);
    switch (event->key()) {
    case Qt::Key_Right:
        return goTo(m_stop ? std::min(*m_stop + 1, count - 1) : 0);
    case Qt::Key_Left:
        return goTo(m_stop ? *m_stop - (*m_stop > 0) : count - 1);
    case Qt::Key_Home:
        return goTo(0);
    case Qt::Key_End:
        return goTo(count - 1);
    default:
        QWidget::keyPressEvent(event);
    }
}

void ChartView::mouseMoveEvent(QMouseEvent* event) {
    const QPointF at = event->position() - inside().topLeft();
    const ChartLayout& l = layedOut();
    hover(!l.empty && at.y() >= 0 && at.x() >= l.plot.left() - 8 && at.x() <= l.plot.right() + 8 ? l.stopAt(at.x())
                                                                                                 : std::nullopt);
}

void ChartView::mouseReleaseEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton || !rect().contains(event->pos())) return;
    if (m_hovered) m_stop = m_hovered;
    emit openAsked();
}

void ChartView::leaveEvent(QEvent*) { hover(std::nullopt); }

void ChartView::focusInEvent(QFocusEvent* event) {
    QWidget::focusInEvent(event);
    if (!m_stop && !layedOut().stops.empty()) m_stop = layedOut().stops.size() - 1;
    tell();
}

void ChartView::focusOutEvent(QFocusEvent* event) {
    QWidget::focusOutEvent(event);
    update();
}

} // namespace ui::chart
