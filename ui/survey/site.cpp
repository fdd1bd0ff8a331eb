#include "ui/survey/site.h"

#include "ui/plan/ground.h"

#include <QCoreApplication>

#include <algorithm>

namespace ui::survey {

namespace {

struct Survey {
    Q_DECLARE_TR_FUNCTIONS(Survey)
};

Spot spotOfStand(const plan::StandMark& s) { return {s.stand, Survey::tr("stand %1").arg(s.name), s.at, {}, 180}; }

} // namespace

std::optional<Spot> Site::spotOf(core::ColonyId hive) const {
    const auto mark = scene().find(hive);
    const auto& reading = m_desk.reading();
    const auto ix = reading.find(hive);
    const core::SnapStay* stay = ix ? reading.snapshot.placeOf(*ix) : nullptr;
    if (!mark || !stay) return std::nullopt;
    const plan::HiveMark& h = scene().hives[*mark];
    return Spot{stay->stand, h.label, h.at, hive, h.headingDeg};
}

std::optional<Spot> Site::spotOf(core::StandId stand) const {
    for (const plan::StandMark& s : scene().stands)
        if (s.stand == stand) return spotOfStand(s);
    return std::nullopt;
}

std::vector<Spot> Site::spots() const {
    std::vector<Spot> out;
    for (const plan::HiveMark& h : scene().hives)
        if (const auto spot = spotOf(h.colony)) out.push_back(*spot);
    for (const plan::StandMark& s : scene().stands) out.push_back(spotOfStand(s));
    return out;
}

std::vector<Spot> Site::picked() const {
    std::vector<Spot> out;
    std::vector<core::ColonyId> hives = m_desk.selected();
    if (hives.empty() && m_desk.chosen()) hives.push_back(*m_desk.chosen());
    for (const core::ColonyId hive : hives)
        if (const auto spot = spotOf(hive)) out.push_back(*spot);
    for (const core::StandId stand : m_stands)
        if (const auto spot = spotOf(stand)) out.push_back(*spot);
    return out;
}

bool Site::isPicked(core::StandId stand) const { return std::ranges::find(m_stands, stand) != m_stands.end(); }

void Site::pick(core::StandId stand, bool more) {
    m_thing.reset();
    m_point.reset();
    if (!more) {
        m_desk.choose(std::nullopt);
        m_stands = {stand};
    } else if (std::erase(m_stands, stand) == 0) {
        m_stands.push_back(stand);
    }
    pickedChanged();
}

void Site::pickThing(std::optional<core::FixedThingId> thing, std::optional<size_t> point) {
    if (thing) {
        m_stands.clear();
        m_desk.choose(std::nullopt);
    }
    m_thing = thing;
    m_point = point;
    pickedChanged();
}

void Site::pickNothing() {
    m_stands.clear();
    pickThing({});
}

const plan::FixedMark* Site::thing() const {
    if (!m_thing) return nullptr;
    for (const plan::FixedMark& mark : scene().fixed)
        if (mark.id == *m_thing) return &mark;
    return nullptr;
}

void Site::pickNext(int by) {
    const int stands = static_cast<int>(scene().stands.size());
    const int all = stands + static_cast<int>(scene().fixed.size());
    if (all == 0) return say(Survey::tr("There is no empty stand in this yard, and no fixed thing."));
    int now = by > 0 ? -1 : all;
    for (int i = 0; i < all; ++i) {
        const bool stand = i < stands;
        if (stand ? m_stands.size() == 1 && m_stands.front() == scene().stands[static_cast<size_t>(i)].stand
                  : m_thing == scene().fixed[static_cast<size_t>(i - stands)].id)
            now = i;
    }
    now = ((now + by) % all + all) % all;
    if (now < stands) {
        pickThing({});
        pick(scene().stands[static_cast<size_t>(now)].stand, false);
        return say(
            Survey::tr("Stand %1, empty: arrow keys move it.").arg(scene().stands[static_cast<size_t>(now)].name));
    }
    const plan::FixedMark& mark = scene().fixed[static_cast<size_t>(now - stands)];
    pickThing(mark.id);
    say(Survey::tr("%1: arrow keys move it, End goes through its points, Delete takes it back.").arg(mark.word));
}

void Site::pickNextPoint(int by) {
    const plan::FixedMark* mark = thing();
    if (!mark) return;
    const int all = static_cast<int>(mark->points.size());
    const int now = m_point ? static_cast<int>(*m_point) : by > 0 ? -1 : all;
    const int next = now + by;
    if (next < 0 || next >= all) {
        m_point.reset();
        say(Survey::tr("%1, the whole of it.").arg(mark->word));
    } else {
        m_point = static_cast<size_t>(next);
        say(Survey::tr("%1, point %2 of %3.").arg(mark->word).arg(next + 1).arg(all));
    }
    m_plan.update();
}

core::MmPoint Site::snapped(core::MmPoint at, const std::vector<Spot>& without) const {
    plan::Scene others;
    for (const Spot& spot : spots()) {
        const bool own = std::ranges::any_of(without, [&](const Spot& s) { return s.stand == spot.stand; });
        if (own) continue;
        plan::HiveMark mark;
        mark.at = spot.at;
        others.hives.push_back(mark);
    }
    const int reach = static_cast<int>(std::min(8000 / m_plan.camera().pixelsPerMetre, 400.0));
    return plan::snapped(others, at, {}, reach);
}

core::MmPoint Site::snappedToHive(const plan::Touch& at) const {
    if (at.modifiers & Qt::AltModifier) return at.ground;
    if (at.hive)
        if (const auto spot = spotOf(*at.hive)) return spot->at;
    if (at.stand)
        if (const auto spot = spotOf(*at.stand)) return spot->at;
    return plan::snapped({}, at.ground, {}, 0);
}

bool Site::save(const QString& what, const core::edit::Edit& edit) const {
    bool saved = false;
    guarded(m_dialogs, [&] {
        try {
            saved = m_desk.save(what, edit);
        } catch (const core::Error& e) {
            if (e.kind() != core::Error::Kind::BadData) throw;
            say(e.userMessage());
        }
    });
    return saved;
}

std::optional<core::FixedThing> Site::rowOf(core::FixedThingId id) const {
    if (!yard()) return std::nullopt;
    std::optional<core::FixedThing> found;
    guarded(m_dialogs, [&] {
        for (const core::FixedThing& row : m_desk.session().fixedThingsOf(*yard()))
            if (row.id == id) found = row;
    });
    return found;
}

} // namespace ui::survey
