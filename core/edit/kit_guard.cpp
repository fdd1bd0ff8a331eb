#include "core/edit/kit_guard.h"

#include "core/edit/edit_checks.h"
#include "core/model/kit_words.h"

#include <map>
#include <set>

namespace core::edit {

namespace {

/// By colony and part: how much more is kept apart after the change.
using Balance = std::map<std::pair<ColonyId, QString>, qint64>;

void add(const std::optional<Row>& row, qint64 id, qint64 sign, Balance& balance) {
    if (!row) return;
    const Kit kit = fromRow<Kit>(id, *row);
    if (kit.colony && kit::keepsColony(kit.state)) balance[{*kit.colony, kit.part}] += sign * kit.count;
}

bool livesAgain(const RowChange& change) {
    if (change.table != Table::Colony || !change.before || !change.after) return false;
    return fromRow<Colony>(change.id, *change.before).ended && !fromRow<Colony>(change.id, *change.after).ended;
}

} // namespace

QString keptApartLost(const EditContext& c, const ChangeSet& change) {
    Balance balance;
    std::set<ColonyId> again;
    for (const RowChange& row : change.rows) {
        if (livesAgain(row)) again.insert(ColonyId{row.id});
        if (row.table != Table::Kit) continue;
        add(row.before, row.id, -1, balance);
        add(row.after, row.id, 1, balance);
    }
    for (const auto& [what, more] : balance) {
        const auto& [colony, part] = what;
        if (more >= 0 || again.contains(colony)) continue;
        return Edits::tr(
                   "%1 × %2 off %3 would no longer be kept apart in the book. That is a correction of the record: "
                   "give a reason and a name.")
            .arg(QString::number(-more), part, shownName(c, needColony(c, colony), c.today()));
    }
    return {};
}

} // namespace core::edit
