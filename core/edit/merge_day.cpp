#include "core/edit/merge_day.h"

#include "core/edit/edit_checks.h"
#include "core/edit/merge_day_checks.h"
#include "core/edit/merge_words.h"
#include "core/edit/row_change.h"

#include <algorithm>
#include <set>

namespace core::edit {

namespace {

using Pair = std::pair<ColonyId, ColonyId>;

Pair inOrder(const MergeChoice& choice) {
    const Pair pair{choice.colony, *choice.other};
    return pair.second < pair.first ? Pair{pair.second, pair.first} : pair;
}

bool sameAsk(const MergeChoice& a, const MergeChoice& b) {
    if (a.what != b.what || a.other.has_value() != b.other.has_value()) return false;
    const bool ordered = a.what == MergeAsk::Host || a.what == MergeAsk::Top || !a.other;
    return ordered ? a.colony == b.colony && a.other == b.other : inOrder(a) == inOrder(b);
}

void needChoice(const EditContext& c, const MergeChoice& choice, Day day) {
    if ((choice.what == MergeAsk::LeaveOut) == choice.other.has_value())
        refuse(Edits::tr("A pair is pinned, forbidden or turned; one colony alone is left out."));
    for (const ColonyId id : {choice.colony, choice.other.value_or(choice.colony)}) needLivesOn(c, id, day);
    if (choice.other == choice.colony) refuse(Edits::tr("A colony is not united with itself."));
}

/// What two choices say against each other; empty: nothing.
void needAgreement(const EditContext& c, const std::vector<MergeChoice>& choices, Day day) {
    const auto name = [&](ColonyId id) { return shownName(c, needColony(c, id), day); };
    std::set<Pair> forbidden;
    std::set<ColonyId> leftOut, pinned;
    for (const MergeChoice& x : choices) {
        if (x.what == MergeAsk::Forbid) forbidden.insert(inOrder(x));
        if (x.what == MergeAsk::LeaveOut) leftOut.insert(x.colony);
    }
    for (const MergeChoice& x : choices) {
        if (x.what != MergeAsk::Pin) continue;
        if (forbidden.contains(inOrder(x)))
            refuse(Edits::tr("%1 and %2 are pinned and forbidden: only one of the two can be.")
                       .arg(name(x.colony), name(*x.other)));
        for (const ColonyId id : {x.colony, *x.other}) {
            if (leftOut.contains(id)) refuse(Edits::tr("%1 is left out and cannot be pinned.").arg(name(id)));
            if (!pinned.insert(id).second)
                refuse(Edits::tr("%1 is pinned twice: a colony is in one union only.").arg(name(id)));
        }
    }
}

/// What must go and what must come, so that just `now` stands.
void changeChoices(const EditContext& c, MergeDayId id, const std::vector<MergeChoice>& old,
                   std::vector<MergeChoice> now, ChangeSet& change) {
    qint64 next = c.nextId(Table::MergeChoice);
    for (const MergeChoice& was : old) {
        const auto same = std::find_if(now.begin(), now.end(), [&](const auto& x) { return sameAsk(was, x); });
        if (same == now.end()) {
            change.rows.push_back(deleted(was));
            continue;
        }
        MergeChoice stays = was;
        stays.note = same->note.trimmed();
        if (stays != was) change.rows.push_back(changed(was, stays));
        now.erase(same);
    }
    for (MergeChoice& fresh : now) {
        fresh.id = {next++};
        fresh.mergeDay = id;
        fresh.note = fresh.note.trimmed();
        change.rows.push_back(added(fresh));
    }
}

/// On paper each colony is carried once, and one that is carried takes no part in another union.
void needOneUnionEach(const EditContext& c, const std::vector<MergeStrip>& strips, const MergeDay& day) {
    std::set<ColonyId> carried, hosts;
    const auto twice = [&](ColonyId id) {
        refuse(Edits::tr("%1 is on two strips.").arg(shownName(c, needColony(c, id), day.day)));
    };
    for (const MergeStrip& strip : strips) {
        if (strip.moved == strip.host) refuse(Edits::tr("A colony is not united with itself."));
        needColony(c, strip.host);
        needColony(c, strip.moved);
        if (!carried.insert(strip.moved).second) twice(strip.moved);
        if (strip.how == LineageHow::United && !hosts.insert(strip.host).second) twice(strip.host);
    }
    for (const MergeStrip& strip : strips)
        if (carried.contains(strip.host)) twice(strip.host);
}

/// One worksheet a yard and day: strips printed of its other variants go.
void dropOtherSheets(const EditContext& c, const MergeDay& day, ChangeSet& change) {
    for (const MergeDay& other : c.mergeDaysOf(day.yard)) {
        if (other.day != day.day || other.id == day.id) continue;
        const auto strips = c.stripsOf(other.id);
        const auto divides = c.divideStripsOf(other.id);
        if (!strips.empty() || !divides.empty()) needOpen(c, other);
        for (const MergeStrip& strip : strips) change.rows.push_back(deleted(strip));
        for (const DivideStrip& strip : divides) change.rows.push_back(deleted(strip));
    }
}

std::optional<MergeDay> storedDay(const EditContext& c, const MergeDay& day) {
    if (day.id.value != 0) return needMergeDay(c, day.id);
    for (const MergeDay& other : c.mergeDaysOf(day.yard))
        if (other.day == day.day && other.variant == day.variant)
            refuse(Edits::tr("%1 is planned already.").arg(mergeDayName(c, other)));
    return std::nullopt;
}

} // namespace

ChangeSet saveMergeDay(const EditContext& c, const MergeAsked& asked) {
    MergeDay now = checkedMergeDay(c, asked.day);
    for (auto x = asked.choices.begin(); x != asked.choices.end(); ++x) {
        needChoice(c, *x, now.day);
        if (std::any_of(asked.choices.begin(), x, [&](const MergeChoice& y) { return sameAsk(*x, y); }))
            refuse(Edits::tr("The same is asked twice."));
    }
    needAgreement(c, asked.choices, now.day);
    const auto old = storedDay(c, now);
    ChangeSet change;
    if (!old) {
        now.id = {c.nextId(Table::MergeDay)};
        now.revision = 1;
        change.rows.push_back(added(now));
        changeChoices(c, now.id, {}, asked.choices, change);
        change.text = Edits::tr("Planned %1").arg(mergeDayName(c, now, Case::Within));
        return change;
    }
    now.yard = old->yard;
    now.day = old->day;
    now.variant = old->variant;
    now.queens = old->queens; // askDivides
    now.revision = old->revision;
    const auto stood = c.choicesOf(now.id);
    changeChoices(c, now.id, stood, asked.choices, change);
    if (change.rows.empty() && now == *old) return {};
    needOpen(c, *old);
    now.revision = old->revision + 1;
    change.text = mergeChangeText(c, *old, now, change.rows);
    change.rows.insert(change.rows.begin(), changed(*old, now));
    return change;
}

ChangeSet printMergeDay(const EditContext& c, MergeDayId id, const std::vector<MergeStrip>& strips) {
    const MergeDay day = needMergeDay(c, id);
    const auto old = c.stripsOf(id);
    needOneUnionEach(c, strips, day);
    std::vector<MergeStrip> now = strips;
    for (size_t i = 0; i < now.size(); ++i) {
        now[i].id = {i < old.size() ? old[i].id.value : 0}; // for the comparison
        now[i].mergeDay = id;
        now[i].position = static_cast<int>(i) + 1;
        now[i].outcome.reset();
        now[i].note.clear();
    }
    ChangeSet change;
    dropOtherSheets(c, day, change);
    if (now == old && change.rows.empty()) return {};
    needOpen(c, day);
    for (const MergeStrip& strip : old) change.rows.push_back(deleted(strip));
    qint64 next = c.nextId(Table::MergeStrip);
    for (MergeStrip& strip : now) {
        strip.id = {next++};
        change.rows.push_back(added(strip));
    }
    change.text = Edits::tr("Put the worksheet of %1, revision %2, to paper")
                      .arg(mergeDayName(c, day, Case::Within))
                      .arg(day.revision);
    return change;
}

ChangeSet takeBackMergeDay(const EditContext& c, MergeDayId id) {
    const MergeDay day = needMergeDay(c, id);
    needOpen(c, day);
    ChangeSet change;
    for (const MergeStrip& strip : c.stripsOf(id)) change.rows.push_back(deleted(strip));
    for (const MergeChoice& choice : c.choicesOf(id)) change.rows.push_back(deleted(choice));
    for (const DivideStrip& strip : c.divideStripsOf(id)) change.rows.push_back(deleted(strip));
    for (const DivideChoice& choice : c.divideChoicesOf(id)) change.rows.push_back(deleted(choice));
    change.rows.push_back(deleted(day));
    change.text = Edits::tr("Took back %1").arg(mergeDayName(c, day, Case::Within));
    return change;
}

} // namespace core::edit
