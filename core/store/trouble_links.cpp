#include "core/store/trouble_links.h"

#include <vector>

namespace core::store {

namespace {

/// Colonies with a trouble sign or result, and yards with an order.
class Trouble {
public:
    explicit Trouble(const Database& db) {
        Statement signs = db.prepare("SELECT DISTINCT visit.colony FROM visit_sign CROSS JOIN visit "
                                     "ON visit.id = visit_sign.visit WHERE sign IN ('afb', 'efb', 'brood-doubt')");
        while (signs.step()) m_colonies.insert(signs.integer(0));
        Statement results = db.prepare("SELECT coalesce(colony, 0), coalesce(yard, 0) FROM result "
                                       "WHERE verdict IN ('positive', 'order')");
        while (results.step()) {
            m_colonies.insert(results.integer(0));
            m_yards.insert(results.integer(1));
        }
    }
    bool at(ColonyId colony) const { return m_colonies.contains(colony.value); }
    bool at(YardId yard) const { return m_yards.contains(yard.value); }

private:
    std::set<qint64> m_colonies;
    std::set<qint64> m_yards;
};

class Walk {
public:
    Walk(const Database& db, int most)
        : m_trouble(db),
          m_most(static_cast<size_t>(most)),
          m_gifts(db.prepare("SELECT receiver FROM transfer WHERE giver = ?1 "
                             "UNION SELECT giver FROM transfer WHERE receiver = ?1 "
                             "UNION SELECT into_colony FROM lineage WHERE colony = ?1 "
                             "UNION SELECT colony FROM lineage WHERE into_colony = ?1")),
          m_stays(db.prepare("SELECT stand.yard FROM placement JOIN stand ON stand.id = placement.stand "
                             "WHERE colony = ?1 AND first = 1 "
                             "UNION SELECT stand.yard FROM placement JOIN stand ON stand.id = placement.stand "
                             "WHERE colony = ?1 AND first = 0")),
          m_bees(db.prepare("SELECT DISTINCT placement.colony FROM stand JOIN placement "
                            "ON placement.stand = stand.id WHERE stand.yard = ?1")) {}

    void reach(ColonyId colony) {
        if (!m_colonies.insert(colony).second) return;
        m_found = m_found || m_trouble.at(colony);
        m_ahead.push_back(colony);
    }
    void reach(YardId yard) {
        if (!m_yards.insert(yard).second) return;
        m_found = m_found || m_trouble.at(yard);
        for (const qint64 colony : idsOf(m_bees, yard.value)) reach(ColonyId{colony});
    }
    bool finds() {
        while (!m_found && !m_ahead.empty() && m_colonies.size() <= m_most) {
            const ColonyId colony = m_ahead.back();
            m_ahead.pop_back();
            for (const qint64 other : idsOf(m_gifts, colony.value)) reach(ColonyId{other});
            for (const qint64 yard : idsOf(m_stays, colony.value)) reach(YardId{yard});
        }
        return m_found || m_colonies.size() > m_most;
    }

private:
    static std::vector<qint64> idsOf(Statement& read, qint64 id) {
        read.reset();
        read.bind(1, id);
        std::vector<qint64> ids;
        while (read.step()) ids.push_back(read.integer(0));
        return ids;
    }

    Trouble m_trouble;
    size_t m_most;
    Statement m_gifts;
    Statement m_stays;
    Statement m_bees;
    std::set<ColonyId> m_colonies;
    std::set<YardId> m_yards;
    std::vector<ColonyId> m_ahead;
    bool m_found = false;
};

} // namespace

bool troubleLinked(const Database& db, const std::set<ColonyId>& colonies, const std::set<YardId>& yards, int most) {
    Walk walk(db, most);
    for (const ColonyId colony : colonies) walk.reach(colony);
    for (const YardId yard : yards) walk.reach(yard);
    return walk.finds();
}

} // namespace core::store
