#include "core/exchange/ledger.h"

#include "core/base/natural_order.h"

#include <QFileInfo>

#include <algorithm>

namespace core::exchange {

void Ledger::fault(Origin at, const char* column, const QString& what) {
    const QString file = at.file < 0 ? QString() : drafts.files[static_cast<size_t>(at.file)];
    report.faults.add({file, at.line, drafts.shownColumn(at.file, QString::fromLatin1(column)), what});
}

int Ledger::yardNamed(const QString& name, Origin at) {
    const int found = yardByKey.value(folded(name), -1);
    if (found < 0)
        fault(at, "yard", Say::tr("“%1” is no yard of the book or of these files, expected one of them").arg(name));
    return found;
}

int Ledger::boxNamed(const QString& name, Origin at) {
    const int found = boxByKey.value(folded(name), -1);
    if (found < 0)
        fault(at, "box", Say::tr("“%1” is no box kind of the book or of these files, expected one of them").arg(name));
    return found;
}

int Ledger::colonyNamed(const ColonyRef& ref, Day day, Origin at, const char* column) {
    const QString& label = drafts.names.shown(ref.label);
    const auto index = static_cast<size_t>(ref.label.value);
    if (index >= byLabel.size() || byLabel[index].empty()) {
        fault(at, column, Say::tr("“%1” is no colony of the book or of these files, expected one of them").arg(label));
        return -1;
    }
    const std::vector<int>& bearers = byLabel[index];
    const auto since = [&](int i) { return colonies[static_cast<size_t>(i)].row.since; };
    if (ref.since) {
        for (const int i : bearers)
            if (since(i) == *ref.since) return i;
        fault(at, column,
              Say::tr("no colony “%1” begins on %2, expected LABEL@SINCE of one that does")
                  .arg(label, isoText(*ref.since)));
        return -1;
    }
    const auto after = std::ranges::upper_bound(bearers, day, {}, since);
    if (after != bearers.begin()) return *std::prev(after);
    fault(at, "date",
          Say::tr("%1 lies before the first “since” of “%2” (%3), expected that day or later")
              .arg(isoText(day), label, isoText(since(bearers.front()))));
    return -1;
}

int Ledger::standFor(int yard, const PlaceDraft& place, Origin at) {
    const std::pair<int, QString> key(yard, folded(place.stand));
    const int found = standByKey.value(key, -1);
    if (found < 0) {
        StandEntry entry{at, {}, yard};
        entry.row.name = place.stand;
        entry.row.at = place.point;
        stands.push_back(entry);
        standByKey.insert(key, static_cast<int>(stands.size()) - 1);
        return static_cast<int>(stands.size()) - 1;
    }
    const StandEntry& stand = stands[static_cast<size_t>(found)];
    if (stand.row.at == place.point) return found;
    const bool east = stand.row.at.x != place.point.x;
    const auto text = [](qint32 mm) { return metresText(Millimetres{mm}); };
    fault(at, east ? "x_m" : "y_m",
          Say::tr("stand “%1” has two positions: %2, %3 here and %4, %5 in %6, expected one")
              .arg(place.stand, text(place.point.x), text(place.point.y), text(stand.row.at.x), text(stand.row.at.y),
                   this->place(stand.at)));
    return -1;
}

int Ledger::addColony(ColonyEntry entry) {
    const auto label = static_cast<size_t>(entry.label.value);
    if (byLabel.size() <= label) byLabel.resize(label + 1);
    const int position = static_cast<int>(colonies.size());
    auto& bearers = byLabel[label];
    const auto since = [&](int i) { return colonies[static_cast<size_t>(i)].row.since; };
    bearers.insert(std::ranges::upper_bound(bearers, entry.row.since, {}, since), position);
    colonies.push_back(std::move(entry));
    return position;
}

int Ledger::addStay(StayEntry entry) {
    const int position = static_cast<int>(stays.size());
    colonies[static_cast<size_t>(entry.colony)].stays.push_back(position);
    stays.push_back(std::move(entry));
    return position;
}

bool Ledger::checkLife(int colony, Day day, Origin at, const char* column) {
    const ColonyEntry& entry = colonies[static_cast<size_t>(colony)];
    if (day >= entry.row.since && (!entry.row.ended || day <= *entry.row.ended)) return true;
    fault(at, column,
          Say::tr("%1 lies outside the life of “%2”, expected a day in %3")
              .arg(isoText(day), shown(colony), lifeOf(colony)));
    return false;
}

QString Ledger::shown(int colony) const {
    const ColonyEntry& entry = colonies[static_cast<size_t>(colony)];
    if (byLabel[static_cast<size_t>(entry.label.value)].size() < 2) return entry.row.label;
    return entry.row.label + u'@' + isoText(entry.row.since);
}

QString Ledger::lifeOf(int colony) const {
    const Colony& row = colonies[static_cast<size_t>(colony)].row;
    return row.ended ? Say::tr("%1 to %2").arg(isoText(row.since), isoText(*row.ended))
                     : Say::tr("%1 and later").arg(isoText(row.since));
}

QString Ledger::place(Origin at) const {
    if (at.inBook()) return Say::tr("the book");
    const QString file = QFileInfo(drafts.files[static_cast<size_t>(at.file)]).fileName();
    return Say::tr("line %1 of %2").arg(at.line).arg(file);
}

namespace {

qint64 draftsOf(const Drafts& d) {
    return static_cast<qint64>(d.colonies.size() + d.placements.size() + d.visits.size() + d.transfers.size() +
                               d.results.size() + d.treatments.size() + d.lineage.size() + d.feedings.size() +
                               d.miteFalls.size() + d.queens.size());
}

} // namespace

void reconcile(Ledger& ledger) {
    ledger.ticker =
        Ticker(ledger.progress.part(kRead, kChecked, Say::tr("Checking the rows")), 2 * draftsOf(ledger.drafts));
    readBook(ledger);
    mergeBoxKinds(ledger);
    mergeYards(ledger);
    mergeColonies(ledger);
    mergeLineage(ledger);
    checkLabels(ledger);
    checkLineage(ledger);
    mergePlacements(ledger);
    settleStays(ledger);
    checkStands(ledger);
    mergeVisits(ledger);
    mergeTransfers(ledger);
    mergeResults(ledger);
    mergeTreatments(ledger);
    mergeFeedings(ledger);
    mergeMiteFalls(ledger);
    mergeQueens(ledger);
    mergeKeepers(ledger);
    mergeNotifiables(ledger);
    mergeSamples(ledger);
    mergeKitEnds(ledger);
    mergeStripsOut(ledger);
    mergeSettings(ledger);
    checkEndedNow(ledger);
}

} // namespace core::exchange
