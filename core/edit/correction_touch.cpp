#include "core/edit/correction_touch.h"

#include "core/model/row_codec.h"
#include "core/store/reads.h"
#include "core/store/trouble_days.h"

#include <algorithm>

namespace core::edit {

namespace {

constexpr int kMostDaysOfRanges = 4;

class Touching {
public:
    Touching(const store::Database& db, Touched& touched) : m_db(db), m_touched(touched) {}

    void take(const RowChange& change) {
        if (change.table == Table::Setting) m_touched.wholeBook = true;
        if (!change.before) return;
        m_days = &m_touched.days;
        takeRow(change, *change.before);
        m_days = &m_touched.edges;
        if (change.after) takeRow(change, *change.after);
        if (change.table != Table::Colony || !change.after) return;
        const bool lived = !fromRow<Colony>(change.id, *change.before).ended;
        if (lived && fromRow<Colony>(change.id, *change.after).ended) m_touched.endedNow.insert(ColonyId{change.id});
    }

private:
    void takeRow(const RowChange& change, const Row& row) {
        switch (change.table) {
        case Table::Yard:
            m_touched.yards.insert(YardId{change.id});
            break;
        case Table::Stand:
            m_touched.yards.insert(fromRow<Stand>(change.id, row).yard);
            break;
        case Table::Colony: {
            const auto colony = fromRow<Colony>(change.id, row);
            take({colony.id}, colony.since);
            addEdge(colony.ended);
            break;
        }
        case Table::Placement:
            takePlacement(fromRow<Placement>(change.id, row));
            break;
        case Table::Visit: {
            const auto visit = fromRow<Visit>(change.id, row);
            take({visit.colony}, visit.day);
            break;
        }
        case Table::VisitSign:
            takeSign(row);
            break;
        default:
            takeRecord(change, row);
            break;
        }
    }
    void takeRecord(const RowChange& change, const Row& row) {
        if (change.table == Table::Transfer) {
            const auto transfer = fromRow<Transfer>(change.id, row);
            take({transfer.from, transfer.to}, transfer.day);
        } else if (change.table == Table::Lineage) {
            const auto lineage = fromRow<Lineage>(change.id, row);
            take({lineage.colony, lineage.into}, lineage.day);
        } else if (change.table == Table::Result) {
            takeSubject(fromRow<Result>(change.id, row));
        } else if (change.table == Table::Treatment) {
            takeSubject(fromRow<Treatment>(change.id, row));
        }
    }
    void take(std::initializer_list<ColonyId> colonies, Day day) {
        m_touched.colonies.insert(colonies);
        m_days->insert(day);
    }
    template <class T> void takeSubject(const T& record) {
        m_days->insert(record.day);
        if (record.colony) m_touched.colonies.insert(*record.colony);
        if (record.yard) m_touched.yards.insert(*record.yard);
    }
    void takePlacement(const Placement& placement) {
        take({placement.colony}, placement.since);
        addEdge(placement.until);
        if (const auto stand = store::find<Stand>(m_db, placement.stand.value)) m_touched.yards.insert(stand->yard);
    }
    /// A sign's row has no day of its own: its visit's.
    void takeSign(const Row& row) {
        const auto* visit = std::get_if<qint64>(&row.at(0));
        if (const auto found = visit ? store::find<Visit>(m_db, *visit) : std::nullopt)
            take({found->colony}, found->day);
    }
    void addEdge(std::optional<Day> day) {
        if (day) m_touched.edges.insert({*day - 1, *day});
    }

    const store::Database& m_db;
    Touched& m_touched;
    std::set<Day>* m_days = nullptr;
};

} // namespace

std::optional<Day> Touched::first() const {
    std::optional<Day> first;
    for (const auto* all : {&days, &edges})
        if (!all->empty()) first = std::min(first.value_or(*all->begin()), *all->begin());
    return first;
}

Touched touchedBy(const store::Database& db, const ChangeSet& change) {
    Touched touched;
    Touching touching(db, touched);
    for (const RowChange& row : change.rows) touching.take(row);
    for (const BulkDelete& range : change.gone) {
        touched.wholeBook = true;
        if (range.table != Table::VisitSign && range.table != Table::Result) continue;
        const qint64 last = range.firstId + range.count - 1;
        for (const Day day : store::troubleDays(db, range.table, range.firstId, last, kMostDaysOfRanges))
            touched.days.insert(day);
    }
    return touched;
}

} // namespace core::edit
