#include "core/edit/yard_stays.h"

#include "core/model/row_codec.h"
#include "core/store/reads.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

namespace core::edit {

namespace {

struct YardStay {
    qint64 yard = 0;
    Day since;
    std::optional<Day> until;
    friend bool operator==(const YardStay&, const YardStay&) = default;
};

std::set<ColonyId> movedBy(const ChangeSet& change) {
    std::set<ColonyId> moved;
    for (const RowChange& row : change.rows) {
        if (row.table != Table::Placement) continue;
        if (row.before) moved.insert(fromRow<Placement>(row.id, *row.before).colony);
        if (row.after) moved.insert(fromRow<Placement>(row.id, *row.after).colony);
    }
    return moved;
}

/// Yards of the stands that the change writes; all others are in the book.
std::map<qint64, qint64> writtenStands(const ChangeSet& change) {
    std::map<qint64, qint64> yards;
    for (const RowChange& row : change.rows)
        if (row.table == Table::Stand && row.after) yards[row.id] = fromRow<Stand>(row.id, *row.after).yard.value;
    return yards;
}

std::vector<Placement> placementsAfter(const std::vector<Placement>& before, ColonyId colony, const ChangeSet& change) {
    std::map<qint64, Placement> byId;
    for (const Placement& p : before) byId[p.id.value] = p;
    for (const RowChange& row : change.rows) {
        if (row.table != Table::Placement) continue;
        byId.erase(row.id);
        if (!row.after) continue;
        const auto now = fromRow<Placement>(row.id, *row.after);
        if (now.colony == colony) byId[row.id] = now;
    }
    std::vector<Placement> after;
    for (const auto& [id, placement] : byId) after.push_back(placement);
    std::sort(after.begin(), after.end(), [](const Placement& a, const Placement& b) {
        return std::tuple(a.since, !a.first, a.id) < std::tuple(b.since, !b.first, b.id);
    });
    return after;
}

/// Placements in time order as stays in yards, a move within one yard left out.
template <class YardOf> std::vector<YardStay> yardStays(const std::vector<Placement>& placements, YardOf&& yardOf) {
    std::vector<YardStay> stays;
    for (const Placement& p : placements) {
        const YardStay stay{yardOf(p.stand), p.since, p.until};
        if (!stays.empty() && stays.back().yard == stay.yard && stays.back().until == stay.since)
            stays.back().until = stay.until;
        else
            stays.push_back(stay);
    }
    return stays;
}

} // namespace

bool sameYards(const store::Database& db, const ChangeSet& change) {
    const auto written = writtenStands(change);
    const auto yardBefore = [&](StandId id) {
        const auto stand = store::find<Stand>(db, id.value);
        return stand ? stand->yard.value : 0;
    };
    const auto yardAfter = [&](StandId id) {
        const auto found = written.find(id.value);
        return found == written.end() ? yardBefore(id) : found->second;
    };
    const auto moved = movedBy(change);
    return std::all_of(moved.begin(), moved.end(), [&](ColonyId colony) {
        const auto before = store::placementsOf(db, colony);
        const auto after = placementsAfter(before, colony, change);
        return yardStays(before, yardBefore) == yardStays(after, yardAfter);
    });
}

} // namespace core::edit
