#include "ui/life/family.h"

#include "ui/form/book_options.h"

#include <algorithm>
#include <deque>
#include <map>
#include <set>

namespace ui::life {

namespace {

using core::ColonyId;
using core::Day;
using core::Lineage;

enum class Way { Back, On };

/// Walks from the colony asked for, nearest first: back along what came into it, on along what went out of it.
class Walk {
public:
    Walk(const FamilyBook& book, ColonyId asked, Day on, size_t most) : m_book(book), m_on(on), m_most(most) {
        if (!take(asked)) return;
        m_queue.push_back({asked, Way::Back, on});
        m_queue.push_back({asked, Way::On, m_colonies.at(asked).since});
        while (!m_queue.empty()) {
            const Step step = m_queue.front();
            m_queue.pop_front();
            follow(step);
        }
    }

    const std::map<ColonyId, core::Colony>& colonies() const { return m_colonies; }
    const std::vector<ColonyId>& rows() const { return m_rows; }
    const std::map<core::LineageId, Lineage>& ties() const { return m_ties; }
    int left() const { return static_cast<int>(m_left.size()); }

private:
    struct Step {
        ColonyId colony;
        Way way;
        Day limit; ///< back: what came up to it; on: what went from it on
    };

    void follow(const Step& step) {
        for (const Lineage& l : m_book.lineage(step.colony)) {
            if (l.day > m_on) continue;
            if (step.way == Way::Back ? l.into != step.colony || l.day > step.limit
                                      : l.colony != step.colony || l.day < step.limit)
                continue;
            const ColonyId next = step.way == Way::Back ? l.colony : l.into;
            if (!take(next, step)) continue;
            m_ties.emplace(l.id, l);
            const auto [was, fresh] = m_reached.try_emplace({next, step.way}, l.day);
            const bool more = step.way == Way::Back ? l.day > was->second : l.day < was->second;
            if (!fresh && !more) continue;
            was->second = l.day;
            m_queue.push_back({next, step.way, l.day});
        }
    }

    /// Into the drawing, above or below the one that led to it.
    bool take(ColonyId colony, const std::optional<Step>& by = {}) {
        if (m_colonies.contains(colony)) return true;
        const auto found = m_book.colony(colony);
        if (!found || found->since > m_on) return false;
        if (m_rows.size() >= m_most) {
            m_left.insert(colony);
            return false;
        }
        m_colonies.emplace(colony, *found);
        auto at = m_rows.end();
        if (by) at = std::ranges::find(m_rows, by->colony) + (by->way == Way::On);
        m_rows.insert(at, colony);
        return true;
    }

    const FamilyBook& m_book;
    Day m_on;
    size_t m_most;
    std::deque<Step> m_queue;
    std::map<ColonyId, core::Colony> m_colonies;
    std::vector<ColonyId> m_rows;
    std::map<core::LineageId, Lineage> m_ties;
    std::map<std::pair<ColonyId, Way>, Day> m_reached;
    std::set<ColonyId> m_left;
};

struct Drawn {
    std::vector<core::report::TimeRow> rows;
    std::vector<core::report::TimeStroke> strokes;
};

Drawn drawnOf(const Family& f) {
    Drawn out;
    for (const Kin& k : f.kin) out.rows.push_back({k.since, k.ended.value_or(f.last)});
    for (const KinTie& t : f.ties) out.strokes.push_back({t.day, t.from, t.into});
    return out;
}

/// Rows in the order of few crossings.
void settle(Family& f) {
    const Drawn drawn = drawnOf(f);
    const auto order = core::report::quietOrder(drawn.rows, drawn.strokes);
    std::vector<size_t> place(order.size());
    std::vector<Kin> kin;
    for (size_t i = 0; i < order.size(); ++i) {
        place[order[i]] = i;
        kin.push_back(f.kin[order[i]]);
    }
    f.kin = std::move(kin);
    f.asked = place[f.asked];
    for (KinTie& t : f.ties) {
        t.from = place[t.from];
        t.into = place[t.into];
    }
    std::ranges::stable_sort(f.ties, {}, &KinTie::day);
}

} // namespace

Family familyOf(const FamilyBook& book, ColonyId colony, Day on, size_t most) {
    const Walk walk(book, colony, on, most);
    Family f;
    f.last = on;
    f.left = walk.left();
    std::map<ColonyId, size_t> at;
    for (const ColonyId id : walk.rows()) {
        const core::Colony& c = walk.colonies().at(id);
        const bool over = c.ended && *c.ended <= on;
        at[id] = f.kin.size();
        f.kin.push_back({id, book.name(c, over ? *c.ended : on), c.since, over ? c.ended : std::nullopt,
                         over ? c.end : std::nullopt});
    }
    if (f.kin.empty()) return f;
    f.asked = at.at(colony);
    for (const auto& [id, l] : walk.ties()) f.ties.push_back({at.at(l.colony), at.at(l.into), l.day, l.how});
    settle(f);
    return f;
}

Family familyOf(const core::edit::Session& session, ColonyId colony, Day on, size_t most) {
    return familyOf({[&](ColonyId id) { return session.colony(id); },
                     [&](ColonyId id) { return session.lineageOf(id); },
                     [&](const core::Colony& c, Day day) { return form::nameOn(session, c, day); }},
                    colony, on, most);
}

int crossingsOf(const Family& family) {
    const Drawn drawn = drawnOf(family);
    std::vector<size_t> order(family.kin.size());
    for (size_t i = 0; i < order.size(); ++i) order[i] = i;
    return core::report::crossingsOf(drawn.rows, drawn.strokes, order);
}

} // namespace ui::life
