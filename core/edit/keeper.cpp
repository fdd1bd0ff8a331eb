#include "core/edit/keeper.h"

#include "core/edit/edit_checks.h"
#include "core/edit/row_change.h"

namespace core::edit {

namespace {

constexpr qsizetype kLongestPlace = 60;
constexpr qsizetype kLongestLine = 200;
constexpr qsizetype kLongestAddress = 500;

std::optional<Keeper> keeperOf(const EditContext& c) {
    std::optional<Keeper> found;
    c.each<Keeper>([&](const Keeper& k) { found = k; });
    return found;
}

QString shortEnough(const QString& text, qsizetype most, const QString& field) {
    const auto length = text.toUcs4().size();
    if (length > most)
        refuse(Edits::tr("%1: expected at most %2 characters, found %3.").arg(field).arg(most).arg(length));
    return text;
}

/// Each line without blanks around, blank lines left out.
QString tidyLines(const QString& typed) {
    QStringList lines;
    for (const QString& line : typed.split(u'\n'))
        if (const QString tidy = line.simplified(); !tidy.isEmpty()) lines << tidy;
    return lines.join(u'\n');
}

} // namespace

Keeper checkedKeeper(const Keeper& typed) {
    Keeper k = typed;
    k.name = checkedName(typed.name.simplified(), Edits::tr("Name"));
    k.address = shortEnough(tidyLines(typed.address), kLongestAddress, Edits::tr("Address"));
    k.contact = shortEnough(typed.contact.simplified(), kLongestLine, Edits::tr("Contact"));
    k.registration = shortEnough(typed.registration.simplified(), kLongestLine, Edits::tr("Registration"));
    k.place = shortEnough(typed.place.simplified(), kLongestPlace, Edits::tr("Place whose rules hold"));
    return k;
}

ChangeSet setKeeper(const EditContext& c, const Keeper& typed) {
    Keeper now = checkedKeeper(typed);
    const auto old = keeperOf(c);
    now.id = old ? old->id : KeeperId{c.nextId(Table::Keeper)};
    if (!old) return {Edits::tr("Wrote down the keeper of the book: %1").arg(now.name), {added(now)}, {}, {}, {}};
    if (now == *old) return {};
    return {Edits::tr("Changed what is recorded of the keeper of the book: %1").arg(now.name),
            {changed(*old, now)},
            {},
            {},
            {}};
}

ChangeSet takeBackKeeper(const EditContext& c) {
    const auto old = keeperOf(c);
    if (!old) refuse(Edits::tr("No keeper is recorded in this book."));
    return {Edits::tr("Took the keeper %1 from the book").arg(old->name), {deleted(*old)}, {}, {}, {}};
}

} // namespace core::edit
