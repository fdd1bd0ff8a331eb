#include "ui/plan/plan_view.h"

#include "ui/look/words.h"
#include "ui/plan/ground.h"
#include "ui/plan/plan_accessible.h"
#include "ui/plan/route.h"

#include <QAccessible>
#include <QApplication>
#include <QHelpEvent>
#include <QPainter>
#include <QToolTip>

#include <algorithm>
#include <cmath>

namespace ui::plan {

namespace {
constexpr int kRouteAfterMs = 140; // a zoom has come to rest
constexpr int kNudgeBurstMs = 700; // arrow keys within this are one carry
} // namespace

PlanView::PlanView(QWidget* parent)
    : QWidget(parent),
      m_drag({[this](const QPointF& p) { return m_camera.toPlan(p); },
              [this](core::MmPoint at, std::span<const core::ColonyId> carried) {
                  return snapped(m_scene, at, carried,
                                 static_cast<int>(std::min(8000 / m_camera.pixelsPerMetre, 400.0)));
              },
              [this](core::MmPoint at, std::span<const core::ColonyId> carried) {
                  return standingAt(m_scene, at, carried, m_magnified);
              }},
             QApplication::startDragDistance()) {
    PlanAccessible::install(); // before anything asks how the plan is to be shown
    connect(this, &PlanView::hiveFocused, this, [this](core::ColonyId colony) { announceHive(*this, colony); });
    connect(&m_flight, &Flight::at, this, [this](const Camera& now) {
        m_camera.centre = now.centre;
        m_camera.pixelsPerMetre = now.pixelsPerMetre;
        stale();
    });
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setAttribute(Qt::WA_OpaquePaintEvent);
    setMinimumSize(240, 200);
    setAccessibleName(tr("Yard plan"));
    m_routeSoon.setSingleShot(true);
    m_routeSoon.setInterval(kRouteAfterMs);
    connect(&m_routeSoon, &QTimer::timeout, this, &PlanView::routeNow);
    m_nudgeDone.setSingleShot(true);
    m_nudgeDone.setInterval(kNudgeBurstMs);
    connect(&m_nudgeDone, &QTimer::timeout, this, &PlanView::setDown);
    setScene({});
}

PlanView::~PlanView() = default;

void PlanView::setScene(Scene scene) {
    const bool another = scene.yard != m_scene.yard;
    const bool otherDay = !another && scene.on != m_scene.on;
    keepCarry(scene);
    if (another) m_drift.clear();
    if (m_tool && another) m_tool->abort();
    m_scene = std::move(scene);
    m_texts = std::make_unique<Texts>(m_scene, font());
    m_magnified = magnificationNow();
    m_routed.reset();
    stale();
    if (another || (m_fitted && !(otherDay && allInView()))) fit();
}

void PlanView::setEmptyText(const QString& text) {
    m_emptyText = text;
    stale();
}

void PlanView::setChosen(std::optional<core::ColonyId> colony) {
    if (colony == m_chosen) return;
    m_chosen = colony;
    stale();
    const auto at = chosenAt();
    setAccessibleDescription(at ? m_scene.hives[*at].spoken : QString());
    QAccessibleEvent changed(this, QAccessible::DescriptionChanged);
    QAccessible::updateAccessibility(&changed);
    if (at) bringIntoView(*at);
}

void PlanView::fit() {
    QRectF metres = metresOf(m_scene);
    metres |= m_sketch.metres();
    if (m_scene.hives.empty() && m_sketch.sketch().hives.empty()) { // room to begin in, most of it behind the gate
        const core::MmPoint gate = m_sketch.sketch().gate.value_or(m_scene.gate);
        metres |= QRectF(gate.x / 1000.0 - 8, -gate.y / 1000.0 - 8, 16, 11);
    }
    m_flight.stop();
    m_camera.view = size();
    m_camera.fit(metres, kFitMargin + std::max(0.0, 2 * m_texts->lineHeight() - 32), kFitNearest); // large texts
    m_fitted = true;
    stale();
}

void PlanView::zoomIn() { zoomAt(1.25, rect().center()); }
void PlanView::zoomOut() { zoomAt(1 / 1.25, rect().center()); }

void PlanView::zoomAt(double factor, const QPointF& at) {
    m_flight.stop();
    m_camera.zoomBy(factor, at);
    m_fitted = false;
    stale();
}

void PlanView::scroll(const QPointF& pixels) {
    m_flight.stop();
    m_camera.scrollBy(pixels);
    m_fitted = false;
    m_frameStale = true;
    update();
}

void PlanView::bringIntoView(size_t hive) {
    const QPointF at = m_camera.toView(m_scene.hives[hive].at);
    const QRectF comfortable = QRectF(rect()).adjusted(50, 50, -50, -70);
    if (comfortable.contains(at) || comfortable.isEmpty()) return;
    const QPointF inside(std::clamp(at.x(), comfortable.left(), comfortable.right()),
                         std::clamp(at.y(), comfortable.top(), comfortable.bottom()));
    scroll(inside - at);
}

bool PlanView::allInView() const {
    constexpr int kClear = 36; // pixels around
    const QRectF inside = QRectF(rect()).adjusted(kClear, kClear, -kClear, -kClear);
    const auto in = [&](core::MmPoint at) { return inside.contains(m_camera.toView(at)); };
    return std::ranges::all_of(m_scene.hives, in, &HiveMark::at) &&
           std::ranges::all_of(m_scene.stands, in, &StandMark::at);
}

void PlanView::stale() {
    m_layoutStale = true;
    m_frameStale = true;
    update();
}

void PlanView::ensureLayout() {
    if (!m_layoutStale) return;
    m_layout = layOut(m_scene, *m_texts, {m_camera.pixelsPerMetre, m_magnified, m_camera.view, true}, chosenAt());
    m_layoutStale = false;
    const bool sameZoom = m_routed && m_routed->pixelsPerMetre == m_layout.pixelsPerMetre;
    if (m_routed) {
        scaleArcs(*m_routed, *m_texts, m_layout);
        if (!sameZoom) m_routeSoon.start();
    } else {
        routeArcs(m_scene, *m_texts, m_layout);
        m_routed = m_layout;
    }
}

void PlanView::routeNow() {
    m_routed.reset();
    stale();
}

Shown PlanView::shownNow() const {
    Shown shown;
    shown.chosen = chosenAt();
    shown.focus = hasFocus();
    shown.chosenUnion = chosenUnion();
    shown.magnified = m_magnified;
    for (const core::ColonyId colony : m_selected)
        if (const auto hive = m_scene.find(colony)) shown.selected.push_back(*hive);
    if (m_carry)
        for (const OnWay& hive : m_carry->all())
            if (const auto at = m_scene.find(hive.colony)) shown.pickedUp.push_back(*at);
    std::sort(shown.pickedUp.begin(), shown.pickedUp.end());
    return shown;
}

void PlanView::renderFrame() {
    ensureLayout();
    const double ratio = devicePixelRatioF();
    if (m_frame.size() != size() * ratio) m_frame = QPixmap(size() * ratio);
    m_frame.setDevicePixelRatio(ratio);
    QPainter p(&m_frame);
    const look::Colours c = look::coloursOf(*this);
    paintScene(p, m_scene, m_layout, *m_texts, m_camera, shownNow(), m_sprites, c);
    if (m_scene.hives.empty() && !m_emptyText.isEmpty() && m_sketch.sketch().empty()) {
        p.setFont(font());
        p.setPen(c.quiet);
        p.drawText(rect().adjusted(40, 40, -40, -40), Qt::AlignCenter | Qt::TextWordWrap, m_emptyText);
    }
    m_frameStale = false;
}

void PlanView::paintEvent(QPaintEvent*) {
    if (m_frameStale) renderFrame();
    QPainter p(this);
    p.drawPixmap(0, 0, m_frame);
    m_sketch.paint(p, m_camera, m_magnified, look::coloursOf(*this));
    paintMarks(p);
    drawDrift(p);
    if (m_carry) drawPreview(p);
    m_band.paint(p, m_layout, m_band.holds(m_scene, m_camera), m_camera, look::coloursOf(*this));
    if (m_tool) m_tool->paint(p, m_camera, look::coloursOf(*this));
}

void PlanView::resizeEvent(QResizeEvent*) {
    m_camera.view = size();
    if (m_fitted)
        fit();
    else
        stale();
}

void PlanView::changeEvent(QEvent* event) {
    if (event->type() == QEvent::FontChange) {
        m_texts = std::make_unique<Texts>(m_scene, font());
        m_sketch.setFont(font());
        m_routed.reset();
    }
    if (event->type() == QEvent::FontChange || event->type() == QEvent::PaletteChange) stale();
    QWidget::changeEvent(event);
}

bool PlanView::event(QEvent* event) {
    if (event->type() == QEvent::ToolTip) {
        auto* help = static_cast<QHelpEvent*>(event);
        const auto hive = hiveAt(help->pos());
        if (hive && !m_carry)
            QToolTip::showText(help->globalPos(), m_scene.hives[*hive].spoken, this);
        else
            QToolTip::hideText();
        return true;
    }
    if (event->type() == QEvent::NativeGesture) {
        auto* gesture = static_cast<QNativeGestureEvent*>(event);
        if (gesture->gestureType() != Qt::ZoomNativeGesture) return QWidget::event(event);
        zoomAt(1 + gesture->value(), gesture->position());
        return true;
    }
    return QWidget::event(event);
}

} // namespace ui::plan
