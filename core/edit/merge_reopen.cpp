#include "core/edit/edit_checks.h"
#include "core/edit/merge_day.h"
#include "core/edit/merge_words.h"
#include "core/edit/put_right.h"
#include "core/edit/row_change.h"

namespace core::edit {

namespace {

/// The union or shake-out by which the strip's colony ended that day: what the strip wrote.
std::optional<LineageId> writtenBy(const EditContext& c, const MergeStrip& strip, Day day) {
    if (strip.outcome == StripOutcome::NotDone) return std::nullopt;
    for (const Lineage& l : c.lineageOf(strip.moved)) {
        if (l.colony != strip.moved || l.day != day || l.how == LineageHow::Divided) continue;
        if (strip.outcome == StripOutcome::Done && (l.into != strip.host || l.how != strip.how)) continue;
        return l.id;
    }
    return std::nullopt;
}

/// It says nothing that was asked: it was made for strips that never were planned.
bool bare(const EditContext& c, const MergeDay& day) {
    MergeDay made; // as closing makes it
    made.id = day.id;
    made.yard = day.yard;
    made.day = day.day;
    return day == made && c.choicesOf(day.id).empty() && c.stripsOf(day.id).size() == 1 &&
           c.divideChoicesOf(day.id).empty() && c.divideStripsOf(day.id).empty();
}

} // namespace

ChangeSet reopenStrip(const EditContext& c, MergeStripId id) {
    const auto strip = c.find<MergeStrip>(id.value);
    if (!strip || !strip->outcome) refuse(Edits::tr("Nothing is written of that strip."));
    const auto day = c.find<MergeDay>(strip->mergeDay.value);
    if (!day) refuse(Edits::tr("That merge day is no longer in the book."));
    ChangeSet change;
    if (const auto lineage = writtenBy(c, *strip, day->day)) change = takeBackLineage(c, *lineage);
    if (onSheet(*strip)) {
        MergeStrip open = *strip;
        open.outcome.reset();
        open.note.clear();
        change.rows.push_back(changed(*strip, open));
    } else {
        change.rows.push_back(deleted(*strip));
        if (bare(c, *day)) change.rows.push_back(deleted(*day));
    }
    change.text = Edits::tr("Took back what came of %1 on %2")
                      .arg(pairName(c, strip->moved, strip->host, day->day), isoText(day->day));
    return change;
}

} // namespace core::edit
