#include "core/rules/hold_gifts.h"

#include <algorithm>
#include <tuple>

namespace core::rules {

namespace {

GiftKind kindOf(TransferKind what) { return static_cast<GiftKind>(what); }
GiftKind kindOf(LineageHow how) {
    return static_cast<GiftKind>(static_cast<int>(GiftKind::United) + static_cast<int>(how));
}

// Gifts of one colony: by day, and on one day in an order that no order of rows decides.
bool before(const Gift& a, const Gift& b) {
    return std::tie(a.day, a.from, a.to, a.kind) < std::tie(b.day, b.from, b.to, b.kind);
}

// Counting sort by one of a gift's colonies; keeps the order of days.
template <class Key>
void groupBy(const std::vector<Gift>& all, size_t colonies, Key key, std::vector<Gift>& out,
             std::vector<qint32>& start) {
    start.assign(colonies + 1, 0);
    for (const Gift& g : all) ++start[static_cast<size_t>(key(g).value) + 1];
    for (size_t i = 1; i < start.size(); ++i) start[i] += start[i - 1];
    out.resize(all.size());
    std::vector<qint32> next(start.begin(), start.end() - 1);
    for (const Gift& g : all) out[static_cast<size_t>(next[static_cast<size_t>(key(g).value)]++)] = g;
    for (size_t i = 0; i < colonies; ++i) {
        const auto first = out.begin() + start[i];
        const auto last = out.begin() + start[i + 1];
        if (!std::is_sorted(first, last, before)) std::sort(first, last, before);
    }
}

} // namespace

Gifts::Gifts(const Snapshot& s) {
    static_assert(static_cast<int>(GiftKind::Feed) == static_cast<int>(TransferKind::Feed));
    m_all.reserve(s.transfers.size() + s.lineage.size());
    for (const SnapTransfer& t : s.transfers) m_all.push_back({t.day, t.from, t.to, kindOf(t.what)});
    for (const SnapLineage& l : s.lineage) m_all.push_back({l.day, l.colony, l.into, kindOf(l.how)});
    std::stable_sort(m_all.begin(), m_all.end(), [](const Gift& a, const Gift& b) { return a.day < b.day; });
    groupBy(
        m_all, s.colonies.size(), [](const Gift& g) { return g.from; }, m_from, m_fromStart);
    groupBy(
        m_all, s.colonies.size(), [](const Gift& g) { return g.to; }, m_to, m_toStart);
}

std::span<const Gift> Gifts::of(const std::vector<Gift>& gifts, const std::vector<qint32>& start, ColonyIx ix) {
    const auto i = static_cast<size_t>(ix.value);
    const auto first = static_cast<size_t>(start[i]);
    return std::span(gifts).subspan(first, static_cast<size_t>(start[i + 1]) - first);
}

} // namespace core::rules
