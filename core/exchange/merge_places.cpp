#include "core/base/natural_order.h"
#include "core/exchange/cell_text.h"
#include "core/exchange/same_as_book.h"

namespace core::exchange {

namespace {

QString text(qint32 mm) { return metresText(Millimetres{mm}); }

bool sameYard(Ledger& ledger, const YardDraft& draft, const Yard& stored) {
    const Yard& row = draft.row;
    return sameAsBook(ledger, draft.at, row.name,
                      {{"latitude_deg", cellText(row.latitudeDeg), cellText(stored.latitudeDeg)},
                       {"longitude_deg", cellText(row.longitudeDeg), cellText(stored.longitudeDeg)},
                       {"gate_x_m", text(row.gate().x), text(stored.gate().x)},
                       {"gate_y_m", text(row.gate().y), text(stored.gate().y)},
                       {"note", row.note, stored.note}});
}

/// A size that the file leaves blank says nothing: the shipped kinds have sizes that a notebook need not know.
bool sameBox(Ledger& ledger, const BoxKindDraft& draft, const BoxKind& stored) {
    BoxKind row = draft.row;
    if (!row.widthMm) row.widthMm = stored.widthMm;
    if (!row.lengthMm) row.lengthMm = stored.lengthMm;
    if (!row.heightMm) row.heightMm = stored.heightMm;
    if (!row.tare) row.tare = stored.tare;
    return sameAsBook(ledger, draft.at, row.name,
                      {{"frames", QString::number(row.frames), QString::number(stored.frames)},
                       {"width_mm", cellText(row.widthMm), cellText(stored.widthMm)},
                       {"length_mm", cellText(row.lengthMm), cellText(stored.lengthMm)},
                       {"height_mm", cellText(row.heightMm), cellText(stored.heightMm)},
                       {"tare_kg", cellText(row.tare), cellText(stored.tare)}});
}

} // namespace

void mergeYards(Ledger& ledger) {
    for (const YardDraft& draft : ledger.drafts.yards) {
        const QString key = folded(draft.row.name);
        const int found = ledger.yardByKey.value(key, -1);
        if (found < 0) {
            ledger.yardByKey.insert(key, static_cast<int>(ledger.yards.size()));
            ledger.yards.push_back({draft.at, draft.row});
            ++ledger.count(FileKind::Yards).added;
            continue;
        }
        const YardEntry& entry = ledger.yards[static_cast<size_t>(found)];
        if (!entry.at.inBook())
            faultTwice(ledger, draft.at, "yard", draft.row.name, entry.at);
        else if (sameYard(ledger, draft, entry.row))
            ++ledger.count(FileKind::Yards).passedOver;
    }
}

void mergeBoxKinds(Ledger& ledger) {
    for (const BoxKindDraft& draft : ledger.drafts.boxKinds) {
        const QString key = folded(draft.row.name);
        const int found = ledger.boxByKey.value(key, -1);
        if (found < 0) {
            ledger.boxByKey.insert(key, static_cast<int>(ledger.boxes.size()));
            ledger.boxes.push_back({draft.at, draft.row});
            ++ledger.count(FileKind::BoxKinds).added;
            continue;
        }
        const BoxEntry& entry = ledger.boxes[static_cast<size_t>(found)];
        if (!entry.at.inBook())
            faultTwice(ledger, draft.at, "box", draft.row.name, entry.at);
        else if (sameBox(ledger, draft, entry.row))
            ++ledger.count(FileKind::BoxKinds).passedOver;
    }
}

} // namespace core::exchange
