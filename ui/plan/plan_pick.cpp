// Finding and selecting on PlanView: the rubber band, marks of what is looked for, the way there, the menu.

#include "ui/plan/plan_view.h"

#include <QContextMenuEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QStyle>

#include <algorithm>

namespace ui::plan {

namespace {
constexpr double kReadable = 60;    // pixels a metre at which labels are read
constexpr double kMiddlePart = 0.2; // of the view, that is kept free around what was flown to
constexpr int kFlightsLonger = 2;   // than the style's small animations: it is a way to follow with the eye

template <class T> bool holds(const std::vector<T>& all, const T& one) {
    return std::find(all.begin(), all.end(), one) != all.end();
}
} // namespace

void PlanView::setSelected(std::vector<core::ColonyId> colonies) {
    if (colonies == m_selected) return;
    m_selected = std::move(colonies);
    const auto still = std::count_if(m_kept.begin(), m_kept.end(), [this](auto id) { return holds(m_selected, id); });
    const auto kept = static_cast<std::ptrdiff_t>(m_kept.size());
    if (still < kept || m_selected.size() > m_kept.size() + 1) m_kept.clear();
    m_frameStale = true;
    update();
}

/// With others, or no longer.
void PlanView::toggle(size_t hive) {
    const core::ColonyId id = m_scene.hives[hive].colony;
    std::vector<core::ColonyId> now = m_selected;
    if (now.empty() && m_chosen) now.push_back(*m_chosen);
    if (std::erase(now, id) == 0) now.push_back(id);
    if (now.empty()) return choose(std::nullopt);
    emit selectAsked(now, now.back());
}

/// Ctrl + Space: the chosen hive stays selected while Tab walks on, or no longer.
void PlanView::keepChosen() {
    const auto hive = chosenAt();
    if (!hive) return emit said(tr("Choose a hive first, then Ctrl + Space keeps it while Tab walks on."));
    const QString& label = m_scene.hives[*hive].label;
    if (std::erase(m_kept, *m_chosen) > 0) return emit said(tr("%1 is let go when Tab walks on.").arg(label));
    m_kept = m_selected;
    if (!holds(m_kept, *m_chosen)) m_kept.push_back(*m_chosen);
    emit said(m_kept.size() == 1 ? tr("%1 is kept while Tab walks on.").arg(label)
                                 : tr("%1 hives are kept while Tab walks on.").arg(m_kept.size()));
}

/// Tab: to that hive, with those that are kept.
void PlanView::walkTo(size_t hive) {
    if (m_kept.empty()) return choose(hive);
    const core::ColonyId id = m_scene.hives[hive].colony;
    std::vector<core::ColonyId> now = m_kept;
    if (!holds(now, id)) now.push_back(id);
    emit selectAsked(now, id);
    if (hasFocus()) emit hiveFocused(id);
}

bool PlanView::moveBand(const QMouseEvent& event) {
    if (!m_band.pressed()) return false;
    if (!m_band.moveTo(event.position())) return true;
    m_groundPressed = false;
    setCursor(Qt::CrossCursor);
    const auto held = m_band.holds(m_scene, m_camera);
    if (held.size() != m_banded)
        emit said(held.size() == 1 ? tr("1 hive in the band") : tr("%1 hives in the band").arg(held.size()));
    m_banded = held.size();
    update();
    return true;
}

void PlanView::setBandDown() {
    const auto held = m_band.holds(m_scene, m_camera);
    std::vector<core::ColonyId> now;
    if (m_band.adding()) now = m_selected;
    for (const size_t i : held)
        if (!holds(now, m_scene.hives[i].colony)) now.push_back(m_scene.hives[i].colony);
    endBand();
    if (now.empty()) return choose(std::nullopt);
    emit selectAsked(now, m_chosen && holds(now, *m_chosen) ? *m_chosen : now.front());
}

void PlanView::endBand() {
    m_band.end();
    m_banded = 0;
    unsetCursor();
    update();
}

/// A label is begun. True: the key was that.
bool PlanView::typedLabel(const QKeyEvent& event) {
    const QString text = event.text();
    if (text.size() != 1 || event.modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier))
        return false;
    if (text != QStringLiteral("/") && !text.front().isLetterOrNumber()) return false;
    emit labelTyped(text == QStringLiteral("/") ? QString() : text);
    return true;
}

void PlanView::setMarked(std::vector<core::ColonyId> colonies, std::optional<core::ColonyId> first) {
    m_marked = std::move(colonies);
    m_markedFirst = first;
    update();
}

/// A ring around each and its label, seen at any distance; the first has two.
void PlanView::paintMarks(QPainter& p) {
    if (m_marked.empty()) return;
    ensureLayout();
    const look::Colours c = look::coloursOf(*this);
    p.save();
    p.setRenderHint(QPainter::Antialiasing, true);
    p.setBrush(Qt::NoBrush);
    p.translate(m_camera.offset());
    for (const core::ColonyId colony : m_marked) {
        const auto hive = m_scene.find(colony);
        if (!hive || *hive >= m_layout.hives.size()) continue;
        const HivePlace& place = m_layout.hives[*hive];
        const QRectF least(place.centre - QPointF(7, 7), QSizeF(14, 14));
        const QRectF ring = (place.box | place.label | least).adjusted(-7, -7, 7, 7);
        p.setPen(QPen(c.planned, 2.2, colony == m_markedFirst ? Qt::SolidLine : Qt::DashLine));
        p.drawRoundedRect(ring, 9, 9);
        if (colony == m_markedFirst) p.drawRoundedRect(ring.adjusted(-5, -5, 5, 5), 13, 13);
    }
    p.restore();
}

/// Where labels are read, and well inside; a hive that is there already is not moved.
void PlanView::flyTo(core::ColonyId colony) {
    const auto hive = m_scene.find(colony);
    if (!hive) return;
    const core::MmPoint at = m_scene.hives[*hive].at;
    const QRectF middle = QRectF(rect()).adjusted(width() * kMiddlePart, height() * kMiddlePart, -width() * kMiddlePart,
                                                  -height() * kMiddlePart);
    const bool readable = m_camera.pixelsPerMetre >= kReadable;
    if (readable && !m_flight.on() && middle.contains(m_camera.toView(at))) return;
    Camera to = m_camera;
    to.centre = {at.x / 1000.0, -at.y / 1000.0};
    to.pixelsPerMetre = std::max(to.pixelsPerMetre, kReadable);
    m_fitted = false;
    fly(to);
}

void PlanView::flyBack(const Sight& sight) {
    if (sight.fitted) return m_flight.stop(), fit();
    m_fitted = false;
    fly(sight.camera);
}

void PlanView::fly(Camera to) {
    to.view = m_camera.view;
    m_flight.go(m_camera, to, kFlightsLonger * style()->styleHint(QStyle::SH_Widget_Animation_Duration, nullptr, this));
}

void PlanView::contextMenuEvent(QContextMenuEvent* event) {
    if (m_aim.on() || m_tool || m_drag.carrying() || m_band.drawn()) return;
    ensureLayout();
    QPoint at = event->globalPos();
    if (event->reason() == QContextMenuEvent::Mouse) {
        const auto hive = hiveAt(event->pos());
        if (hive && !holds(m_selected, m_scene.hives[*hive].colony)) choose(hive);
        if (!hive) choose(std::nullopt);
    } else if (m_chosen) {
        at = mapToGlobal(boxOf(*m_chosen).center());
    }
    emit menuAsked(at);
}

} // namespace ui::plan
