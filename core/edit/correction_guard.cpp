#include "core/edit/correction_guard.h"

#include "core/edit/edit_checks.h"
#include "core/edit/holds_gone.h"
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

/// Altered in nothing but what no rule reads.
template <class T> bool sameBut(const RowChange& change, void (*forget)(T&)) {
    if (!change.after) return false;
    T before = rowOf<T>(change, change.before);
    T after = rowOf<T>(change, change.after);
    forget(before);
    forget(after);
    return before == after;
}

bool transferMatters(const RowChange& change) {
    return !sameBut<Transfer>(change, [](Transfer& t) {
        t.count.reset();
        t.note.clear();
    });
}

bool resultMatters(const RowChange& change) {
    return !sameBut<Result>(change, [](Result& r) {
        r.by.clear();
        r.paper.clear();
        r.note.clear();
    });
}

bool lineageMatters(const RowChange& change) {
    return !sameBut<Lineage>(change, [](Lineage& l) {
        l.by.clear();
        l.note.clear();
    });
}

/// Only an antibiotic masks, and opens a source's window earlier.
bool treatmentMatters(const RowChange& change) {
    const auto before = rowOf<Treatment>(change, change.before);
    if (!before.antibiotic) return false;
    if (!change.after) return true;
    const auto after = rowOf<Treatment>(change, change.after);
    return !after.antibiotic || before.day != after.day || before.colony != after.colony || before.yard != after.yard;
}

} // namespace

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
        return transferMatters(change);
    case Table::Result:
        return resultMatters(change);
    case Table::Treatment:
        return treatmentMatters(change);
    case Table::Lineage:
        return lineageMatters(change);
    case Table::BoxKind:
    case Table::Kit:
    case Table::Setting:
    case Table::Person:
    case Table::FixedThing:
    case Table::MergeDay:
    case Table::MergeChoice:
    case Table::MergeStrip:
    case Table::DivideChoice:
    case Table::DivideStrip:
    case Table::Feeding:
    case Table::Queen:
    case Table::FileMapping:
    case Table::Phrase:
    case Table::Question:
    case Table::Sample:
    case Table::MiteFall:
    case Table::StripsOut:
    case Table::KitEnd:
    case Table::Notifiable:
    case Table::Keeper:
        return false;
    }
    return true;
}

namespace {

bool rangeMatters(const BulkDelete& range) {
    switch (range.table) {
    case Table::BoxKind:
    case Table::Kit:
    case Table::Person:
    case Table::FixedThing:
    case Table::MergeDay:
    case Table::MergeChoice:
    case Table::MergeStrip:
    case Table::DivideChoice:
    case Table::DivideStrip:
    case Table::Feeding:
    case Table::Queen:
    case Table::FileMapping:
    case Table::Phrase:
    case Table::Question:
    case Table::Sample:
    case Table::MiteFall:
    case Table::StripsOut:
    case Table::KitEnd:
    case Table::Notifiable:
    case Table::Keeper:
    case Table::Stand:
    case Table::Visit: // as for a single visit
        return false;
    default:
        return true;
    }
}

} // namespace

bool touchesRecord(const ChangeSet& change, bool placementsToo) {
    const auto matters = [&](const RowChange& row) { return rowMatters(row, placementsToo); };
    return std::any_of(change.rows.begin(), change.rows.end(), matters) ||
           std::any_of(change.gone.begin(), change.gone.end(), rangeMatters);
}

StandingHolds standingHolds(const Snapshot& s) {
    StandingHolds standing;
    for (const rules::Hold& hold : rules::holds(s)) {
        if (hold.kind == rules::HoldKind::BroodNotChecked) continue;
        const SnapColony& colony = s.colony(hold.colony);
        if (hold.sources.empty()) standing[{colony.id, hold.kind, {}}] = {colony.shown, {}};
        for (const ColonyIx source : hold.sources)
            standing[{colony.id, hold.kind, s.colony(source).id}] = {colony.shown, s.colony(source).shown};
    }
    return standing;
}

QStringList liftedHolds(const StandingHolds& before, const Snapshot& after, const std::set<ColonyId>& ended) {
    if (before.empty()) return {};
    const StandingHolds now = standingHolds(after);
    const auto stands = [&](const StandingHold& hold) {
        const auto other = now.lower_bound({hold.colony, hold.kind, {}});
        return other != now.end() && other->first.colony == hold.colony && other->first.kind == hold.kind;
    };
    QStringList lifted;
    for (const auto& [hold, names] : before) {
        if (now.contains(hold) || ended.contains(hold.colony)) continue;
        QString text = QStringLiteral("%1: %2").arg(names.first, rules::holdWord(hold.kind));
        if (stands(hold)) text = Edits::tr("%1 by %2").arg(text, names.second);
        if (!lifted.contains(text)) lifted << text;
    }
    return lifted;
}

QString correctionSentence(const QStringList& lifted, Day on) {
    return Edits::tr("Holds rest on this record. Without it these would be gone on %1: %2. Taking it back is a "
                     "correction of the record: give a reason and a name.")
        .arg(isoText(on), fewHolds(lifted));
}

QString beginningSentence(const QStringList& beginning, Day on) {
    return Edits::tr("Holds rest on this record. These begin with it on %1: %2. Taking it back is a correction of the "
                     "record: give a reason and a name.")
        .arg(isoText(on), fewHolds(beginning));
}

} // namespace core::edit
