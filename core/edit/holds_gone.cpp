#include "core/edit/holds_gone.h"

#include "core/edit/edit_checks.h"
#include "core/rules/hold.h"
#include "core/store/reads.h"
#include "core/store/snapshot_reader.h"

#include <algorithm>
#include <map>
#include <set>
#include <utility>

namespace core::edit {

namespace {

struct ToldHold {
    QString colony;
    QString told;
};
using ToldHolds = std::map<std::pair<ColonyId, rules::HoldKind>, ToldHold>;

ToldHolds toldHolds(const store::Database& db, Day on) {
    const Snapshot s = store::readSnapshot(db, on);
    ToldHolds all;
    for (const rules::Hold& hold : rules::holds(s)) {
        if (hold.kind == rules::HoldKind::BroodNotChecked) continue;
        const SnapColony& colony = s.colony(hold.colony);
        all[{colony.id, hold.kind}] = {colony.shown, hold.told};
    }
    return all;
}

} // namespace

QStringList holdsGone(const store::Database& here, const store::Database& there, bool sameIds, Day today) {
    QStringList gone;
    for (const Day day : std::set<Day>{today, std::max(today, store::lastDay(here).value_or(today))}) {
        const ToldHolds now = toldHolds(here, day);
        if (now.empty()) continue;
        const ToldHolds then = toldHolds(there, day);
        for (const auto& [key, hold] : now) {
            const auto at = then.find(key);
            const bool stands = at != then.end() && (sameIds || at->second.colony == hold.colony);
            if (stands && at->second.told == hold.told) continue;
            QString text = QStringLiteral("%1: %2").arg(hold.colony, rules::holdWord(key.second));
            if (stands) text = Edits::tr("%1 (some of what it rests on)").arg(text);
            if (!gone.contains(text)) gone << text;
        }
    }
    return gone;
}

QString fewHolds(const QStringList& holds, qsizetype most) {
    const QString names = holds.mid(0, most).join(QStringLiteral(", "));
    return holds.size() > most ? Edits::tr("%1 and %2 more").arg(names, QString::number(holds.size() - most)) : names;
}

} // namespace core::edit
