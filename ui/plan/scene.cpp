#include "ui/plan/scene.h"

#include "core/model/rows.h"
#include "ui/look/rule_words.h"
#include "ui/look/words.h"
#include "ui/plan/paint_fixed.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>
#include <map>

namespace ui::plan {

namespace {

using core::ColonyIx;

struct Scenes {
    Q_DECLARE_TR_FUNCTIONS(Scenes)
};

QString strengthLine(const core::rules::ColonyFacts& f, core::Day on) {
    if (f.strength) return look::framesOf(*f.strength);
    switch (f.noStrength) {
    case core::rules::NoStrength::NoBees:
        return Scenes::tr("no bees");
    case core::rules::NoStrength::CountOld:
        if (f.counted) return Scenes::tr("not counted since %1").arg(look::dayTextFrom(*f.counted, on));
        break;
    case core::rules::NoStrength::NoCount:
        break;
    }
    return Scenes::tr("not counted");
}

QString spokenOf(const HiveMark& m, const core::ShownUnits& units) {
    QStringList parts{m.label, m.line};
    if (!m.strengthWord.isEmpty()) parts << m.strengthWord;
    if (m.boxes == 2) parts << Scenes::tr("two boxes");
    if (m.held()) parts << Scenes::tr("held: %1").arg(m.holdWords.join(QStringLiteral(" and ")));
    if (m.layingWorkers) parts << Scenes::tr("laying workers");
    if (m.feedHalfLitres > 0) parts << Scenes::tr("feed %1").arg(look::feedOf(m.feedHalfLitres, units.volume));
    if (!m.stand.isEmpty()) parts << Scenes::tr("stand %1").arg(m.stand);
    return parts.join(QStringLiteral(", "));
}

HiveMark markOf(const core::Snapshot& s, const core::rules::ColonyFacts& f, const core::SnapStay& stay) {
    HiveMark m;
    const core::SnapColony& c = s.colony(f.colony);
    m.colony = c.id;
    m.label = c.shown;
    m.line = strengthLine(f, s.on);
    if (f.strengthClass) m.strengthWord = look::classText(*f.strengthClass);
    m.stand = stay.standName;
    m.at = stay.at;
    m.headingDeg = stay.headingDeg;
    m.boxes = f.boxes;
    m.bees = f.strength;
    if (!f.strength && f.noStrength == core::rules::NoStrength::NoBees) m.bees = core::Quarters{0};
    m.layingWorkers = f.layingWorkers;
    setOutline(m, s.boxKindOf(f.colony));
    return m;
}

class Builder {
public:
    Builder(const core::Snapshot& s, Scene& scene) : m_s(s), m_scene(scene) {}

    void addHives(core::YardIx yard, const std::vector<core::rules::ColonyFacts>& facts) {
        for (const core::rules::ColonyFacts& f : facts) {
            const core::SnapStay* stay = m_s.placeOf(f.colony);
            if (f.yard != yard || !stay) continue;
            m_at[f.colony] = m_scene.hives.size();
            m_scene.hives.push_back(markOf(m_s, f, *stay));
        }
    }

    void addHolds(const std::vector<core::rules::Hold>& holds) {
        for (const core::rules::Hold& h : holds)
            if (HiveMark* m = mark(h.colony)) {
                m->holdLetters += core::rules::holdLetter(h.kind);
                m->holdWords << look::holdWithin(h.kind);
            }
    }

    void addPlan(const core::rules::Plan& plan) {
        for (const core::rules::Union& u : plan.unions)
            if (m_at.contains(u.moved) && m_at.contains(u.host))
                m_scene.unions.push_back(
                    {u.order, m_at.at(u.moved), m_at.at(u.host), look::distanceOf(u.from, u.to, m_scene.units.length)});
        for (const core::rules::ShakeOut& o : plan.shakeOuts)
            if (m_at.contains(o.colony) && m_at.contains(o.into))
                m_scene.shakes.push_back({m_at.at(o.colony), m_at.at(o.into)});
        for (const core::rules::Feed& f : plan.feed)
            if (HiveMark* m = mark(f.colony)) m->feedHalfLitres = f.halfLitres;
    }

private:
    HiveMark* mark(ColonyIx colony) {
        const auto it = m_at.find(colony);
        return it == m_at.end() ? nullptr : &m_scene.hives[it->second];
    }

    const core::Snapshot& m_s;
    Scene& m_scene;
    std::map<ColonyIx, size_t> m_at;
};

} // namespace

std::optional<size_t> Scene::find(core::ColonyId colony) const {
    for (size_t i = 0; i < hives.size(); ++i)
        if (hives[i].colony == colony) return i;
    return std::nullopt;
}

void addAsked(Scene& scene, const QString& name, const std::vector<core::ColonyId>& colonies) {
    std::map<core::ColonyId, HiveMark*> hives;
    for (HiveMark& m : scene.hives) hives.emplace(m.colony, &m);
    AskedMark asked{name, 0};
    const QString number = QString::number(scene.asked.size() + 1);
    for (const core::ColonyId colony : colonies) {
        const auto at = hives.find(colony);
        if (at == hives.end()) continue;
        HiveMark& m = *at->second;
        ++asked.found;
        m.asked += (m.asked.isEmpty() ? QString() : QStringLiteral(" ")) + number;
        m.spoken += QStringLiteral(", ") + Scenes::tr("found by the question %1").arg(name);
    }
    scene.asked.push_back(asked);
}

QString fixedWord(core::FixedKind kind) {
    switch (kind) {
    case core::FixedKind::Fence:
        return Scenes::tr("fence");
    case core::FixedKind::Hedge:
        return Scenes::tr("hedge");
    case core::FixedKind::Shed:
        return Scenes::tr("shed");
    case core::FixedKind::Water:
        return Scenes::tr("water");
    case core::FixedKind::Track:
        return Scenes::tr("track");
    case core::FixedKind::Tree:
        break;
    }
    return Scenes::tr("tree");
}

std::vector<FixedMark> fixedMarks(const std::vector<core::FixedThing>& things) {
    std::vector<FixedMark> out;
    for (const core::FixedThing& f : things)
        out.push_back({f.id, f.kind, f.name.isEmpty() ? fixedWord(f.kind) : f.name, !f.name.isEmpty(), f.points,
                       f.radius.value_or(core::Millimetres{}).value});
    return out;
}

void setOutline(HiveMark& mark, const core::SnapBoxKind& kind) {
    mark.combs = kind.frames;
    mark.widthMm = kind.widthMm.value_or(413 + 38 * (kind.frames - 10));
    mark.lengthMm = kind.lengthMm.value_or(505);
}

Scene sceneOf(const core::Snapshot& s, core::YardIx yard, const std::vector<core::rules::ColonyFacts>& facts,
              const std::vector<core::rules::Hold>& holds, const core::rules::Plan* plan) {
    Scene scene;
    scene.yard = s.yard(yard).name;
    scene.on = s.on;
    scene.gate = s.yard(yard).gate;
    scene.units = s.settings.shown();
    Builder build(s, scene);
    build.addHives(yard, facts);
    build.addHolds(holds);
    if (plan) build.addPlan(*plan);
    for (HiveMark& m : scene.hives) m.spoken = spokenOf(m, scene.units);
    return scene;
}

QRectF metresOf(const Scene& scene) {
    const auto spotOf = [](core::MmPoint at) { return QRectF(at.x / 1000.0 - 0.4, -at.y / 1000.0 - 0.4, 0.8, 0.8); };
    QRectF out = spotOf(scene.gate);
    for (const HiveMark& h : scene.hives) out |= spotOf(h.at);
    for (const StandMark& s : scene.stands) out |= spotOf(s.at);
    for (const FixedMark& f : scene.fixed) out |= reachOf(f);
    return out;
}

double magnification(const Scene& scene) {
    constexpr double kMost = 1.8;
    constexpr double kShare = 0.72; // of the distance of the nearest two, that an outline's diagonal may take
    std::vector<const HiveMark*> byX;
    for (const HiveMark& h : scene.hives) byX.push_back(&h);
    std::sort(byX.begin(), byX.end(), [](const HiveMark* a, const HiveMark* b) { return a->at < b->at; });
    double most = kMost;
    for (size_t i = 0; i < byX.size(); ++i) {
        const double size = std::hypot(byX[i]->widthMm, byX[i]->lengthMm);
        for (size_t j = i + 1; j < byX.size() && byX[j]->at.x - byX[i]->at.x < kMost * size / kShare; ++j) {
            const double apart = std::sqrt(static_cast<double>(core::squaredDistance(byX[i]->at, byX[j]->at)));
            most = std::min(most, kShare * apart / size);
        }
    }
    return std::max(1.0, most);
}

} // namespace ui::plan
