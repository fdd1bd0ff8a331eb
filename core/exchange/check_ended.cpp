#include "core/exchange/ledger.h"

#include <set>

namespace core::exchange {

namespace {

/// Faults, once a colony, the row that ends it where the book has a record of `day` after that.
class EndedNow {
public:
    explicit EndedNow(Ledger& ledger) : m_ledger(ledger) {}

    void needs(ColonyId id, Day day, const QString& what) {
        const int colony = m_ledger.colonyById.value(id.value, -1);
        if (colony < 0 || m_told.contains(colony)) return;
        const ColonyEntry& entry = m_ledger.colonies[static_cast<size_t>(colony)];
        if (!entry.endedNow() || day <= *entry.row.ended) return;
        m_told.insert(colony);
        m_ledger.fault(entry.endAt, entry.endColumn,
                       Say::tr("“%1” would end on %2, but the book has %3 of %4, expected that day or later")
                           .arg(m_ledger.shown(colony), isoText(*entry.row.ended), what, isoText(day)));
    }

private:
    Ledger& m_ledger;
    std::set<int> m_told;
};

} // namespace

void checkEndedNow(Ledger& ledger) {
    if (std::ranges::none_of(ledger.colonies, &ColonyEntry::endedNow)) return;
    EndedNow ended(ledger);
    ledger.c.eachVisitKey([&](VisitId, ColonyId colony, Day day) { ended.needs(colony, day, Say::tr("a visit")); });
    ledger.c.each<Transfer>([&](const Transfer& row) {
        const bool gone = row.what == TransferKind::Brood || row.what == TransferKind::Bees;
        if (gone) ended.needs(row.from, row.day, Say::tr("a transfer"));
        ended.needs(row.to, row.day, Say::tr("a transfer"));
    });
    ledger.c.each<Feeding>([&](const Feeding& row) { ended.needs(row.colony, row.day, Say::tr("a feeding")); });
    ledger.c.each<MiteFall>(
        [&](const MiteFall& row) { ended.needs(row.colony, row.day, Say::tr("a count of fallen mites")); });
    ledger.c.each<Queen>(
        [&](const Queen& row) { ended.needs(row.colony, row.until.value_or(row.since), Say::tr("a queen")); });
    ledger.c.each<Treatment>([&](const Treatment& row) {
        if (row.colony) ended.needs(*row.colony, row.day, Say::tr("a treatment"));
    });
}

} // namespace core::exchange
