#include "core/rules/hold_spread.h"

#include <algorithm>

namespace core::rules {

namespace {

bool earlier(const Gift& gift, Day day) { return gift.day < day; }

} // namespace

Spread::Spread(const Gifts& gifts, size_t colonies) : m_gifts(gifts), m_next(colonies, -1), m_passed(colonies) {}

std::span<const Gift> Spread::rest(qint32 colony) const {
    return m_gifts.from(ColonyIx{colony}).subspan(static_cast<size_t>(m_next[static_cast<size_t>(colony)]));
}

void Spread::push(qint32 colony) {
    const auto gifts = rest(colony);
    if (gifts.empty()) return;
    m_heap.push_back({gifts.front().day, colony});
    std::push_heap(m_heap.begin(), m_heap.end());
}

void Spread::touch(ColonyIx colony, Day from) {
    qint32& next = m_next[static_cast<size_t>(colony.value)];
    const auto gifts = m_gifts.from(colony);
    const auto first = static_cast<qint32>(std::lower_bound(gifts.begin(), gifts.end(), from, earlier) - gifts.begin());
    if (next >= 0 && next <= first) return;
    if (next < 0) m_touched.push_back(colony.value);
    next = first;
    push(colony.value);
}

// Those whose next gift is of that day; what the heap says of a colony may be out of date.
void Spread::collect(Day day) {
    m_today.clear();
    while (!m_heap.empty() && m_heap.front().day == day) {
        const qint32 colony = m_heap.front().colony;
        std::pop_heap(m_heap.begin(), m_heap.end());
        m_heap.pop_back();
        const auto gifts = rest(colony);
        if (!gifts.empty() && gifts.front().day == day) m_today.push_back(colony);
    }
}

void Spread::arrive(qint32 colony, Day day) {
    touch(ColonyIx{colony}, day); // it may have been touched from a later day on
    const auto gifts = rest(colony);
    if (!gifts.empty() && gifts.front().day == day && m_passed[static_cast<size_t>(colony)] != day)
        m_today.push_back(colony);
}

void Spread::finish() {
    std::sort(m_today.begin(), m_today.end());
    m_today.erase(std::unique(m_today.begin(), m_today.end()), m_today.end());
    for (const qint32 colony : m_today) {
        const auto gifts = rest(colony);
        const Day day = gifts.front().day;
        const auto after = std::find_if(gifts.begin(), gifts.end(), [&](const Gift& g) { return g.day != day; });
        m_next[static_cast<size_t>(colony)] += static_cast<qint32>(after - gifts.begin());
        push(colony);
    }
}

void Spread::clean() {
    for (const qint32 colony : m_touched) {
        m_next[static_cast<size_t>(colony)] = -1;
        m_passed[static_cast<size_t>(colony)] = {};
    }
    m_touched.clear();
}

} // namespace core::rules
