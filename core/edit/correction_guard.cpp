#include "core/edit/correction_guard.h"

#include "core/edit/edit_checks.h"
#include "core/model/setting_fields.h"

#include <algorithm>

namespace core::edit {

namespace {

template <class T> T rowOf(const RowChange& change, const std::optional<Row>& row) {
    return fromRow<T>(change.id, *row);
}

bool wasTrouble(const RowChange& change) {
    constexpr size_t kSign = 1;
    const auto* text = std::get_if<QString>(&change.before->at(kSign));
    const auto sign = text ? fromWord<Sign>(*text) : std::nullopt;
    Signs signs;
    if (sign) signs.add(*sign);
    return !sign || signs.broodTrouble();
}

/// Without a brood check there are only more of these holds: its visit may go. One with a sign takes the sign's row
/// with it, which is judged itself. Moved or altered, a check could answer what it did not.
bool visitMatters(const RowChange& change) {
    if (!change.after) return false;
    const auto before = rowOf<Visit>(change, change.before);
    const auto after = rowOf<Visit>(change, change.after);
    return before.colony != after.colony || before.day != after.day ||
           (before.broodChecked &&
            (before.broodChecked != after.broodChecked || before.broodFrames != after.broodFrames));
}

bool placementMatters(const RowChange& change) {
    if (!change.after) return true;
    auto before = rowOf<Placement>(change, change.before);
    const auto after = rowOf<Placement>(change, change.after);
    if (!before.until) before.until = after.until; // left: a record added
    before.headingDeg = after.headingDeg;
    return before != after;
}

bool colonyMatters(const RowChange& change) {
    if (!change.after) return true;
    const auto before = rowOf<Colony>(change, change.before);
    const auto after = rowOf<Colony>(change, change.after);
    const bool sameEnd = !before.ended || (before.ended == after.ended && before.end == after.end);
    return before.since != after.since || !sameEnd;
}

bool yardMatters(const RowChange& change) {
    return !change.after ||
           rowOf<Yard>(change, change.before).latitudeDeg != rowOf<Yard>(change, change.after).latitudeDeg;
}

bool standMatters(const RowChange& change) {
    return change.after && rowOf<Stand>(change, change.before).yard != rowOf<Stand>(change, change.after).yard;
}

bool settingMatters(const RowChange& change) {
    const auto& row = change.before ? change.before : change.after;
    const auto* name = std::get_if<QString>(&row->at(0));
    const auto fields = settingFields();
    return std::any_of(fields.begin(), fields.end(), [&](const SettingField& f) {
        return f.onlyStricter && name && *name == QLatin1StringView(f.name);
    });
}

bool rowMatters(const RowChange& change, bool placementsToo) {
    if (change.table == Table::Setting) return settingMatters(change);
    if (!change.before) return false;
    switch (change.table) {
    case Table::Yard:
        return yardMatters(change);
    case Table::Stand:
        return standMatters(change);
    case Table::Colony:
        return colonyMatters(change);
    case Table::Placement:
        return placementsToo && placementMatters(change);
    case Table::Visit:
        return visitMatters(change);
    case Table::VisitSign:
        return wasTrouble(change);
    case Table::Transfer:
    case Table::Result:
    case Table::Treatment:
    case Table::Lineage:
        return true;
    case Table::BoxKind:
    case Table::Kit:
    case Table::Setting:
    case Table::Person:
        return false;
    }
    return true;
}

bool rangeMatters(const BulkDelete& range) {
    switch (range.table) {
    case Table::BoxKind:
    case Table::Kit:
    case Table::Person:
    case Table::Stand:
    case Table::Visit: // as for a single visit
        return false;
    default:
        return true;
    }
}

std::optional<Day> dayOfRow(const RowChange& change, const std::optional<Row>& row) {
    switch (change.table) {
    case Table::Colony:
        return rowOf<Colony>(change, row).since;
    case Table::Placement:
        return rowOf<Placement>(change, row).since;
    case Table::Visit:
        return rowOf<Visit>(change, row).day;
    case Table::Transfer:
        return rowOf<Transfer>(change, row).day;
    case Table::Result:
        return rowOf<Result>(change, row).day;
    case Table::Treatment:
        return rowOf<Treatment>(change, row).day;
    case Table::Lineage:
        return rowOf<Lineage>(change, row).day;
    default:
        return std::nullopt;
    }
}

/// How the colony is named where it is not the book's any more, or lives no more.
bool endedStill(const Snapshot& s, ColonyId id) {
    return std::any_of(s.colonies.begin(), s.colonies.end(),
                       [&](const SnapColony& c) { return c.id == id && !c.living(); });
}

} // namespace

bool touchesRecord(const ChangeSet& change, bool placementsToo) {
    const auto matters = [&](const RowChange& row) { return rowMatters(row, placementsToo); };
    return std::any_of(change.rows.begin(), change.rows.end(), matters) ||
           std::any_of(change.gone.begin(), change.gone.end(), rangeMatters);
}

std::set<Day> touchedDays(const ChangeSet& change) {
    std::set<Day> days;
    for (const RowChange& row : change.rows)
        if (row.before)
            if (const auto day = dayOfRow(row, row.before)) days.insert(*day);
    return days;
}

StandingHolds standingHolds(const Snapshot& s) {
    StandingHolds standing;
    for (const rules::Hold& hold : rules::holds(s)) {
        if (hold.kind == rules::HoldKind::BroodNotChecked) continue;
        const SnapColony& colony = s.colony(hold.colony);
        standing.emplace(std::pair(colony.id, hold.kind), colony.shown);
    }
    return standing;
}

QStringList liftedHolds(const StandingHolds& before, const Snapshot& after) {
    if (before.empty()) return {};
    const StandingHolds now = standingHolds(after);
    QStringList lifted;
    for (const auto& [key, shown] : before)
        if (!now.contains(key) && !endedStill(after, key.first))
            lifted << QStringLiteral("%1: %2").arg(shown, rules::holdWord(key.second));
    return lifted;
}

QString correctionSentence(const QStringList& lifted, Day on) {
    constexpr qsizetype kMost = 8;
    QString names = lifted.mid(0, kMost).join(QStringLiteral(", "));
    if (lifted.size() > kMost) names = Edits::tr("%1 and %2 more").arg(names).arg(lifted.size() - kMost);
    return Edits::tr("Holds rest on this record. Without it these would be gone on %1: %2. Taking it back is a "
                     "correction of the record: give a reason and a name.")
        .arg(isoText(on), names);
}

} // namespace core::edit
