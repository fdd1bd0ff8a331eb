#include "core/edit/store_context.h"

#include "core/base/error.h"
#include "core/edit/history_codec.h"
#include "core/store/box_visits.h"
#include "core/store/history_rows.h"
#include "core/store/reads.h"
#include "core/store/row_store.h"
#include "core/store/snapshot_reader.h"

#include <algorithm>

namespace core::edit {

qint64 StoreContext::nextId(Table table) const { return store::maxId(m_db, table) + 1; }

std::optional<Row> StoreContext::row(Table table, qint64 id) const { return store::readRow(m_db, table, id); }

std::optional<Visit> StoreContext::visit(VisitId id) const { return store::visit(m_db, id); }

std::optional<Visit> StoreContext::visitOn(ColonyId colony, Day day) const { return store::visitOn(m_db, colony, day); }

std::vector<std::pair<qint64, Row>> StoreContext::signRows(VisitId visit) const {
    std::vector<std::pair<qint64, Row>> rows;
    for (const auto& [id, sign] : store::signRowsOf(m_db, visit)) rows.emplace_back(id, Row{visit.value, word(sign)});
    return rows;
}

std::optional<Yard> StoreContext::yardNamed(QStringView name) const { return store::yardNamed(m_db, name); }

std::optional<Stand> StoreContext::standNamed(YardId yard, QStringView name) const {
    return store::standNamed(m_db, yard, name);
}

std::optional<BoxKind> StoreContext::boxKindNamed(QStringView name) const { return store::boxKindNamed(m_db, name); }

std::optional<Colony> StoreContext::colonyNamed(QStringView name, Day on) const {
    return store::colonyNamed(m_db, name, on);
}

std::vector<Colony> StoreContext::coloniesLabelled(QStringView label) const {
    return store::coloniesLabelled(m_db, label);
}

std::optional<Placement> StoreContext::openPlacement(ColonyId colony) const {
    return store::openPlacement(m_db, colony);
}

std::vector<Placement> StoreContext::placementsOf(ColonyId colony) const { return store::placementsOf(m_db, colony); }

std::vector<Placement> StoreContext::placementsAt(StandId stand) const { return store::placementsAt(m_db, stand); }

std::vector<Placement> StoreContext::placementsAt(StandId stand, Day day) const {
    return store::placementsAt(m_db, stand, day);
}

std::vector<Stand> StoreContext::standsOf(YardId yard) const { return store::standsOf(m_db, yard); }

std::vector<Lineage> StoreContext::lineageOf(ColonyId colony) const { return store::lineageOf(m_db, colony); }

std::vector<Transfer> StoreContext::transfersOf(ColonyId colony) const { return store::transfersOf(m_db, colony); }

std::vector<Treatment> StoreContext::treatmentsOf(ColonyId colony) const { return store::treatmentsOf(m_db, colony); }

std::vector<Treatment> StoreContext::treatmentsOf(YardId yard) const { return store::treatmentsOf(m_db, yard); }

std::vector<Result> StoreContext::resultsOf(ColonyId colony) const { return store::resultsOf(m_db, colony); }

std::vector<MergeDay> StoreContext::mergeDaysOf(YardId yard) const { return store::mergeDaysOf(m_db, yard); }

std::vector<MergeChoice> StoreContext::choicesOf(MergeDayId day) const { return store::choicesOf(m_db, day); }

std::vector<MergeStrip> StoreContext::stripsOf(MergeDayId day) const { return store::stripsOf(m_db, day); }

std::vector<DivideChoice> StoreContext::divideChoicesOf(MergeDayId day) const {
    return store::divideChoicesOf(m_db, day);
}

std::vector<DivideStrip> StoreContext::divideStripsOf(MergeDayId day) const { return store::divideStripsOf(m_db, day); }

std::vector<Result> StoreContext::resultsOf(YardId yard) const { return store::resultsOf(m_db, yard); }

std::vector<Feeding> StoreContext::feedingsOf(ColonyId colony) const { return store::feedingsOf(m_db, colony); }

std::vector<Sample> StoreContext::samplesOf(ColonyId colony) const { return store::samplesOf(m_db, colony); }

std::optional<Sample> StoreContext::sampleAnsweredBy(ResultId result) const {
    return store::sampleAnsweredBy(m_db, result);
}

std::vector<MiteFall> StoreContext::miteFallsOf(ColonyId colony) const { return store::miteFallsOf(m_db, colony); }

std::vector<Queen> StoreContext::queensOf(ColonyId colony) const { return store::queensOf(m_db, colony); }

std::vector<Queen> StoreContext::queensRaisedFrom(ColonyId mother) const {
    return store::queensRaisedFrom(m_db, mother);
}

bool StoreContext::madeByCarry(StandId stand, ColonyId colony) const {
    constexpr int kFarthestBack = 2000;
    for (const store::HistoryRow& line : store::listHistory(m_db, kFarthestBack)) {
        const auto rows = decode(store::historyChanges(m_db, line.seq)).rows;
        const auto adds = [&](const RowChange& r) {
            return r.table == Table::Stand && r.id == stand.value && !r.before;
        };
        if (std::none_of(rows.begin(), rows.end(), adds)) continue;
        return std::any_of(rows.begin(), rows.end(), [&](const RowChange& r) {
            if (r.table != Table::Placement || !r.after) return false;
            const auto placement = fromRow<Placement>(r.id, *r.after);
            return placement.stand == stand && placement.colony == colony;
        });
    }
    return false;
}

std::vector<Visit> StoreContext::visitsOf(ColonyId colony, int most) const {
    return store::visitsOf(m_db, colony, most);
}

std::pair<Day, int> StoreContext::boxEvent(ColonyId id, Day day, std::optional<int> visited) const {
    const auto colony = find<Colony>(id.value);
    if (!colony) throw Error(Error::Kind::Internal, QStringLiteral("No such colony."));
    std::pair<Day, int> last{colony->since, colony->broodBoxes};
    if (const auto visit = store::latestBoxes(m_db, id, day)) last = *visit;
    if (visited) last = {day, *visited};
    for (const Lineage& l : store::lineageOf(m_db, id))
        if (l.how == LineageHow::United && l.into == id && l.day <= day && l.day >= last.first) last = {l.day, 2};
    return last;
}

int StoreContext::boxesAt(ColonyId colony, Day day, std::optional<int> visited) const {
    return boxEvent(colony, day, visited).second;
}

Day StoreContext::boxesSince(ColonyId colony, Day day) const { return boxEvent(colony, day, {}).first; }

std::vector<Yard> StoreContext::yards() const { return store::yards(m_db); }

std::vector<BoxKind> StoreContext::boxKinds() const { return store::boxKinds(m_db); }

std::vector<Colony> StoreContext::coloniesIn(BoxKindId kind) const { return store::coloniesIn(m_db, kind); }

std::optional<VisitId> StoreContext::visitAbove(BoxKindId kind, int frames) const {
    return store::visitAbove(m_db, kind, frames);
}

Settings StoreContext::settings() const { return store::settings(m_db); }

std::optional<std::pair<qint64, Row>> StoreContext::settingRow(QStringView name) const {
    return store::settingRow(m_db, name);
}

Snapshot StoreContext::snapshot(Day on) const { return store::readSnapshot(m_db, on); }

void StoreContext::eachRow(Table table, const std::function<void(qint64, Row&&)>& take) const {
    store::eachRow(m_db, table, take);
}

void StoreContext::eachVisitKey(const std::function<void(VisitId, ColonyId, Day)>& take) const {
    store::eachVisitKey(m_db, take);
}

} // namespace core::edit
