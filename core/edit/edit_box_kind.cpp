#include "core/edit/edit_checks.h"
#include "core/edit/put_right.h"
#include "core/edit/row_change.h"

namespace core::edit {

namespace {

/// The first kinds come with every book, so that a name means one box everywhere.
constexpr BoxKindId kLastShipped{5};
constexpr int kMostFrames = 24;
constexpr int kLongestMm = 2000;
constexpr int kHeaviestDag = 10'000;

BoxKind needOwnKind(const EditContext& c, BoxKindId id) {
    auto kind = c.boxKind(id);
    if (!kind) refuse(Edits::tr("That box kind is no longer in the book."));
    if (id <= kLastShipped)
        refuse(Edits::tr("%1 comes with every book and stays as it is; add a kind of your own.").arg(kind->name));
    return *std::move(kind);
}

/// What is typed of a box kind, new or not; its id is set.
BoxKind checkedKind(const EditContext& c, const BoxKind& typed) {
    BoxKind kind = typed;
    kind.name = checkedName(typed.name, Edits::tr("Box kind"));
    if (const auto other = c.boxKindNamed(kind.name); other && other->id != kind.id)
        refuse(Edits::tr("There is a box kind %1 already.").arg(other->name));
    checkRange(kind.frames, 1, kMostFrames, Edits::tr("Frames"));
    checkRange(kind.widthMm, 1, kLongestMm, Edits::tr("Width in millimetres"));
    checkRange(kind.lengthMm, 1, kLongestMm, Edits::tr("Length in millimetres"));
    checkRange(kind.heightMm, 1, kLongestMm, Edits::tr("Height in millimetres"));
    if (kind.tare && (kind.tare->value < 0 || kind.tare->value > kHeaviestDag))
        refuse(Edits::tr("Weight of the empty box: %1 kg is not from 0 to 100 kg.").arg(kilogramsText(*kind.tare)));
    return kind;
}

void needCountsFit(const EditContext& c, const BoxKind& now) {
    const auto above = c.visitAbove(now.id, now.frames);
    const auto visit = above ? c.visit(*above) : std::nullopt;
    if (visit)
        refuse(Edits::tr("Frames: the visit of %1 on %2 counts more than %3 in such a box.")
                   .arg(shownName(c, needColony(c, visit->colony), visit->day), isoText(visit->day),
                        QString::number(now.frames)));
}

/// Boxes that are counted as kit go by the name of their kind.
void renameKit(const EditContext& c, const QString& from, const QString& to, ChangeSet& change) {
    c.each<Kit>([&](const Kit& lot) {
        if (lot.part != from) return;
        Kit now = lot;
        now.part = to;
        change.rows.push_back(changed(lot, now));
    });
}

} // namespace

ChangeSet newBoxKind(const EditContext& c, const BoxKind& typed) {
    BoxKind fresh = typed;
    fresh.id = BoxKindId{c.nextId(Table::BoxKind)};
    const BoxKind kind = checkedKind(c, fresh);
    return {Edits::tr("Added box kind %1").arg(kind.name), {added(kind)}, {}, {}, {}};
}

ChangeSet changeBoxKind(const EditContext& c, const BoxKind& typed) {
    const BoxKind old = needOwnKind(c, typed.id);
    const BoxKind now = checkedKind(c, typed);
    if (now == old) return {};
    if (now.frames < old.frames) needCountsFit(c, now);
    ChangeSet change{Edits::tr("Changed box kind %1").arg(old.name), {changed(old, now)}, {}, {}, {}};
    if (now.name != old.name) renameKit(c, old.name, now.name, change);
    return change;
}

ChangeSet takeBackBoxKind(const EditContext& c, BoxKindId id) {
    const BoxKind kind = needOwnKind(c, id);
    for (const Colony& colony : c.coloniesIn(id))
        refuse(Edits::tr("%1 is in boxes of %2; only a kind that no colony is in is taken back.")
                   .arg(shownName(c, colony, colony.since), kind.name));
    c.each<Kit>([&](const Kit& lot) {
        if (lot.part == kind.name) refuse(Edits::tr("Boxes of %1 are counted as kit.").arg(kind.name));
    });
    return {Edits::tr("Took back box kind %1").arg(kind.name), {deleted(kind)}, {}, {}, {}};
}

} // namespace core::edit
