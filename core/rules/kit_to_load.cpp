#include "core/rules/kit_to_load.h"

#include "core/model/kit_words.h"

#include <map>
#include <numeric>

namespace core::rules {

namespace {

class Counting {
public:
    Counting(const Snapshot& s, const std::vector<ColonyFacts>& facts, YardIx yard)
        : m_s(s), m_facts(facts), m_yard(yard) {}

    void add(const Union& u) {
        if (u.yard != m_yard) return;
        ++m_kit.unions;
        ++m_kit.carried;
        for (const ColonyIx c : u.consolidate) free(c, 1);
        freeTop();
        m_cages += u.queen == QueenPlan::RemoveMoved ? 1 : 0;
        for (const ColonyIx c : {u.moved, u.host}) m_cages += of(c).queen == QueenSeen::DroneLayer ? 1 : 0;
    }
    void add(const ShakeOut& shaken) {
        if (shaken.yard != m_yard) return;
        ++m_kit.shakeOuts;
        ++m_kit.carried;
        free(shaken.colony, of(shaken.colony).boxes);
        freeTop();
        m_cages += shaken.removeQueen ? 1 : 0;
    }
    void add(const Divide& divide) {
        if (of(divide.colony).yard != m_yard) return;
        m_kit.parts += divide.parts - 1;
        m_made[m_s.colony(divide.colony).boxKind] += divide.parts - 1;
    }
    void add(const Feed& feed) {
        if (of(feed.colony).yard == m_yard) m_halfLitres += feed.halfLitres;
    }
    KitToLoad done() {
        for (const auto& [kind, count] : m_freed) m_kit.freed.boxes.push_back({KitThing::Boxes, count, kind});
        line(KitThing::Newspaper, m_kit.unions);
        line(KitThing::Straps, m_kit.unions);
        const bool atHives = m_kit.carried + m_kit.parts > 0;
        line(KitThing::Barrow, m_kit.carried > 0 ? 1 : 0);
        line(KitThing::QueenCages, m_cages);
        for (const KitThing part : {KitThing::Floors, KitThing::Lids, KitThing::InnerCovers}) line(part, m_kit.parts);
        for (const auto& [kind, count] : m_made) line(KitThing::Boxes, count, kind);
        line(KitThing::SyrupHalfLitres, m_halfLitres);
        line(KitThing::WaterSpray, m_kit.unions > 0 ? 1 : 0);
        line(KitThing::Smoker, atHives ? 1 : 0);
        line(KitThing::Pencil, atHives ? 1 : 0);
        return std::move(m_kit);
    }

private:
    const ColonyFacts& of(ColonyIx c) const { return m_facts[static_cast<size_t>(c.value)]; }
    void free(ColonyIx c, int boxes) { m_freed[m_s.colony(c).boxKind] += boxes; }
    void freeTop() {
        ++m_kit.freed.floors;
        ++m_kit.freed.lids;
        ++m_kit.freed.innerCovers;
    }
    void line(KitThing what, qint64 count, qint32 kind = -1) {
        if (count > 0) m_kit.lines.push_back({what, count, kind});
    }

    const Snapshot& m_s;
    const std::vector<ColonyFacts>& m_facts;
    YardIx m_yard;
    KitToLoad m_kit;
    std::map<qint32, int> m_freed, m_made; ///< boxes by kind
    qint64 m_cages = 0, m_halfLitres = 0;
};

} // namespace

int KitFreed::boxesInAll() const {
    return std::accumulate(boxes.begin(), boxes.end(), 0,
                           [](int sum, const KitLine& line) { return sum + static_cast<int>(line.count); });
}

qint64 KitToLoad::of(KitThing what) const {
    return std::accumulate(lines.begin(), lines.end(), qint64(0),
                           [&](qint64 sum, const KitLine& line) { return line.what == what ? sum + line.count : sum; });
}

KitToLoad kitToLoad(const Snapshot& s, const std::vector<ColonyFacts>& facts, const Plan& plan, YardIx yard) {
    Counting counting(s, facts, yard);
    for (const Union& u : plan.unions) counting.add(u);
    for (const ShakeOut& shaken : plan.shakeOuts) counting.add(shaken);
    for (const Divide& divide : plan.divides) counting.add(divide);
    for (const Feed& feed : plan.feed) counting.add(feed);
    return counting.done();
}

QString kitPartOf(const Snapshot& s, const KitLine& line) {
    switch (line.what) {
    case KitThing::Straps:
        return kit::kStrap;
    case KitThing::QueenCages:
        return kit::kQueenCage;
    case KitThing::Floors:
        return kit::kFloor;
    case KitThing::Lids:
        return kit::kLid;
    case KitThing::InnerCovers:
        return kit::kInnerCover;
    case KitThing::Boxes:
        return line.boxKind < 0 ? QString() : s.boxKinds[static_cast<size_t>(line.boxKind)].name;
    default:
        return {};
    }
}

} // namespace core::rules
