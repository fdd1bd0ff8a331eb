#include "core/edit/merge_words.h"

#include "core/edit/edit_checks.h"

namespace core::edit {

namespace {

QString askText(const EditContext& c, const MergeChoice& x, const MergeDay& day, bool stands) {
    const QString a = shownName(c, needColony(c, x.colony), day.day);
    const QString b = x.other ? shownName(c, needColony(c, *x.other), day.day) : QString();
    const QString of = mergeDayName(c, day, Case::Within);
    switch (x.what) {
    case MergeAsk::Pin:
        return (stands ? Edits::tr("Pinned %1 + %2 for %3") : Edits::tr("Unpinned %1 + %2 for %3")).arg(a, b, of);
    case MergeAsk::Forbid:
        return (stands ? Edits::tr("Forbade %1 + %2 for %3") : Edits::tr("Allowed %1 + %2 again for %3")).arg(a, b, of);
    case MergeAsk::LeaveOut:
        return (stands ? Edits::tr("Left %1 out of %2") : Edits::tr("Took %1 into %2 again")).arg(a, of);
    case MergeAsk::Host:
        return (stands ? Edits::tr("Made %1 the host of %2 for %3")
                       : Edits::tr("Left it to the rule whether %1 is the host of %2 for %3"))
            .arg(a, b, of);
    case MergeAsk::Top:
        break;
    }
    return (stands ? Edits::tr("Put the box of %1 on top of that of %2 for %3")
                   : Edits::tr("Left it to the setting whether the box of %1 is on top of that of %2 for %3"))
        .arg(a, b, of);
}

QString limitText(const EditContext& c, const MergeDay& now) {
    const QString of = mergeDayName(c, now, Case::Within);
    if (now.most) return Edits::tr("Limited %1 to %2 unions").arg(of).arg(*now.most);
    if (now.minutes) return Edits::tr("Gave %1 %2 minutes").arg(of).arg(*now.minutes);
    return Edits::tr("Took the limit from %1").arg(of);
}

} // namespace

QString mergeDayName(const EditContext& c, const MergeDay& day, Case how) {
    const QString yard = needYard(c, day.yard).name;
    const QString of =
        how == Case::First ? Edits::tr("The merge day of %1 on %2") : Edits::tr("the merge day of %1 on %2");
    const QString text = of.arg(yard, isoText(day.day));
    return day.variant == 1 ? text : Edits::tr("%1, variant %2").arg(text).arg(day.variant);
}

QString pairName(const EditContext& c, ColonyId a, ColonyId b, Day day) {
    return shownName(c, needColony(c, a), day) + QStringLiteral(" + ") + shownName(c, needColony(c, b), day);
}

QString mergeChangeText(const EditContext& c, const MergeDay& old, const MergeDay& now,
                        const std::vector<RowChange>& choices) {
    const bool limits = old.most != now.most || old.minutes != now.minutes;
    if (limits && choices.empty()) return limitText(c, now);
    if (!limits && choices.size() == 1 && choices[0].table == Table::MergeChoice) {
        const RowChange& row = choices[0];
        const auto choice = fromRow<MergeChoice>(row.id, row.after ? *row.after : *row.before);
        if (!row.before || !row.after) return askText(c, choice, now, row.after.has_value());
    }
    return Edits::tr("Changed %1").arg(mergeDayName(c, now, Case::Within));
}

} // namespace core::edit
