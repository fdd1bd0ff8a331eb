#include "core/edit/judge.h"

#include "core/base/natural_order.h"
#include "core/edit/after_context.h"
#include "core/edit/edit_checks.h"

#include <set>

namespace core::edit {

namespace {

/// Colonies and labels whose records the rows may be at odds with.
struct Named {
    std::set<ColonyId> colonies;
    std::set<QString> labels;

    void add(const RowChange& change, const Row& row) {
        switch (change.table) {
        case Table::Colony:
            colonies.insert(ColonyId{change.id});
            labels.insert(folded(fromRow<Colony>(change.id, row).label));
            break;
        case Table::Placement:
            colonies.insert(fromRow<Placement>(change.id, row).colony);
            break;
        case Table::Visit:
            colonies.insert(fromRow<Visit>(change.id, row).colony);
            break;
        case Table::Lineage: {
            const auto lineage = fromRow<Lineage>(change.id, row);
            colonies.insert({lineage.colony, lineage.into});
            break;
        }
        case Table::Queen:
            colonies.insert(fromRow<Queen>(change.id, row).colony);
            break;
        default: // Rests on others; nothing rests on it.
            break;
        }
    }
};

} // namespace

void judge(const EditContext& c, const std::vector<RowChange>& rows) {
    Named named;
    for (const RowChange& change : rows) {
        if (change.before) named.add(change, *change.before);
        if (change.after) named.add(change, *change.after);
    }
    const AfterContext after(c, rows);
    for (const ColonyId id : named.colonies) {
        const auto colony = after.colony(id);
        if (!colony) continue;
        needFreeLabel(after, *colony);
        judgeLife(after, *colony);
        judgeLineage(after, *colony);
        judgePlaces(after, *colony);
        judgeCounts(after, *colony);
        judgeQueens(after, *colony);
    }
    for (const QString& label : named.labels) judgeLabel(after, label);
}

void judgeLabel(const EditContext& after, const QString& label) {
    const auto colonies = after.coloniesLabelled(label);
    for (const Colony& colony : colonies)
        for (const Result& r : after.resultsOf(colony.id))
            if (r.day < colonies.front().since)
                refuse(Edits::tr("%1 has a result of %2; it cannot have begun after that.")
                           .arg(shownName(after, colony, colony.since), isoText(r.day)));
}

} // namespace core::edit
