#include "ui/survey/turn_tool.h"

#include "core/edit/survey.h"
#include "ui/survey/paint_marks.h"

#include <algorithm>
#include <numbers>

namespace ui::survey {

namespace {

constexpr int kStep = 15;

int turned(int heading, int by) { return ((heading + by) % 360 + 360) % 360; }

} // namespace

TurnTool::TurnTool(Site& site, QObject* parent) : QObject(parent), SurveyTool(site) {
    m_done.setSingleShot(true);
    m_done.setInterval(kBurstMs);
    connect(&m_done, &QTimer::timeout, this, &TurnTool::finish);
}

void TurnTool::begin() {
    m_site.say(tr("Turn: drag around a hive to where its entrance looks, by 15°, with Shift by 1°; or [ and ]."));
}

std::vector<Spot> TurnTool::hives() const {
    std::vector<Spot> out = m_site.picked();
    std::erase_if(out, [](const Spot& s) { return !s.hive; });
    return out;
}

bool TurnTool::press(const plan::Touch& at) {
    if (m_keys) finish();
    if (!at.hive || at.modifiers & Qt::ControlModifier) return false;
    std::vector<Spot> spots = hives();
    const auto own = [&](const Spot& s) { return s.hive == at.hive; };
    if (std::ranges::none_of(spots, own)) {
        m_site.plan().pick(*at.hive);
        spots = hives();
    }
    const auto gripped = std::ranges::find_if(spots, own);
    if (gripped == spots.end()) return false;
    m_gripped = static_cast<size_t>(gripped - spots.begin());
    m_spots = std::move(spots);
    m_by = 0;
    return true;
}

void TurnTool::drag(const plan::Touch& at) {
    if (m_spots.empty() || m_keys) return;
    const Spot& spot = m_spots[m_gripped];
    const core::MmPoint way = at.ground - spot.at;
    if (std::hypot(double(way.x), double(way.y)) < 12000 / m_site.plan().camera().pixelsPerMetre) return;
    const double degrees = std::atan2(double(way.x), double(way.y)) * 180 / std::numbers::pi;
    const int step = at.modifiers & Qt::ShiftModifier ? 1 : kStep;
    const int heading = turned(static_cast<int>(std::lround(degrees / step)) * step, 0);
    go(turned(heading, -spot.headingDeg));
}

void TurnTool::go(int deg) {
    m_by = turned(deg, 0);
    const Spot& spot = m_spots[m_gripped];
    const int heading = turned(spot.headingDeg, m_by);
    m_site.say(m_spots.size() == 1 ? tr("%1 faces %2°, in the drawing.").arg(spot.name).arg(heading)
                                   : tr("%1 faces %2°, in the drawing, and %3 more are turned with it.")
                                         .arg(spot.name)
                                         .arg(heading)
                                         .arg(m_spots.size() - 1));
    m_site.plan().update();
}

void TurnTool::release(const plan::Touch&) {
    if (!m_keys) finish();
}

bool TurnTool::key(QKeyEvent& event) {
    const bool back = event.key() == Qt::Key_BracketLeft || event.key() == Qt::Key_BraceLeft;
    const bool on = event.key() == Qt::Key_BracketRight || event.key() == Qt::Key_BraceRight;
    if (back || on) {
        if (!m_spots.empty() && !m_keys) return true; // the mouse has it
        if (m_spots.empty()) {
            m_spots = hives();
            m_gripped = 0;
            m_by = 0;
            if (m_spots.empty()) return m_site.say(tr("Choose a hive first: Tab, or a click.")), true;
            m_keys = true;
        }
        const bool fine = event.modifiers() & Qt::ShiftModifier;
        go(m_by + (back ? -1 : 1) * (fine ? 1 : kStep));
        m_done.start();
        return true;
    }
    if (isEnter(event)) return finish(), true;
    return stepOf(event).has_value(); // arrow keys carry no hive here
}

void TurnTool::finish() {
    std::vector<core::edit::HiveTurn> turns;
    for (const Spot& s : m_spots) turns.push_back({*s.hive, turned(s.headingDeg, m_by)});
    const int by = m_by;
    const auto yard = m_site.yard();
    drop();
    if (by == 0 || !yard || turns.empty()) return;
    m_site.save(tr("the drawing"),
                [=](const core::edit::EditContext& c) { return core::edit::turnHives(c, *yard, turns); });
}

void TurnTool::drop() {
    m_done.stop();
    m_spots.clear();
    m_by = 0;
    m_keys = false;
    m_site.plan().update();
}

void TurnTool::abort() {
    const bool shown = m_by != 0;
    drop();
    if (shown) m_site.say(tr("As it was; nothing was changed."));
}

QCursor TurnTool::cursor(const plan::Touch& at) const { return at.hive ? Qt::PointingHandCursor : Qt::ArrowCursor; }

void TurnTool::paint(QPainter& p, const plan::Camera& camera, const look::Colours& c) const {
    p.save();
    p.setRenderHint(QPainter::Antialiasing, true);
    const double length = std::max(30.0, 0.9 * camera.pixelsPerMetre);
    const bool shown = !m_spots.empty();
    for (const Spot& s : shown ? m_spots : hives())
        paintHeading(p, camera.toView(s.at), turned(s.headingDeg, m_by), length, c);
    if (shown) {
        const Spot& spot = m_spots[m_gripped];
        paintBubble(p, camera.toView(spot.at) - QPointF(0, length + 6),
                    QStringLiteral("%1°").arg(turned(spot.headingDeg, m_by)), c);
    }
    p.restore();
}

} // namespace ui::survey
