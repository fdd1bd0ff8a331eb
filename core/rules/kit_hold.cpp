#include "core/rules/kit_hold.h"

#include "core/rules/hold_reasons.h"
#include "core/rules/hold_sources.h"

#include <algorithm>
#include <numeric>

namespace core::rules {

namespace {

/// The snapshot with some ended colonies among the living: colonies are put in order anew, and every index with them.
class Revived {
public:
    Revived(const Snapshot& s, const std::set<ColonyIx>& ended) : m_now(s), m_new(s.colonies.size()) {
        std::vector<qint32> order(s.colonies.size());
        std::iota(order.begin(), order.end(), 0);
        std::stable_partition(order.begin(), order.end(),
                              [&](qint32 i) { return s.colony(ColonyIx{i}).living() || ended.contains(ColonyIx{i}); });
        for (size_t at = 0; at < order.size(); ++at) {
            const auto old = static_cast<size_t>(order[at]);
            m_new[old] = static_cast<qint32>(at);
            m_now.colonies[at] = s.colonies[old];
        }
        for (const ColonyIx ix : ended) m_now.colonies[static_cast<size_t>(turned(ix).value)].ended.reset();
        turnLatest(s);
        turnAll();
        for (const ColonyIx ix : ended) carryAway(turned(ix), *s.colony(ix).ended);
        sortByColony(m_now.stays);
    }
    const Snapshot& snapshot() const { return m_now; }

private:
    ColonyIx turned(ColonyIx old) const {
        return old.value < 0 ? old : ColonyIx{m_new[static_cast<size_t>(old.value)]};
    }
    void turn(ColonyIx& ix) const { ix = turned(ix); }

    void turnLatest(const Snapshot& s) {
        m_now.latest.assign(m_now.livingCount(), SnapLatest{});
        for (size_t i = 0; i < s.latest.size(); ++i)
            if (s.colonies[i].living())
                m_now.latest[static_cast<size_t>(turned(ColonyIx{static_cast<qint32>(i)}).value)] = s.latest[i];
    }
    template <class T> void turnOwn(std::vector<T>& rows) const {
        for (T& row : rows) turn(row.colony);
        sortByColony(rows);
    }
    template <class T> static void sortByColony(std::vector<T>& rows) {
        std::stable_sort(rows.begin(), rows.end(), [](const T& a, const T& b) { return a.colony < b.colony; });
    }
    /// From its end on (or the last comb taken from it, rule 4.4.2) it stands in a yard of its own, where nothing
    /// reaches it.
    void carryAway(ColonyIx colony, Day ended) {
        if (m_now.colony(colony).end != EndKind::United)
            for (const SnapTransfer& t : m_now.transfers)
                if (t.from == colony) ended = std::max(ended, t.day);
        SnapStay* last = nullptr;
        for (SnapStay& stay : m_now.stays)
            if (stay.colony == colony) last = &stay;
        if (!last) return;
        last->until = std::max(last->since, ended);
        SnapStay away = *last;
        away.yard = YardIx{static_cast<qint32>(m_now.yards.size())};
        away.since = *last->until;
        away.until.reset();
        m_now.yards.emplace_back();
        m_now.stays.push_back(away);
    }
    void turnAll() {
        turnOwn(m_now.stays);
        turnOwn(m_now.checks);
        turnOwn(m_now.signs);
        for (SnapTransfer& t : m_now.transfers) {
            turn(t.from);
            turn(t.to);
        }
        for (SnapLineage& l : m_now.lineage) {
            turn(l.colony);
            turn(l.into);
        }
        for (SnapResult& r : m_now.results) turn(r.colony);
        for (SnapTreatment& t : m_now.treatments) turn(t.colony);
    }

    Snapshot m_now;
    std::vector<qint32> m_new; ///< by old index
};

/// A colony's first hold is its gravest.
void addHolds(const Snapshot& s, const std::set<ColonyId>& of, std::map<ColonyId, KitHold>& found) {
    for (const Hold& hold : holds(s)) {
        const ColonyId id = s.colony(hold.colony).id;
        if (hold.kind != HoldKind::BroodNotChecked && of.contains(id))
            found.try_emplace(id, KitHold{hold.kind, hold.because()});
    }
}

} // namespace

std::map<ColonyId, KitHold> kitHolds(const Snapshot& s, const std::set<ColonyId>& colonies) {
    std::map<ColonyId, KitHold> found;
    if (colonies.empty()) return found;
    addHolds(s, colonies, found);
    // A source that has ended stays as it is: living, it would bring others into its reach.
    std::set<ColonyIx> others;
    const Evidence e(s);
    for (qint32 i = static_cast<qint32>(s.livingCount()); i < static_cast<qint32>(s.colonies.size()); ++i) {
        const ColonyIx ix{i};
        if (!colonies.contains(s.colony(ix).id)) continue;
        const bool confirmed = isConfirmed(e, ix);
        if (!confirmed && !isSuspected(e, ix)) {
            others.insert(ix);
            continue;
        }
        const Told told = confirmed ? confirmedReason(e, ix) : suspectedReason(e, ix);
        found[s.colony(ix).id] = {confirmed ? HoldKind::AfbConfirmed : HoldKind::AfbSuspected,
                                  told.told + u' ' + told.lift};
    }
    if (!others.empty()) addHolds(Revived(s, others).snapshot(), colonies, found);
    return found;
}

} // namespace core::rules
