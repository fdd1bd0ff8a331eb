#include "core/edit/mite_falls.h"

#include "core/edit/edit_checks.h"
#include "core/edit/row_change.h"

namespace core::edit {

namespace {

constexpr int kMostBoardDays = 60;
constexpr int kMostFallen = 100'000;

/// "20 mites in 5 days".
QString fallenText(const MiteFall& f) {
    const QString mites = f.mites == 1 ? Edits::tr("1 mite") : Edits::tr("%1 mites").arg(f.mites);
    return f.days == 1 ? Edits::tr("%1 in a day").arg(mites) : Edits::tr("%1 in %2 days").arg(mites).arg(f.days);
}

/// `c`: the book without it.
MiteFall checkedMiteFall(const EditContext& c, const MiteFall& typed) {
    MiteFall f = typed;
    f.by = typed.by.trimmed();
    f.note = typed.note.trimmed();
    checkRange(f.days, 1, kMostBoardDays, Edits::tr("Days on the board"));
    checkRange(f.mites, 0, kMostFallen, Edits::tr("Mites"));
    const Colony colony = needColony(c, f.colony);
    needLife(c, colony, f.day);
    const QString name = shownName(c, colony, f.day);
    if (f.day - f.days < colony.since)
        refuse(Edits::tr("The board would have lain under %1 from %2 on, before the colony began on %3.")
                   .arg(name, isoText(f.day - f.days), isoText(colony.since)));
    for (const MiteFall& other : c.miteFallsOf(f.colony))
        if (other.day == f.day && other.id != f.id)
            refuse(Edits::tr("%1 has a count of fallen mites on %2 already; expected one count a colony a day.")
                       .arg(name, isoText(f.day)));
    return f;
}

MiteFall needMiteFall(const EditContext& c, MiteFallId id) {
    auto fall = c.find<MiteFall>(id.value);
    if (!fall) refuse(Edits::tr("That count of fallen mites is no longer in the book."));
    return *std::move(fall);
}

QString nameOf(const EditContext& c, const MiteFall& f) {
    return Edits::tr("the mites fallen at %1 by %2 (%3)")
        .arg(shownName(c, needColony(c, f.colony), f.day), isoText(f.day), fallenText(f));
}

} // namespace

ChangeSet logMiteFall(const EditContext& c, const MiteFall& typed) {
    MiteFall f = checkedMiteFall(c, typed);
    f.id = MiteFallId{c.nextId(Table::MiteFall)};
    return {Edits::tr("Noted %1").arg(nameOf(c, f)), {added(f)}, {}, {}, {}};
}

ChangeSet changeMiteFall(const EditContext& c, const MiteFall& typed) {
    const MiteFall old = needMiteFall(c, typed.id);
    const MiteFall now = checkedMiteFall(c, typed);
    if (old == now) return {};
    return {Edits::tr("Changed %1").arg(nameOf(c, old)), {changed(old, now)}, {}, {}, {}};
}

ChangeSet takeBackMiteFall(const EditContext& c, MiteFallId id) {
    const MiteFall old = needMiteFall(c, id);
    return {Edits::tr("Took back %1").arg(nameOf(c, old)), {deleted(old)}, {}, {}, {}};
}

} // namespace core::edit
