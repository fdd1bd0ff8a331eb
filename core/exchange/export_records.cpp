#include "core/exchange/cell_text.h"
#include "core/exchange/export_rows.h"
#include "core/exchange/row_key.h"

#include <algorithm>
#include <tuple>

namespace core::exchange {

namespace {

/// All rows of a table by day, then the rank of who they are about, then what they say: the same whatever their ids.
template <class T, class Rank> std::vector<T> sortedRows(const edit::EditContext& c, Rank rank) {
    struct Keyed {
        std::tuple<Day, int, int> when;
        QString says;
        T row;
    };
    std::vector<Keyed> keyed;
    c.each<T>([&](const T& row) {
        const auto [first, second] = rank(row);
        keyed.push_back({{row.day, first, second}, rowKey(toRow(row)), row});
    });
    std::ranges::sort(keyed, {}, [](const Keyed& k) { return std::tie(k.when, k.says); });
    std::vector<T> rows;
    rows.reserve(keyed.size());
    for (Keyed& k : keyed) rows.push_back(std::move(k.row));
    return rows;
}

QStringList visitCells(const ExportNames& names, const Visit& v) {
    return {names.colony(v.colony, v.day),
            isoText(v.day),
            cellText(v.boxes),
            cellText(v.beesTop),
            cellText(v.beesBottom),
            cellText(v.upperBeesTop),
            cellText(v.upperBeesBottom),
            cellText(v.stores),
            cellText(v.upperStores),
            cellText(v.queen),
            cellText(v.broodFrames),
            cellText(v.broodChecked),
            cellText(v.signs),
            cellText(v.supers),
            cellText(v.gross),
            cellText(v.mites),
            cellText(v.miteSample),
            nameText(v.by),
            noteText(v.note)};
}

QStringList treatmentCells(const ExportNames& names, const Treatment& t) {
    return {names.colony(t.colony, t.day),
            names.yard(t.yard),
            isoText(t.day),
            nameText(t.product),
            nameText(t.substance),
            t.antibiotic ? QStringLiteral("yes") : QStringLiteral("no"),
            nameText(t.batch),
            cellText(t.quantity),
            nameText(t.unit),
            nameText(t.method),
            nameText(t.supplier),
            nameText(t.supplierAddress),
            cellText(t.bought),
            cellText(t.quantityBought),
            nameText(t.proof),
            nameText(t.prescriber),
            nameText(t.prescriberContact),
            cellText(t.days),
            cellText(t.withdrawalDays),
            cellText(t.disposed),
            cellText(t.disposedQuantity),
            nameText(t.disposedHow),
            nameText(t.by),
            nameText(t.reason)};
}

} // namespace

void exportVisits(const edit::EditContext& c, const ExportNames& names, CsvWriter& out) {
    for (const Colony& colony : names.colonies()) {
        std::vector<Visit> visits = c.visitsOf(colony.id, -1);
        std::ranges::sort(visits, {}, &Visit::day);
        for (const Visit& visit : visits) out.row(visitCells(names, visit));
    }
}

void exportTransfers(const edit::EditContext& c, const ExportNames& names, CsvWriter& out) {
    const auto rank = [&](const Transfer& t) { return std::pair(names.rank(t.from), names.rank(t.to)); };
    for (const Transfer& t : sortedRows<Transfer>(c, rank))
        out.row({isoText(t.day), names.colony(t.from, t.day), names.colony(t.to, t.day), word(t.what),
                 cellText(t.count), noteText(t.note)});
}

void exportLineage(const edit::EditContext& c, const ExportNames& names, CsvWriter& out) {
    const auto rank = [&](const Lineage& l) { return std::pair(names.rank(l.colony), names.rank(l.into)); };
    for (const Lineage& l : sortedRows<Lineage>(c, rank))
        out.row({isoText(l.day), word(l.how), names.colony(l.colony, l.day), names.colony(l.into, l.day),
                 nameText(l.by), noteText(l.note)});
}

void exportResults(const edit::EditContext& c, const ExportNames& names, CsvWriter& out) {
    const auto rank = [&](const Result& r) { return std::pair(names.rank(r.colony), names.rank(r.yard)); };
    for (const Result& r : sortedRows<Result>(c, rank))
        out.row({names.colony(r.colony, r.day), names.yard(r.yard), isoText(r.day), word(r.disease), word(r.verdict),
                 word(r.method), nameText(r.by), nameText(r.paper), noteText(r.note)});
}

void exportTreatments(const edit::EditContext& c, const ExportNames& names, CsvWriter& out) {
    const auto rank = [&](const Treatment& t) { return std::pair(names.rank(t.colony), names.rank(t.yard)); };
    for (const Treatment& t : sortedRows<Treatment>(c, rank)) out.row(treatmentCells(names, t));
}

} // namespace core::exchange
