#include "core/edit/merge_day_checks.h"

#include "core/edit/edit_checks.h"
#include "core/edit/merge_words.h"

#include <algorithm>

namespace core::edit {

namespace {

constexpr int kVariants = 3;
constexpr int kMostUnions = 100'000;
constexpr int kMostMinutes = 6000;

template <class Strips> bool anyOutcome(const Strips& strips) {
    return std::any_of(strips.begin(), strips.end(), [](const auto& strip) { return strip.outcome.has_value(); });
}

} // namespace

MergeDay needMergeDay(const EditContext& c, MergeDayId id) {
    auto day = c.find<MergeDay>(id.value);
    if (!day) refuse(Edits::tr("That merge day is no longer in the book."));
    return *std::move(day);
}

std::optional<MergeDay> mergeDayAt(const EditContext& c, YardId yard, Day day, int variant) {
    for (const MergeDay& there : c.mergeDaysOf(yard))
        if (there.day == day && there.variant == variant) return there;
    return std::nullopt;
}

void needOpen(const EditContext& c, const MergeDay& day) {
    if (anyOutcome(c.stripsOf(day.id)) || anyOutcome(c.divideStripsOf(day.id)))
        refuse(Edits::tr("%1 has begun to be closed: what was planned stays as it was. Plan another day.")
                   .arg(mergeDayName(c, day)));
}

void needStandsIn(const EditContext& c, ColonyId colony, YardId yard, Day day) {
    const auto places = c.placementsOf(colony);
    const bool there = std::any_of(places.begin(), places.end(), [&](const Placement& p) {
        const auto stand = c.stand(p.stand);
        return stand && stand->yard == yard && p.since <= day && (!p.until || *p.until >= day);
    });
    if (!there)
        refuse(Edits::tr("%1 does not stand in %2 on %3.")
                   .arg(shownName(c, needColony(c, colony), day), needYard(c, yard).name, isoText(day)));
}

MergeDay checkedMergeDay(const EditContext& c, const MergeDay& typed) {
    MergeDay day = typed;
    day.note = typed.note.trimmed();
    needYard(c, day.yard);
    checkRange(day.variant, 1, kVariants, Edits::tr("Variant"));
    checkRange(day.most, 0, kMostUnions, Edits::tr("Unions at most"));
    checkRange(day.minutes, 1, kMostMinutes, Edits::tr("Minutes"));
    return day;
}

void needLivesOn(const EditContext& c, ColonyId id, Day day) {
    const Colony colony = needColony(c, id);
    if (colony.since > day || (colony.ended && *colony.ended <= day))
        refuse(Edits::tr("%1 does not live on %2.").arg(shownName(c, colony, day), isoText(day)));
}

} // namespace core::edit
