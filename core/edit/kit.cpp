#include "core/edit/kit.h"

#include "core/base/natural_order.h"
#include "core/edit/change_fields.h"
#include "core/edit/edit_checks.h"
#include "core/edit/kit_lots.h"
#include "core/edit/row_change.h"
#include "core/model/kit_words.h"
#include "core/rules/yard_moves.h"

#include <algorithm>

namespace core::edit {

namespace {

constexpr int kMost = 1'000'000;

/// As the book spells it already.
QString knownPart(const EditContext& c, const QString& typed) {
    const QString part = checkedName(typed, Edits::tr("Kind of kit"));
    QStringList known = kit::commonParts();
    for (const BoxKind& kind : c.boxKinds()) known << kind.name;
    c.each<Kit>([&](const Kit& lot) { known << lot.part; });
    for (const QString& name : known)
        if (folded(name) == folded(part)) return name;
    return part;
}

/// A place as it can be: state, part and yard are of the book, and a colony is named just where it is kept.
KitPlace checkedPlace(const EditContext& c, const KitPlace& typed) {
    KitPlace place = typed;
    place.part = knownPart(c, typed.part);
    if (!kit::states().contains(place.state)) refuse(Edits::tr("Kit is not “%1”.").arg(place.state));
    if (place.yard) needYard(c, *place.yard);
    if (place.colony) needColony(c, *place.colony);
    if (!kit::keepsColony(place.state)) place.colony.reset();
    if (place.state == kit::kQuarantined && !place.colony)
        refuse(Edits::tr("Kit in quarantine names the colony that it came off."));
    return place;
}

QString pileText(const EditContext& c, const KitPlace& place) {
    const QString text = Edits::tr("%1, %2, in %3").arg(place.part, wordText(place.state), kitPlaceText(c, place.yard));
    if (!place.colony) return text;
    return Edits::tr("%1, off %2").arg(text, shownName(c, needColony(c, *place.colony), c.today()));
}

/// Lowering what is kept apart is asked for a reason and a name, where its rows do not say themselves what it is.
void askWhereKeptApart(const EditContext& c, const KitPlace& pile, ChangeSet& change) {
    if (pile.state != kit::kQuarantined) return;
    const QString sentence =
        Edits::tr("%1: kit that is kept apart would be gone from the book without being burned or sterilised. That "
                  "is a correction of the record: give a reason and a name.")
            .arg(pileText(c, pile));
    change.against = [sentence](const EditContext&) { return sentence; };
}

Kit freshLot(const KitPlace& place, int count) { return {0, place.yard, place.part, place.state, place.colony, count}; }

/// Gives ids to the new rows.
void giveIds(const EditContext& c, std::vector<Kit> lots, ChangeSet& change) {
    qint64 next = c.nextId(Table::Kit);
    for (Kit& lot : lots) {
        lot.id = next++;
        change.rows.push_back(added(lot));
    }
}

} // namespace

ChangeSet countKit(const EditContext& c, const KitPlace& typed, int count) {
    const KitPlace pile = checkedPlace(c, typed);
    checkRange(count, 0, kMost, Edits::tr("How many"));
    const KitLots lots = kitLots(c, pile.yard, pile.part, pile.colony);
    const auto there = lots.of(pile);
    const int was = lots.countOf(pile);
    if (!there.empty() && was == count) return {};
    ChangeSet change;
    for (const KitPiece& piece : firstOf(there, was - count)) takeAway(piece, change);
    const bool none = count == 0 && !kit::keepsColony(pile.state);
    if (count > was || (none && (there.empty() || was > 0)))
        giveIds(c, {freshLot(pile, count - std::min(was, count))}, change);
    if (count < was) askWhereKeptApart(c, pile, change);
    const QString counted = QString::number(count);
    change.text = there.empty()
                      ? Edits::tr("Counted kit: %1: %2").arg(pileText(c, pile), counted)
                      : Edits::tr("Counted kit: %1: %2 (was %3)").arg(pileText(c, pile), counted, QString::number(was));
    return change;
}

namespace {

void refuseHeldKit(const EditContext& c, const KitLots& lots, const KitMove& move) {
    if (move.from.state != kit::kQuarantined) return;
    const auto hold = lots.held.find(*move.from.colony);
    if (hold == lots.held.end()) return;
    const bool stays = kit::keepsColony(move.toState);
    const bool order = hold->second.kind == rules::HoldKind::Order;
    const bool away = move.toYard != move.from.yard && (move.toYard || order);
    if (stays && !away) return;
    const QString sentence =
        stays ? Edits::tr("Kit off %1 stays where it is kept apart: %1 is held (%2). %3")
              : Edits::tr("Kit off %1 leaves quarantine only burned or sterilised: %1 is held (%2). %3");
    throw Error(Error::Kind::Hold, sentence.arg(shownName(c, needColony(c, *move.from.colony), c.today()),
                                                rules::holdWord(hold->second.kind), hold->second.because));
}

/// What stands against carrying kit out of the yard: empty, or one sentence.
QString againstLeaving(const EditContext& c, YardId yard) {
    const Snapshot s = c.snapshot(c.today());
    for (const rules::Hold& hold : rules::holds(s)) {
        const SnapStay* place = s.placeOf(hold.colony);
        if (!rules::keepsYards(hold.kind) || !place || s.yard(place->yard).id != yard) continue;
        return Edits::tr("%1 is held in %2 (%3): kit stays there too, unless an inspector allows it. Carried away all "
                         "the same, it is written with a reason and a name.")
            .arg(s.colony(hold.colony).shown, s.yard(place->yard).name, rules::holdWord(hold.kind));
    }
    return {};
}

/// The place that it comes to.
KitPlace placeTo(const EditContext& c, const KitMove& move, const KitPlace& from) {
    KitPlace to{move.toYard, from.part, move.toState, move.colony ? move.colony : from.colony};
    if (from.colony && to.colony != from.colony)
        refuse(Edits::tr("Kit that is kept apart keeps the colony that it came off."));
    return checkedPlace(c, to);
}

QString moveText(const EditContext& c, const KitPlace& from, const KitPlace& to, int count) {
    const QString kit = kitText(count, from.part);
    QString text;
    if (from.yard == to.yard)
        text = Edits::tr("Kit in %1: %2, %3, is now %4")
                   .arg(kitPlaceText(c, from.yard), kit, wordText(from.state), wordText(to.state));
    else
        text = from.state == to.state
                   ? Edits::tr("Kit carried: %1, %2, from %3 to %4")
                         .arg(kit, wordText(from.state), kitPlaceText(c, from.yard), kitPlaceText(c, to.yard))
                   : Edits::tr("Kit carried: %1, %2, from %3 to %4, where it is %5")
                         .arg(kit, wordText(from.state), kitPlaceText(c, from.yard), kitPlaceText(c, to.yard),
                              wordText(to.state));
    const auto colony = to.colony ? to.colony : from.colony;
    return colony ? Edits::tr("%1 (off %2)").arg(text, shownName(c, needColony(c, *colony), c.today())) : text;
}

/// Adds to the change, and to what it says: how quarantined kit ended.
void addEnd(const EditContext& c, const KitPlace& from, const KitMove& move, ChangeSet& change) {
    const bool ends =
        from.state == kit::kQuarantined && (move.toState == kit::kBurned || move.toState == kit::kSterilised);
    if (!ends) return;
    if (!move.end)
        refuse(Edits::tr("Kit that is kept apart is written as %1 with how that was done, when and by whom.")
                   .arg(wordText(move.toState)));
    const KitEnding& said = *move.end;
    const KitEnd end = checkedKitEnd(c,
                                     {KitEndId{c.nextId(Table::KitEnd)}, said.day, from.yard, from.part, from.colony,
                                      move.count, said.how, said.by, said.paper, said.note},
                                     move.toState);
    change.rows.push_back(added(end));
    const QString how = end.how == KitEndHow::Other ? end.note : word(end.how);
    change.text = Edits::tr("%1: %2 on %3 by %4").arg(change.text, how, isoText(end.day), end.by);
}

/// The pieces at their new place: a whole lot goes as it is, of another a new lot is made.
void bring(const EditContext& c, const std::vector<KitPiece>& pieces, const KitPlace& to, ChangeSet& change) {
    std::vector<Kit> fresh;
    for (const KitPiece& piece : pieces) {
        Kit now = piece.lot;
        now.yard = to.yard;
        now.state = to.state;
        if (to.colony) now.colony = to.colony;
        now.count = piece.count;
        if (piece.count == piece.lot.count) {
            change.rows.push_back(changed(piece.lot, now));
            continue;
        }
        takeAway(piece, change);
        fresh.push_back(now);
    }
    giveIds(c, std::move(fresh), change);
}

} // namespace

ChangeSet moveKit(const EditContext& c, const KitMove& move) {
    const KitPlace from = checkedPlace(c, move.from);
    const KitPlace to = placeTo(c, move, from);
    checkRange(move.count, 1, kMost, Edits::tr("How many"));
    if (from == to) refuse(Edits::tr("It is there already."));
    if (from.state == kit::kBurned)
        refuse(Edits::tr("What is burned is gone; where that was a slip, put the count right."));
    const KitLots lots = kitLots(c, from.yard, from.part, from.colony);
    if (lots.countOf(from) < move.count)
        refuse(Edits::tr("There are only %1: %2.").arg(QString::number(lots.countOf(from)), pileText(c, from)));
    KitMove asked = move;
    asked.from = from;
    refuseHeldKit(c, lots, asked);
    ChangeSet change;
    bring(c, firstOf(lots.of(from), move.count), to, change);
    if (from.state == kit::kQuarantined && !kit::keepsColony(to.state)) askWhereKeptApart(c, from, change);
    const auto leaves = from.yard;
    if (leaves && to.yard != leaves && !change.against)
        change.against = [leaves](const EditContext& book) { return againstLeaving(book, *leaves); };
    change.text = moveText(c, from, to, move.count);
    addEnd(c, from, asked, change);
    return change;
}

ChangeSet takeBackKit(const EditContext& c, const KitPlace& typed) {
    const KitPlace pile = checkedPlace(c, typed);
    const KitLots lots = kitLots(c, pile.yard, pile.part, pile.colony);
    ChangeSet change;
    for (const Kit& lot : lots.of(pile)) change.rows.push_back(deleted(lot));
    if (change.empty()) refuse(Edits::tr("None of it is in the book."));
    askWhereKeptApart(c, pile, change);
    change.text = Edits::tr("Took back the count of kit: %1").arg(pileText(c, pile));
    return change;
}

} // namespace core::edit
