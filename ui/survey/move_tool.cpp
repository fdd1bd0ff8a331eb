#include "ui/survey/move_tool.h"

#include "core/edit/survey.h"
#include "core/model/fixed_shape.h"
#include "ui/look/words.h"
#include "ui/plan/paint_fixed.h"
#include "ui/survey/paint_marks.h"

#include <QApplication>

#include <algorithm>
#include <cmath>

namespace ui::survey {

namespace {

constexpr double kReach = 9; // pixels

bool near(const QPointF& a, const QPointF& b) { return std::hypot(a.x() - b.x(), a.y() - b.y()) <= kReach; }

/// The corner of a shed keeps its opposite where it is, and its sides their directions.
std::vector<core::MmPoint> stretched(const std::vector<core::MmPoint>& shed, size_t corner, core::MmPoint to) {
    const core::MmPoint opposite = shed[(corner + 2) % 4];
    const core::MmPoint next = shed[(corner + 3) % 4];
    const double x = double(next.x) - opposite.x;
    const double y = double(next.y) - opposite.y;
    const double length = std::hypot(x, y);
    const core::MmPoint way = to - opposite;
    const double t = (way.x * x + way.y * y) / length;
    const core::MmPoint side{static_cast<qint32>(std::lround(opposite.x + x / length * t)),
                             static_cast<qint32>(std::lround(opposite.y + y / length * t))};
    std::vector<core::MmPoint> out = core::rectangleOf(opposite, side, to);
    std::ranges::rotate(out, out.begin() + static_cast<std::ptrdiff_t>((4 + 2 - corner) % 4));
    return out;
}

} // namespace

MoveTool::MoveTool(Site& site, QObject* parent) : QObject(parent), SurveyTool(site) {
    m_done.setSingleShot(true);
    m_done.setInterval(kBurstMs);
    connect(&m_done, &QTimer::timeout, this, &MoveTool::finish);
}

void MoveTool::begin() {
    m_site.say(tr("Move: drag a hive or stand to where it really stands; arrow keys 10 cm, with Shift 1 cm. Page Down "
                  "picks empty stands and fixed things."));
}

bool MoveTool::press(const plan::Touch& at) {
    if (m_keys) finish();
    const bool more = at.modifiers & (Qt::ControlModifier | Qt::ShiftModifier);
    if (more && at.hive) return false; // the plan's own: one more, or one less
    if (at.stand && (more || !m_site.isPicked(*at.stand))) m_site.pick(*at.stand, more);
    if (at.stand && more) return true;
    if (!at.hive && !at.stand) return pressThing(at);
    std::vector<Spot> spots = m_site.picked();
    const auto own = [&](const Spot& s) { return at.hive ? s.hive == at.hive : s.stand == *at.stand; };
    m_alone = std::ranges::any_of(spots, own) && spots.size() > 1;
    if (at.hive && std::ranges::none_of(spots, own)) {
        m_site.pickNothing();
        m_site.plan().pick(*at.hive);
        spots = m_site.picked();
    }
    const auto gripped = std::ranges::find_if(spots, own);
    if (gripped == spots.end()) return false;
    const auto place = static_cast<size_t>(gripped - spots.begin());
    take(std::move(spots), place);
    m_from = at.ground;
    m_pressed = at.pixel;
    return true;
}

bool MoveTool::pressThing(const plan::Touch& at) {
    const plan::Camera& camera = m_site.plan().camera();
    if (const plan::FixedMark* mark = m_site.thing()) {
        for (size_t i = 0; i < mark->points.size(); ++i) {
            if (!near(camera.toView(mark->points[i]), at.pixel)) continue;
            m_site.pickThing(mark->id, mark->points.size() > 1 ? std::optional(i) : std::nullopt);
            takeThing();
            m_from = at.ground;
            m_pressed = at.pixel;
            return true;
        }
    }
    for (const plan::FixedMark& mark : m_site.scene().fixed) {
        if (plan::apartFrom(mark, camera, at.pixel) > kReach) continue;
        m_site.pickThing(mark.id);
        m_site.say(tr("%1: drag it or one of its points; Delete takes it back.").arg(mark.word));
        takeThing();
        m_from = at.ground;
        m_pressed = at.pixel;
        return true;
    }
    m_site.pickNothing();
    return false;
}

void MoveTool::take(std::vector<Spot> spots, size_t gripped) {
    m_what = What::Stands;
    m_spots = std::move(spots);
    m_gripped = gripped;
    m_by = {};
    m_far = false;
    m_keys = false;
}

void MoveTool::takeThing() {
    take({}, 0);
    m_what = What::Thing;
    m_alone = false;
    m_thing = *m_site.thing();
}

void MoveTool::drag(const plan::Touch& at) {
    if (m_what == What::Nothing || m_keys) return;
    const QPointF way = at.pixel - m_pressed;
    if (!m_far && std::hypot(way.x(), way.y()) < QApplication::startDragDistance()) return;
    m_far = true;
    core::MmPoint anchor = m_thing.points.empty() ? core::MmPoint{} : m_thing.points[m_site.point().value_or(0)];
    if (m_what == What::Stands) anchor = m_spots[m_gripped].at;
    const core::MmPoint to = anchor + (at.ground - m_from);
    go((at.modifiers & Qt::AltModifier ? to : m_site.snapped(to, m_spots)) - anchor);
}

/// From where it is, and says so.
void MoveTool::go(core::MmPoint by) {
    m_by = by;
    const QString way = look::wayText({}, by, m_site.unit());
    if (m_what == What::Thing)
        m_site.say(tr("%1: %2.").arg(m_thing.word, way));
    else if (m_spots.size() == 1)
        m_site.say(tr("%1: %2, in the drawing.").arg(m_spots[m_gripped].name, way));
    else
        m_site.say(tr("%1 and %2 more: %3, in the drawing.")
                       .arg(m_spots[m_gripped].name, QString::number(m_spots.size() - 1), way));
    m_site.plan().update();
}

void MoveTool::release(const plan::Touch&) {
    if (m_what == What::Nothing || m_keys) return;
    const auto alone = m_what == What::Stands && m_alone ? std::optional(m_spots[m_gripped]) : std::nullopt;
    if (m_far) return finish();
    drop();
    if (!alone) return;
    m_site.pickNothing();
    if (alone->hive)
        m_site.plan().pick(*alone->hive);
    else
        m_site.pick(alone->stand, false);
}

bool MoveTool::key(QKeyEvent& event) {
    if (const auto step = stepOf(event)) {
        if (m_what != What::Nothing && !m_keys) return true; // the mouse has it
        if (m_what == What::Nothing) {
            auto spots = m_site.picked();
            if (m_site.thing())
                takeThing();
            else if (!spots.empty())
                take(std::move(spots), 0);
            else
                return m_site.say(tr("Pick a hive, a stand or a fixed thing first: Tab, Page Down, or a click.")), true;
            m_keys = true;
        }
        go(m_by + *step);
        m_done.start();
        return true;
    }
    if (isEnter(event)) return finish(), true;
    switch (event.key()) {
    case Qt::Key_PageDown:
    case Qt::Key_PageUp:
        finish();
        m_site.pickNext(event.key() == Qt::Key_PageDown ? 1 : -1);
        return true;
    case Qt::Key_End:
        finish();
        m_site.pickNextPoint(event.modifiers() & Qt::ShiftModifier ? -1 : 1);
        return true;
    case Qt::Key_Delete:
        abort();
        takeBackThing();
        return true;
    default:
        return false;
    }
}

void MoveTool::finish() {
    m_done.stop();
    const What what = m_what;
    if (what == What::Nothing) return;
    if (m_by == core::MmPoint{}) return drop();
    if (what == What::Stands)
        saveStands();
    else
        saveThing();
}

void MoveTool::saveStands() {
    std::vector<core::edit::StandMove> moves;
    for (const Spot& spot : m_spots) moves.push_back({spot.stand, spot.at + m_by});
    const auto yard = m_site.yard();
    drop();
    if (!yard) return;
    m_site.save(tr("the drawing"),
                [=](const core::edit::EditContext& c) { return core::edit::moveStands(c, *yard, moves); });
}

void MoveTool::saveThing() {
    const plan::FixedMark mark = moved();
    drop();
    auto row = m_site.rowOf(mark.id);
    if (!row) return m_site.say(tr("That thing is no longer in the drawing."));
    row->points = mark.points;
    m_site.save(tr("the drawing"),
                [=](const core::edit::EditContext& c) { return core::edit::changeFixedThing(c, *row); });
}

plan::FixedMark MoveTool::moved() const {
    plan::FixedMark mark = m_thing;
    const auto point = m_site.point();
    if (point && *point < mark.points.size()) {
        const core::MmPoint to = mark.points[*point] + m_by;
        if (mark.kind == core::FixedKind::Shed)
            mark.points = stretched(mark.points, *point, to);
        else
            mark.points[*point] = to;
    } else {
        for (core::MmPoint& p : mark.points) p = p + m_by;
    }
    return mark;
}

void MoveTool::takeBackThing() {
    const plan::FixedMark* mark = m_site.thing();
    if (!mark) return m_site.say(tr("Pick a fixed thing first: Page Down, or a click on it."));
    const core::FixedThingId id = mark->id;
    if (m_site.save(tr("the drawing"),
                    [=](const core::edit::EditContext& c) { return core::edit::takeBackFixedThing(c, id); }))
        m_site.pickThing({});
}

void MoveTool::nameThing(const QString& name) {
    const plan::FixedMark* mark = m_site.thing();
    auto row = mark ? m_site.rowOf(mark->id) : std::nullopt;
    if (!row || row->name == name.trimmed()) return;
    row->name = name;
    m_site.save(tr("the drawing"),
                [=](const core::edit::EditContext& c) { return core::edit::changeFixedThing(c, *row); });
}

void MoveTool::drop() {
    m_done.stop();
    m_what = What::Nothing;
    m_spots.clear();
    m_by = {};
    m_far = false;
    m_keys = false;
    m_site.plan().update();
}

void MoveTool::abort() {
    const bool shown = m_what != What::Nothing && m_by != core::MmPoint{};
    drop();
    if (shown) m_site.say(tr("As it was; nothing was changed."));
}

QCursor MoveTool::cursor(const plan::Touch& at) const {
    if (m_far) return Qt::ClosedHandCursor;
    if (at.hive || at.stand) return Qt::OpenHandCursor;
    for (const plan::FixedMark& mark : m_site.scene().fixed)
        if (plan::apartFrom(mark, m_site.plan().camera(), at.pixel) <= kReach) return Qt::OpenHandCursor;
    return Qt::ArrowCursor;
}

void MoveTool::paint(QPainter& p, const plan::Camera& camera, const look::Colours& c) const {
    p.save();
    p.setRenderHint(QPainter::Antialiasing, true);
    const double half = std::max(7.0, 0.26 * camera.pixelsPerMetre * 1.4);
    for (const plan::StandMark& s : m_site.scene().stands)
        if (m_site.isPicked(s.stand)) paintMove(p, camera.toView(s.at), camera.toView(s.at), half, c);
    const bool shown = m_what != What::Nothing && m_by != core::MmPoint{};
    const QString text = shown ? look::wayText({}, m_by, m_site.unit()) : QString();
    if (m_what == What::Stands && shown) {
        for (const Spot& s : m_spots) paintMove(p, camera.toView(s.at), camera.toView(s.at + m_by), half, c);
        paintBubble(p, camera.toView(m_spots[m_gripped].at + m_by) - QPointF(0, half + 8), text, c);
    }
    if (const plan::FixedMark* now = m_site.thing()) {
        const plan::FixedMark mark = m_what == What::Thing ? moved() : *now;
        if (shown) plan::paintFixedMark(p, mark, camera, c);
        for (size_t i = 0; i < mark.points.size(); ++i)
            paintHandle(p, camera.toView(mark.points[i]), !m_site.point() || m_site.point() == i, c);
        if (m_what == What::Thing)
            paintBubble(p, camera.toView(mark.points[m_site.point().value_or(0)]) - QPointF(0, 12), text, c);
    }
    p.restore();
}

} // namespace ui::survey
