#include "core/edit/notifiables.h"

#include "core/base/natural_order.h"
#include "core/edit/edit_checks.h"
#include "core/edit/row_change.h"
#include "core/rules/notifiable.h"

namespace core::edit {

namespace {

constexpr qsizetype kLongestCell = 200;

Notifiable needNotifiable(const EditContext& c, NotifiableId id) {
    auto line = c.find<Notifiable>(id.value);
    if (!line) refuse(Edits::tr("That line is no longer in the book."));
    return *std::move(line);
}

QString cellOf(const QString& typed, const QString& field) {
    const QString text = typed.simplified();
    const auto length = text.toUcs4().size();
    if (length > kLongestCell)
        refuse(Edits::tr("%1: expected at most %2 characters, found %3.").arg(field).arg(kLongestCell).arg(length));
    return text;
}

void needOnly(const EditContext& c, const Notifiable& line) {
    c.each<Notifiable>([&](const Notifiable& other) {
        if (other.id != line.id && other.disease == line.disease && folded(other.place) == folded(line.place))
            refuse(Edits::tr("%1 has a line of its own for %2 already: change that one.")
                       .arg(other.place, rules::reportableText(other.disease)));
    });
}

QString said(const Notifiable& n) {
    return (n.must ? Edits::tr("%1 must be reported in %2") : Edits::tr("%1 need not be reported in %2"))
        .arg(rules::reportableText(n.disease), n.place);
}

} // namespace

Notifiable checkedNotifiable(const Notifiable& typed) {
    Notifiable n = typed;
    n.place = checkedName(typed.place.simplified(), Edits::tr("Place"));
    n.tell = cellOf(typed.tell, Edits::tr("Whom to tell"));
    n.source = cellOf(typed.source, Edits::tr("Source"));
    return n;
}

ChangeSet addNotifiable(const EditContext& c, const Notifiable& typed) {
    Notifiable n = checkedNotifiable(typed);
    n.id = NotifiableId{c.nextId(Table::Notifiable)};
    needOnly(c, n);
    return {Edits::tr("Wrote down: %1").arg(said(n)), {added(n)}, {}, {}, {}};
}

ChangeSet changeNotifiable(const EditContext& c, const Notifiable& typed) {
    const Notifiable old = needNotifiable(c, typed.id);
    const Notifiable now = checkedNotifiable(typed);
    if (now == old) return {};
    needOnly(c, now);
    return {Edits::tr("Put right: %1").arg(said(now)), {changed(old, now)}, {}, {}, {}};
}

ChangeSet takeBackNotifiable(const EditContext& c, NotifiableId id) {
    const Notifiable old = needNotifiable(c, id);
    return {Edits::tr("Took back: %1").arg(said(old)), {deleted(old)}, {}, {}, {}};
}

} // namespace core::edit
