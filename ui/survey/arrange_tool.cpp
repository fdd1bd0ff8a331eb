#include "ui/survey/arrange_tool.h"

#include "core/edit/survey.h"
#include "ui/look/words.h"
#include "ui/survey/paint_marks.h"

#include <algorithm>
#include <cmath>

namespace ui::survey {

namespace {

Places arranged(Arrangement way, const Places& at) {
    switch (way) {
    case Arrangement::WestEast:
        return onWestEast(at);
    case Arrangement::NorthSouth:
        return onNorthSouth(at);
    case Arrangement::TheirLine:
        return onTheirLine(at);
    case Arrangement::Evenly:
        return evenly(at);
    case Arrangement::Rows:
        break;
    }
    return inRows(at);
}

} // namespace

QString ArrangeTool::wordOf(qsizetype moved, double farthest) const {
    const auto far = static_cast<qint32>(std::lround(farthest));
    const QString most = look::distanceOf({}, {far, 0}, m_site.unit());
    if (m_way == Arrangement::Rows) {
        Places at;
        for (const Spot& s : m_spots) at.push_back(s.at);
        return tr("Straight rows: %1. Stands that would move: %2, by %3 at most. Enter does it, Escape does not.")
            .arg(rowsOf(at))
            .arg(moved)
            .arg(most);
    }
    return tr("Stands that would move: %1, by %2 at most. Enter does it, Escape does not.").arg(moved).arg(most);
}

void ArrangeTool::begin() {
    m_spots = m_site.picked();
    const size_t least = m_way == Arrangement::Evenly || m_way == Arrangement::TheirLine ? 3 : 2;
    if (m_spots.size() < least) {
        m_spots.clear();
        m_site.say(tr("Select %1 or more hives or stands first: Ctrl and a click adds one.").arg(least));
        return over();
    }
    Places at;
    for (const Spot& s : m_spots) at.push_back(s.at);
    m_to = arranged(m_way, at);
    qsizetype moved = 0;
    double farthest = 0;
    for (size_t i = 0; i < at.size(); ++i) {
        moved += at[i] != m_to[i] ? 1 : 0;
        farthest = std::max(farthest, std::sqrt(static_cast<double>(core::squaredDistance(at[i], m_to[i]))));
    }
    if (moved == 0) {
        m_spots.clear();
        m_site.say(tr("They stand so already."));
        return over();
    }
    m_site.say(wordOf(moved, farthest));
    m_site.plan().update();
}

bool ArrangeTool::press(const plan::Touch&) {
    m_site.say(tr("Enter does it, Escape does not."));
    return true;
}

bool ArrangeTool::key(QKeyEvent& event) {
    if (isEnter(event)) return finish(), true;
    return stepOf(event).has_value(); // arrow keys carry no hive here
}

void ArrangeTool::finish() {
    std::vector<core::edit::StandMove> moves;
    for (size_t i = 0; i < m_spots.size(); ++i) moves.push_back({m_spots[i].stand, m_to[i]});
    const auto yard = m_site.yard();
    m_spots.clear();
    if (yard && !moves.empty())
        m_site.save(tr("the drawing"),
                    [=](const core::edit::EditContext& c) { return core::edit::moveStands(c, *yard, moves); });
    over();
}

void ArrangeTool::abort() {
    if (m_spots.empty()) return;
    m_spots.clear();
    m_site.say(tr("As it was; nothing was changed."));
    m_site.plan().update();
    givenUp();
}

void ArrangeTool::paint(QPainter& p, const plan::Camera& camera, const look::Colours& c) const {
    p.save();
    p.setRenderHint(QPainter::Antialiasing, true);
    const double half = std::max(7.0, 0.36 * camera.pixelsPerMetre);
    for (size_t i = 0; i < m_spots.size(); ++i)
        paintMove(p, camera.toView(m_spots[i].at), camera.toView(m_to[i]), half, c);
    p.restore();
}

} // namespace ui::survey
