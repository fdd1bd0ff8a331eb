#include "core/edit/edit_checks.h"
#include "core/edit/edits.h"
#include "core/edit/held.h"
#include "core/edit/merge_day.h"
#include "core/edit/merge_day_checks.h"
#include "core/edit/merge_words.h"
#include "core/edit/row_change.h"
#include "core/rules/explain.h"

#include <algorithm>
#include <array>

namespace core::edit {

namespace {

/// Parts of rule 4.7 that bar what was done, whatever the plan said: yard, hold, laying workers, strength, box kind.
constexpr std::array kBarring = {"4.7.1", "4.7.2", "4.7.3", "4.7.4", "4.7.6"};

std::optional<ColonyIx> living(const Snapshot& s, ColonyId id, Day day) {
    for (size_t i = 0; i < s.colonies.size(); ++i) {
        const SnapColony& colony = s.colonies[i];
        if (colony.id == id && colony.since <= day && !colony.ended) return ColonyIx{static_cast<qint32>(i)};
    }
    return std::nullopt;
}

/// What bars it on its own day: of a union by rule 4.7, of a shake-out a hold. Throws it; returns where nothing does.
void needDoable(const EditContext& c, const StripClose& strip) {
    if (strip.how == LineageHow::ShakenOut) return refuseHeld(c, {strip.moved, strip.host}, strip.day);
    const Snapshot s = c.snapshot(strip.day);
    const auto moved = living(s, strip.moved, strip.day);
    const auto host = living(s, strip.host, strip.day);
    if (!moved || !host) return; // the union itself is refused then
    for (const rules::Objection& o : rules::explain(s, *moved, *host).objections) {
        const bool bars = std::any_of(kBarring.begin(), kBarring.end(),
                                      [&](const char* part) { return o.rule == QLatin1StringView(part); });
        if (!bars) continue;
        throw Error(o.rule == QLatin1StringView("4.7.2") ? Error::Kind::Hold : Error::Kind::BadData,
                    Edits::tr("%1 may not be united: %2: %3")
                        .arg(pairName(c, strip.moved, strip.host, strip.day), o.rule, o.because));
    }
}

/// The same as a sentence; empty where nothing bars it.
QString barring(const EditContext& c, const StripClose& strip) {
    try {
        needDoable(c, strip);
    } catch (const Error& e) {
        if (e.kind() == Error::Kind::Book) throw;
        return e.userMessage();
    }
    return {};
}

void needInYard(const EditContext& c, const StripClose& strip) {
    for (const ColonyId id : {strip.moved, strip.host}) needStandsIn(c, id, strip.yard, strip.day);
}

struct Kept {
    MergeDay day;
    std::optional<MergeStrip> strip; ///< as printed
    int lastPosition = 0;
};

/// The merge day that the strip is of: the variant that has it, else the first that has any, else the first of all.
std::optional<Kept> keptOf(const EditContext& c, const StripClose& strip) {
    std::optional<Kept> first;
    for (const MergeDay& day : c.mergeDaysOf(strip.yard)) {
        if (day.day != strip.day) continue;
        const auto strips = c.stripsOf(day.id);
        Kept kept{day, std::nullopt, strips.empty() ? 0 : strips.back().position};
        for (const MergeStrip& s : strips)
            if (s.moved == strip.moved && s.host == strip.host && s.how == strip.how) kept.strip = s;
        if (kept.strip) return kept;
        if (!first || (first->lastPosition == 0 && kept.lastPosition > 0)) first = kept;
    }
    return first;
}

MergeStrip freshStrip(const StripClose& strip) {
    MergeStrip fresh;
    fresh.how = strip.how;
    fresh.moved = strip.moved;
    fresh.host = strip.host;
    if (strip.how == LineageHow::United) fresh.upper = strip.host;
    return fresh;
}

/// The merge day and what of it the strip is; the change makes a merge day where there is none.
Kept needKept(const EditContext& c, const StripClose& strip, ChangeSet& change) {
    if (auto kept = keptOf(c, strip)) return *std::move(kept);
    Kept fresh;
    fresh.day.id = {c.nextId(Table::MergeDay)};
    fresh.day.yard = strip.yard;
    fresh.day.day = strip.day;
    change.rows.push_back(added(fresh.day));
    return fresh;
}

/// Another row of the merge day, behind the sheet; `nth` new one of the change, from 0.
void addOffSheet(const EditContext& c, const Kept& kept, const StripClose& strip, int nth, ChangeSet& change) {
    for (const MergeStrip& other : c.stripsOf(kept.day.id))
        if (other.moved == strip.moved)
            refuse(Edits::tr("%1 is on another strip of that day.")
                       .arg(shownName(c, needColony(c, strip.moved), strip.day)));
    MergeStrip now = freshStrip(strip);
    now.outcome = strip.outcome;
    now.note = strip.note.trimmed();
    now.id = {c.nextId(Table::MergeStrip) + nth};
    now.mergeDay = kept.day.id;
    now.position = std::max(kept.lastPosition, kOffSheet) + 1 + nth;
    change.rows.push_back(added(now));
}

/// `also`: done in its place, of a colony that the strip does not carry; noted as a strip of its own.
void addOutcomes(const EditContext& c, const StripClose& strip, const std::optional<StripClose>& also,
                 ChangeSet& change) {
    const Kept kept = needKept(c, strip, change);
    if (kept.strip && kept.strip->outcome)
        refuse(Edits::tr("What came of %1 on %2 is written already.")
                   .arg(pairName(c, strip.moved, strip.host, strip.day), isoText(strip.day)));
    int fresh = 0;
    if (kept.strip) {
        MergeStrip now = *kept.strip;
        now.outcome = strip.outcome;
        now.note = strip.note.trimmed();
        change.rows.push_back(changed(*kept.strip, now));
    } else {
        addOffSheet(c, kept, strip, fresh++, change);
    }
    if (also) addOffSheet(c, kept, *also, fresh, change);
}

QString outcomeText(const EditContext& c, const StripClose& strip) {
    const QString pair = pairName(c, strip.moved, strip.host, strip.day);
    return (strip.outcome == StripOutcome::Changed ? Edits::tr("Noted that %1 was done otherwise on %2")
                                                   : Edits::tr("Noted that %1 was not done on %2"))
        .arg(pair, isoText(strip.day));
}

/// The union or shake-out that was done, as a strip of its own; nullopt: none was.
std::optional<StripClose> doneBy(const StripClose& strip) {
    if (strip.outcome == StripOutcome::NotDone) return std::nullopt;
    if (strip.outcome == StripOutcome::Changed && !strip.instead) return std::nullopt;
    StripClose done = strip;
    done.outcome = StripOutcome::Done;
    done.instead.reset();
    if (strip.outcome == StripOutcome::Done) return done;
    done.how = strip.instead->how;
    done.moved = strip.instead->moved;
    done.host = strip.instead->host;
    return done;
}

Lineage lineageOf(const StripClose& strip) {
    Lineage l;
    l.day = strip.day;
    l.how = strip.how;
    l.colony = strip.moved;
    l.into = strip.host;
    l.by = strip.by;
    l.note = strip.note;
    return l;
}

void needSense(const StripClose& strip) {
    if (strip.moved == strip.host) refuse(Edits::tr("A colony is not united with itself."));
    if (strip.how == LineageHow::Divided) refuse(Edits::tr("A divide is no union."));
    if (strip.outcome != StripOutcome::Changed) return;
    if (strip.note.trimmed().isEmpty()) refuse(Edits::tr("What was done instead is to be noted."));
    if (strip.instead && *strip.instead == DoneInstead{strip.how, strip.moved, strip.host})
        refuse(Edits::tr("That is the strip itself: it was done."));
}

/// The union, as a fact with what bars it as `against`, else judged.
ChangeSet united(const EditContext& c, const StripClose& done, bool asFact) {
    needSense(done);
    if (!asFact) needInYard(c, done);
    if (!asFact) needDoable(c, done);
    ChangeSet change = recordUnionWhateverHolds(c, lineageOf(done)); // holds are asked for once: above, or as `against`
    if (asFact) change.against = [done](const EditContext& book) { return barring(book, done); };
    return change;
}

ChangeSet close(const EditContext& c, const StripClose& strip, bool asFact) {
    needSense(strip);
    ChangeSet change;
    const auto done = doneBy(strip);
    if (done) change = united(c, *done, asFact);
    if (strip.outcome != StripOutcome::Done)
        change.text = done ? Edits::tr("%1, not as planned").arg(change.text) : outcomeText(c, strip);
    addOutcomes(c, strip, done && done->moved != strip.moved ? done : std::nullopt, change);
    return change;
}

} // namespace

ChangeSet closeStrip(const EditContext& c, const StripClose& strip) { return close(c, strip, false); }

ChangeSet closeStripAsFact(const EditContext& c, const StripClose& strip) { return close(c, strip, true); }

} // namespace core::edit
