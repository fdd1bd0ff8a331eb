#include "core/rules/contacts.h"

#include <algorithm>
#include <iterator>
#include <tuple>

namespace core::rules {

namespace {

/// Goes through the days with gifts, one way or the other, and through each day until nobody new is reached on it.
class ContactWalk {
public:
    ContactWalk(const Gifts& gifts, size_t colonies, ColonyIx colony, ContactWay way) : m_gifts(gifts) {
        m_out.of = colony;
        m_out.way = way;
        m_out.firstLink.assign(colonies, kNotReached);
        m_passed.assign(colonies, {});
    }

    Contacts walk(Day from, Day until) {
        const auto all = m_gifts.all();
        const auto early = [](const Gift& g, Day day) { return g.day < day; };
        const auto first = std::lower_bound(all.begin(), all.end(), from, early);
        const auto last = std::lower_bound(first, all.end(), until + 1, early);
        if (m_out.way == ContactWay::Onwards)
            walkDays(first, last);
        else
            walkDays(std::reverse_iterator(last), std::reverse_iterator(first));
        return std::move(m_out);
    }

private:
    static constexpr qint32 kNotReached = -1;

    ColonyIx near(const Gift& g) const { return m_out.way == ContactWay::Onwards ? g.from : g.to; }
    bool known(ColonyIx c) const {
        return c == m_out.of || m_out.firstLink[static_cast<size_t>(c.value)] != kNotReached;
    }

    template <class It> void walkDays(It at, It end) {
        while (at != end) {
            const Day day = at->day;
            m_today.clear();
            for (; at != end && at->day == day; ++at)
                if (known(near(*at))) m_today.push_back(near(*at));
            for (size_t i = 0; i < m_today.size(); ++i) passOn(m_today[i], day);
        }
    }

    void passOn(ColonyIx colony, Day day) {
        auto& passed = m_passed[static_cast<size_t>(colony.value)];
        if (passed == day) return;
        passed = day;
        const auto gifts = m_out.way == ContactWay::Onwards ? m_gifts.from(colony) : m_gifts.to(colony);
        const auto [first, last] = std::equal_range(gifts.begin(), gifts.end(), Gift{day, {}, {}, {}},
                                                    [](const Gift& a, const Gift& b) { return a.day < b.day; });
        for (auto g = first; g != last; ++g) take(*g, colony);
    }

    void take(const Gift& gift, ColonyIx nearer) {
        const qint32 before = nearer == m_out.of ? -1 : m_out.firstLink[static_cast<size_t>(nearer.value)];
        const int steps = before < 0 ? 1 : m_out.links[static_cast<size_t>(before)].steps + 1;
        const ColonyIx far = m_out.far({gift, before, steps});
        m_out.links.push_back({gift, before, steps});
        if (known(far)) return;
        m_out.firstLink[static_cast<size_t>(far.value)] = static_cast<qint32>(m_out.links.size()) - 1;
        m_out.reached.push_back(far);
        m_today.push_back(far);
    }

    const Gifts& m_gifts;
    Contacts m_out;
    std::vector<std::optional<Day>> m_passed; ///< by colony: the last day whose gifts were taken
    std::vector<ColonyIx> m_today;
};

} // namespace

std::vector<Gift> Contacts::chainTo(ColonyIx colony) const {
    std::vector<Gift> chain;
    for (qint32 at = firstLink[static_cast<size_t>(colony.value)]; at >= 0; at = links[static_cast<size_t>(at)].before)
        chain.push_back(links[static_cast<size_t>(at)].gift);
    std::reverse(chain.begin(), chain.end());
    return chain;
}

Contacts contactsOf(const Gifts& gifts, size_t colonies, ColonyIx colony, Day from, Day until, ContactWay way) {
    return ContactWalk(gifts, colonies, colony, way).walk(from, until);
}

std::vector<YardContact> yardContactsOf(const Standing& standing, ColonyIx colony, Day from, Day until) {
    std::vector<YardContact> out;
    for (const YardStay& own : standing.of(colony))
        for (const YardStay& other : standing.in(own.yard)) {
            if (other.colony == colony) continue;
            const Day since = std::max({own.since, other.since, from});
            const Day last = std::min({own.until, other.until, until});
            if (since <= last) out.push_back({other.colony, own.yard, since, last});
        }
    std::ranges::sort(out, {}, [](const YardContact& c) { return std::tie(c.yard, c.colony, c.since); });
    return out;
}

std::vector<HeldThen> heldWerePositive(const Snapshot& whole, ColonyId colony, Day on) {
    Snapshot supposed = whole;
    const auto at = std::ranges::find(whole.colonies, colony, &SnapColony::id);
    if (at == whole.colonies.end()) return {};
    SnapResult positive;
    positive.day = on;
    positive.colony = {static_cast<qint32>(at - whole.colonies.begin())};
    positive.verdict = Verdict::Positive;
    const auto after = std::ranges::upper_bound(supposed.results, on, {}, &SnapResult::day);
    supposed.results.insert(after, positive);
    const auto less = [](const HeldThen& a, const HeldThen& b) {
        return std::tie(a.colony, a.kind) < std::tie(b.colony, b.kind);
    };
    std::vector<HeldThen> now = holdsThen(whole, on), then = holdsThen(supposed, on), more;
    std::ranges::sort(now, less);
    std::ranges::sort(then, less);
    std::set_difference(then.begin(), then.end(), now.begin(), now.end(), std::back_inserter(more), less);
    return more;
}

} // namespace core::rules
