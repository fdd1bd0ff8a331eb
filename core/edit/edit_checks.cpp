#include "core/edit/edit_checks.h"

#include "core/base/natural_order.h"
#include "core/edit/edits.h"
#include "core/edit/row_change.h"

#include <algorithm>

namespace core::edit {

namespace {

constexpr int kLongestName = 60;

QString numberText(int value) { return QString::number(value); }

/// It stands on this stand on `day` or comes there later, and does not leave that day.
bool bars(const Placement& p, std::span<const ColonyId> own, Day day) {
    const bool stays = !p.until || *p.until > day;
    return stays && std::find(own.begin(), own.end(), p.colony) == own.end();
}

} // namespace

void refuse(const QString& sentence) { throw Error(Error::Kind::BadData, sentence); }

QString shownName(const EditContext& c, const Colony& colony, Day day) {
    const auto named = c.colonyNamed(colony.label, day);
    if (named && named->id == colony.id) return colony.label;
    return colony.label + u'@' + isoText(colony.since);
}

Colony needColony(const EditContext& c, ColonyId id) {
    auto colony = c.colony(id);
    if (!colony) refuse(Edits::tr("That colony is no longer in the book."));
    return *std::move(colony);
}

Yard needYard(const EditContext& c, YardId id) {
    auto yard = c.yard(id);
    if (!yard) refuse(Edits::tr("That yard is no longer in the book."));
    return *std::move(yard);
}

void needLife(const EditContext& c, const Colony& colony, Day day) {
    if (day < colony.since)
        refuse(Edits::tr("%1 began on %2; %3 is before that.")
                   .arg(shownName(c, colony, colony.since), isoText(colony.since), isoText(day)));
    if (colony.ended && day > *colony.ended)
        refuse(Edits::tr("%1 ended on %2; %3 is after that.")
                   .arg(shownName(c, colony, day), isoText(*colony.ended), isoText(day)));
}

void needFreeLabel(const EditContext& c, const Colony& colony) {
    for (const Colony& other : c.coloniesLabelled(colony.label)) {
        const bool before = other.ended && *other.ended < colony.since;
        const bool after = colony.ended && *colony.ended < other.since;
        if (other.id == colony.id || before || after) continue;
        refuse(
            other.ended
                ? Edits::tr("%1 is the label of a colony that lived from %2 to %3.")
                      .arg(other.label, isoText(other.since), isoText(*other.ended))
                : Edits::tr("%1 is the label of a colony that lives since %2.").arg(other.label, isoText(other.since)));
    }
}

QString checkedName(const QString& typed, const QString& what) {
    const QString name = typed.trimmed();
    const auto characters = name.toUcs4().size();
    if (characters < 1 || characters > kLongestName)
        refuse(Edits::tr("%1: expected 1 to 60 characters, found %2.").arg(what, QString::number(characters)));
    for (const QChar ch : name)
        if (ch.category() == QChar::Other_Control) refuse(Edits::tr("%1: holds a control character.").arg(what));
    return name;
}

bool countsUpper(const Visit& v) { return v.upperBeesTop || v.upperBeesBottom || v.upperStores; }

void checkRange(std::optional<int> value, int least, int most, const QString& field) {
    if (!value || (*value >= least && *value <= most)) return;
    refuse(
        Edits::tr("%1: %2 is not from %3 to %4.").arg(field, numberText(*value), numberText(least), numberText(most)));
}

QString nextStandName(const std::vector<Stand>& stands) {
    qint64 greatest = 0;
    for (const Stand& stand : stands) {
        const auto number = parseDecimal(stand.name, 0);
        if (number && *number < INT32_MAX && !stand.name.contains(u'.')) greatest = std::max(greatest, *number);
    }
    return QString::number(greatest + 1);
}

void needBareGround(const EditContext& c, const std::vector<Stand>& stands, MmPoint at, std::span<const ColonyId> own,
                    Day day) {
    for (const Stand& stand : stands) {
        if (squaredDistance(stand.at, at) >= qint64(kStandApartMm) * kStandApartMm) continue;
        for (const Placement& p : c.placementsAt(stand.id)) {
            if (!bars(p, own, day)) continue;
            const QString other = shownName(c, needColony(c, p.colony), std::max(p.since, day));
            refuse(p.since <= day
                       ? Edits::tr("%1 stands there, on stand %2; hives stand at least 0.3 m apart.")
                             .arg(other, stand.name)
                       : Edits::tr("%1 stands there, on stand %2, from %3 on; hives stand at least 0.3 m apart.")
                             .arg(other, stand.name, isoText(p.since)));
        }
    }
}

Stand standAgain(const Stand& old, ChangeSet& change) {
    Stand now = old;
    now.removed = false;
    if (old.removed) change.rows.push_back(changed(old, now));
    return now;
}

void dropStandOf(const EditContext& c, const Placement& only, ChangeSet& change) {
    const auto stand = c.stand(only.stand);
    if (!stand || c.placementsAt(only.stand).size() != 1 || !c.madeByCarry(only.stand, only.colony)) return;
    change.rows.push_back(deleted(*stand));
}

void moveFirstPlace(const EditContext& c, ColonyId colony, Day since, ChangeSet& change) {
    for (const Placement& place : c.placementsOf(colony)) {
        if (!place.first) continue;
        Placement now = place;
        now.since = since;
        change.rows.push_back(changed(place, now));
    }
}

} // namespace core::edit
