#include "core/base/natural_order.h"
#include "core/exchange/ledger.h"

namespace core::exchange {

namespace {

void readPlaces(Ledger& ledger) {
    ledger.c.each<Yard>([&](const Yard& row) {
        const int position = static_cast<int>(ledger.yards.size());
        ledger.yardByKey.insert(folded(row.name), position);
        ledger.yardById.insert(row.id.value, position);
        ledger.yards.push_back({{}, row});
    });
    ledger.c.each<BoxKind>([&](const BoxKind& row) {
        const int position = static_cast<int>(ledger.boxes.size());
        ledger.boxByKey.insert(folded(row.name), position);
        ledger.boxById.insert(row.id.value, position);
        ledger.boxes.push_back({{}, row});
    });
    ledger.c.each<Stand>([&](const Stand& row) {
        const int position = static_cast<int>(ledger.stands.size());
        const int yard = ledger.yardById.value(row.yard.value);
        ledger.standByKey.insert({yard, folded(row.name)}, position);
        ledger.standById.insert(row.id.value, position);
        ledger.stands.push_back({{}, row, yard});
    });
}

void readColonies(Ledger& ledger) {
    ledger.c.each<Colony>([&](const Colony& row) {
        ColonyEntry entry;
        entry.row = row;
        entry.stored = row;
        entry.label = ledger.drafts.names.intern(row.label);
        entry.box = ledger.boxById.value(row.box.value);
        ledger.colonyById.insert(row.id.value, ledger.addColony(std::move(entry)));
    });
    ledger.c.each<Placement>([&](const Placement& row) {
        StayEntry entry;
        entry.colony = ledger.colonyById.value(row.colony.value);
        entry.stand = ledger.standById.value(row.stand.value);
        entry.row = row;
        entry.until = row.until;
        ledger.addStay(std::move(entry));
    });
}

} // namespace

void readBook(Ledger& ledger) {
    readPlaces(ledger);
    readColonies(ledger);
    ledger.c.each<Lineage>([&](const Lineage& row) {
        const LineageEntry entry{
            {}, row, ledger.colonyById.value(row.colony.value), ledger.colonyById.value(row.into.value)};
        if (row.how != LineageHow::Divided)
            ledger.colonies[static_cast<size_t>(entry.colony)].endLineage = static_cast<int>(ledger.lineage.size());
        ledger.lineage.push_back(entry);
    });
}

} // namespace core::exchange
