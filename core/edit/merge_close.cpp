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

/// The merge day that the strip is of: the variant that has it, else the first of that yard and day.
std::optional<Kept> keptOf(const EditContext& c, const StripClose& strip) {
    std::optional<Kept> first;
    for (const MergeDay& day : c.mergeDaysOf(strip.yard)) {
        if (day.day != strip.day) continue;
        const auto strips = c.stripsOf(day.id);
        Kept kept{day, std::nullopt, strips.empty() ? 0 : strips.back().position};
        for (const MergeStrip& s : strips)
            if (s.moved == strip.moved && s.host == strip.host && s.how == strip.how) kept.strip = s;
        if (kept.strip) return kept;
        if (!first) first = kept;
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

void addOutcome(const EditContext& c, const StripClose& strip, ChangeSet& change) {
    auto kept = keptOf(c, strip);
    if (!kept) {
        kept.emplace();
        kept->day.id = {c.nextId(Table::MergeDay)};
        kept->day.yard = strip.yard;
        kept->day.day = strip.day;
        change.rows.push_back(added(kept->day));
    }
    if (kept->strip && kept->strip->outcome)
        refuse(Edits::tr("What came of %1 on %2 is written already.")
                   .arg(pairName(c, strip.moved, strip.host, strip.day), isoText(strip.day)));
    MergeStrip now = kept->strip.value_or(freshStrip(strip));
    now.outcome = strip.outcome;
    now.note = strip.note.trimmed();
    if (kept->strip) return change.rows.push_back(changed(*kept->strip, now));
    for (const MergeStrip& other : c.stripsOf(kept->day.id))
        if (other.moved == now.moved)
            refuse(Edits::tr("%1 is on another strip of that day.")
                       .arg(shownName(c, needColony(c, now.moved), strip.day)));
    now.id = {c.nextId(Table::MergeStrip)};
    now.mergeDay = kept->day.id;
    now.position = kept->lastPosition + 1;
    change.rows.push_back(added(now));
}

QString outcomeText(const EditContext& c, const StripClose& strip) {
    const QString pair = pairName(c, strip.moved, strip.host, strip.day);
    return (strip.outcome == StripOutcome::Changed ? Edits::tr("Noted that %1 was done otherwise on %2")
                                                   : Edits::tr("Noted that %1 was not done on %2"))
        .arg(pair, isoText(strip.day));
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

ChangeSet close(const EditContext& c, const StripClose& strip, bool asFact) {
    if (strip.moved == strip.host) refuse(Edits::tr("A colony is not united with itself."));
    if (strip.how == LineageHow::Divided) refuse(Edits::tr("A divide is no union."));
    if (strip.outcome == StripOutcome::Changed && strip.note.trimmed().isEmpty())
        refuse(Edits::tr("What was done instead is to be noted."));
    ChangeSet change;
    if (strip.outcome == StripOutcome::Done) {
        if (!asFact) needInYard(c, strip);
        if (!asFact) needDoable(c, strip);
        change = recordUnionWhateverHolds(c, lineageOf(strip)); // holds are asked for once: above, or as `against`
        if (asFact) change.against = [strip](const EditContext& book) { return barring(book, strip); };
    } else {
        change.text = outcomeText(c, strip);
    }
    addOutcome(c, strip, change);
    return change;
}

} // namespace

ChangeSet closeStrip(const EditContext& c, const StripClose& strip) { return close(c, strip, false); }

ChangeSet closeStripAsFact(const EditContext& c, const StripClose& strip) { return close(c, strip, true); }

} // namespace core::edit
