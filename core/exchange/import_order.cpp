#include "core/exchange/import_order.h"

#include "core/base/natural_order.h"
#include "core/exchange/row_key.h"
#include "core/model/row_codec.h"

#include <algorithm>
#include <numeric>

namespace core::exchange {

namespace {

std::vector<int> positions(size_t count) {
    std::vector<int> all(count);
    std::iota(all.begin(), all.end(), 0);
    return all;
}

template <class Entry> const Entry& at(const std::vector<Entry>& entries, int position) {
    return entries[static_cast<size_t>(position)];
}

/// All positions by natural order of a name, then by `next`.
template <class Entry, class Name, class Next>
std::vector<int> byName(const std::vector<Entry>& entries, Name name, Next next) {
    std::vector<int> all = positions(entries.size());
    std::ranges::sort(all, [&](int a, int b) {
        const int order = naturalCompare(name(at(entries, a)), name(at(entries, b)));
        return order != 0 ? order < 0 : next(at(entries, a)) < next(at(entries, b));
    });
    return all;
}

std::vector<int> ranksOf(const std::vector<int>& sorted) {
    std::vector<int> ranks(sorted.size());
    for (size_t i = 0; i < sorted.size(); ++i) ranks[static_cast<size_t>(sorted[i])] = static_cast<int>(i);
    return ranks;
}

template <class Entry> std::vector<int> newOf(const std::vector<Entry>& entries, std::vector<int> sorted) {
    std::erase_if(sorted, [&](int i) { return at(entries, i).at.inBook(); });
    return sorted;
}

/// By day, then rank, then what the rows say.
template <class Draft>
void orderByDay(std::vector<RecordEntry<Draft>>& entries, const std::vector<int>& colonyRank,
                const std::vector<int>& otherRank) {
    struct Keyed {
        Day day;
        int colony;
        int other;
        QString says;
        RecordEntry<Draft> entry;
    };
    const auto rank = [](const std::vector<int>& ranks, int i) { return i < 0 ? -1 : ranks[static_cast<size_t>(i)]; };
    std::vector<Keyed> keyed;
    keyed.reserve(entries.size());
    for (const auto& e : entries)
        keyed.push_back(
            {e.draft->row.day, rank(colonyRank, e.colony), rank(otherRank, e.other), rowKey(toRow(e.draft->row)), e});
    std::ranges::stable_sort(keyed, {}, [](const Keyed& k) { return std::tie(k.day, k.colony, k.other, k.says); });
    std::ranges::transform(keyed, entries.begin(), &Keyed::entry);
}

} // namespace

ImportOrder importOrder(const Ledger& ledger) {
    ImportOrder order;
    const auto none = [](const auto&) { return 0; };
    const auto name = [](const auto& entry) -> const QString& { return entry.row.name; };
    const auto yards = byName(ledger.yards, name, none);
    order.yardRank = ranksOf(yards);
    order.yards = newOf(ledger.yards, yards);
    order.boxes = newOf(ledger.boxes, byName(ledger.boxes, name, none));
    order.stands = positions(ledger.stands.size());
    std::ranges::sort(order.stands, [&](int a, int b) {
        const StandEntry& first = at(ledger.stands, a);
        const StandEntry& second = at(ledger.stands, b);
        if (first.yard != second.yard) return at(order.yardRank, first.yard) < at(order.yardRank, second.yard);
        return naturalCompare(first.row.name, second.row.name) < 0;
    });
    order.stands = newOf(ledger.stands, order.stands);
    const auto colonies = byName(
        ledger.colonies, [](const ColonyEntry& c) -> const QString& { return c.row.label; },
        [](const ColonyEntry& c) { return c.row.since; });
    order.colonyRank = ranksOf(colonies);
    order.colonies = newOf(ledger.colonies, colonies);
    order.stays = newOf(ledger.stays, positions(ledger.stays.size()));
    std::ranges::sort(order.stays, {}, [&](int i) {
        const StayEntry& stay = at(ledger.stays, i);
        return std::tuple(at(order.colonyRank, stay.colony), stay.row.since, !stay.row.first);
    });
    order.lineage = newOf(ledger.lineage, positions(ledger.lineage.size()));
    std::ranges::sort(order.lineage, {}, [&](int i) {
        const LineageEntry& entry = at(ledger.lineage, i);
        return std::tuple(entry.row.day, entry.row.how, at(order.colonyRank, entry.colony),
                          at(order.colonyRank, entry.into));
    });
    return order;
}

void orderRecords(Ledger& ledger, const ImportOrder& order) {
    std::ranges::sort(ledger.visits, {}, [&](const RecordEntry<VisitDraft>& e) {
        return std::pair(at(order.colonyRank, e.colony), e.draft->row.day);
    });
    std::ranges::sort(ledger.settings, {}, &SettingEntry::name);
    orderByDay(ledger.transfers, order.colonyRank, order.colonyRank);
    orderByDay(ledger.results, order.colonyRank, order.yardRank);
    orderByDay(ledger.treatments, order.colonyRank, order.yardRank);
    orderByDay(ledger.feedings, order.colonyRank, order.yardRank);
    std::ranges::stable_sort(ledger.samples, {}, [](const RecordEntry<SampleDraft>& e) {
        return std::pair(e.draft->answer, e.draft->paper);
    });
    orderByDay(ledger.samples, order.colonyRank, order.yardRank);
    orderByDay(ledger.kitEnds, order.colonyRank, order.yardRank);
    orderByDay(ledger.miteFalls, order.colonyRank, order.yardRank);
    std::ranges::sort(ledger.queens, {}, [&](const RecordEntry<QueenDraft>& e) {
        return std::pair(at(order.colonyRank, e.colony), e.draft->row.since);
    });
}

} // namespace core::exchange
