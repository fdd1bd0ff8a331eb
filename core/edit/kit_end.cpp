#include "core/edit/kit_end.h"

#include "core/edit/edit_checks.h"
#include "core/edit/kit_lots.h"
#include "core/edit/row_change.h"
#include "core/model/kit_words.h"

#include <algorithm>

namespace core::edit {

namespace {

KitEnd needKitEnd(const EditContext& c, KitEndId id) {
    auto end = c.find<KitEnd>(id.value);
    if (!end) refuse(Edits::tr("That end of kit is no longer in the book."));
    return *std::move(end);
}

/// "the end of 2 × lid off 5 on 2026-09-10 (burned)".
QString endName(const EditContext& c, const KitEnd& e) {
    QString kit = kitText(e.count, e.part);
    if (e.colony) kit = Edits::tr("%1 off %2").arg(kit, shownName(c, needColony(c, *e.colony), e.day));
    return Edits::tr("the end of %1 on %2 (%3)").arg(kit, isoText(e.day), word(e.how));
}

/// Lots that can be what ended: those that lie where it lay first.
std::vector<Kit> endedLots(const EditContext& c, const KitEnd& e) {
    std::vector<Kit> lots;
    c.each<Kit>([&](const Kit& lot) {
        const bool ended = (lot.state == kit::kBurned || lot.state == kit::kSterilised) && endsAs(e.how, lot.state);
        if (ended && lot.part == e.part && lot.colony == e.colony) lots.push_back(lot);
    });
    std::stable_partition(lots.begin(), lots.end(), [&](const Kit& lot) { return lot.yard == e.yard; });
    return lots;
}

} // namespace

bool endsAs(KitEndHow how, const QString& state) {
    switch (how) {
    case KitEndHow::Burned:
        return state == kit::kBurned;
    case KitEndHow::Irradiated:
    case KitEndHow::Dipped:
        return state == kit::kSterilised;
    case KitEndHow::Other:
        break;
    }
    return state == kit::kBurned || state == kit::kSterilised;
}

KitEnd checkedKitEnd(const EditContext& c, const KitEnd& typed, const QString& state) {
    KitEnd e = typed;
    e.by = typed.by.trimmed();
    e.paper = typed.paper.trimmed();
    e.note = typed.note.trimmed();
    if (e.colony) needColony(c, *e.colony);
    if (!endsAs(e.how, state)) refuse(Edits::tr("How: what is %1 does not become “%2”.").arg(word(e.how), state));
    if (e.by.isEmpty()) refuse(Edits::tr("By: expected who did it or saw to it, found nothing."));
    if (e.how == KitEndHow::Other && e.note.isEmpty())
        refuse(Edits::tr("Note: expected how it was done where that is none of the known ways, found nothing."));
    return e;
}

ChangeSet changeKitEnd(const EditContext& c, const KitEnd& typed) {
    const KitEnd old = needKitEnd(c, typed.id);
    KitEnd now = old;
    now.day = typed.day;
    now.how = typed.how;
    now.by = typed.by;
    now.paper = typed.paper;
    now.note = typed.note;
    const auto lots = old.how == KitEndHow::Other ? endedLots(c, old) : std::vector<Kit>{};
    const QString was = old.how != KitEndHow::Other ? (old.how == KitEndHow::Burned ? kit::kBurned : kit::kSterilised)
                                                    : (lots.empty() ? kit::kSterilised : lots.front().state);
    now = checkedKitEnd(c, now, was);
    if (now == old) return {};
    return {Edits::tr("Changed %1").arg(endName(c, old)), {changed(old, now)}, {}, {}, {}};
}

ChangeSet takeBackKitEnd(const EditContext& c, KitEndId id) {
    const KitEnd end = needKitEnd(c, id);
    const QString text = Edits::tr("Took back %1").arg(endName(c, end));
    ChangeSet change;
    change.rows.push_back(deleted(end));
    int left = end.count;
    std::vector<Kit> fresh;
    for (const KitPiece& piece : firstOf(endedLots(c, end), end.count)) {
        left -= piece.count;
        Kit again = piece.lot;
        again.state = kit::kQuarantined;
        again.count = piece.count;
        if (piece.count == piece.lot.count) {
            change.rows.push_back(changed(piece.lot, again));
            continue;
        }
        takeAway(piece, change);
        fresh.push_back(again);
    }
    if (left > 0)
        refuse(Edits::tr("Only %1 of the %2 are in the book as it ended; put the count of kit right first.")
                   .arg(end.count - left)
                   .arg(kitText(end.count, end.part)));
    qint64 next = c.nextId(Table::Kit);
    for (Kit& lot : fresh) {
        lot.id = next++;
        change.rows.push_back(added(lot));
    }
    change.text = Edits::tr("%1; it is quarantined again").arg(text);
    return change;
}

} // namespace core::edit
