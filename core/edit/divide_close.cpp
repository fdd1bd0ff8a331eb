#include "core/edit/after_context.h"
#include "core/edit/divide_day.h"
#include "core/edit/edit_checks.h"
#include "core/edit/held.h"
#include "core/edit/merge_day_checks.h"
#include "core/edit/row_change.h"

#include <QStringList>

namespace core::edit {

namespace {

constexpr int kMostMade = 23; // parts of the strip are at most 24

QString nameOf(const EditContext& c, const DivideClose& divide) {
    return shownName(c, needColony(c, divide.colony), divide.day);
}

/// What bars it, as a sentence; empty where nothing does.
QString barring(const EditContext& c, const DivideClose& divide) {
    try {
        refuseHeld(c, {divide.colony}, divide.day);
    } catch (const Error& e) {
        if (e.kind() == Error::Kind::Book) throw;
        return e.userMessage();
    }
    return {};
}

/// The new colonies, each judged with those before it in the book.
ChangeSet makeColonies(const EditContext& c, const DivideClose& divide) {
    if (divide.made.empty()) refuse(Edits::tr("A divide makes at least one new colony: none was named."));
    checkRange(static_cast<int>(divide.made.size()), 1, kMostMade, Edits::tr("New colonies"));
    AfterContext sofar(c);
    ChangeSet change;
    QStringList labels;
    for (const NewColony& typed : divide.made) {
        NewColony made = typed;
        made.colony.since = divide.day;
        ChangeSet one = recordDivideWhateverHolds(sofar, {divide.colony, made, divide.by, divide.note});
        sofar.add(one.rows);
        labels << made.colony.label.trimmed();
        change.rows.insert(change.rows.end(), one.rows.begin(), one.rows.end());
    }
    change.text = Edits::tr("Divided %1 on %2: made %3")
                      .arg(nameOf(c, divide), isoText(divide.day), labels.join(QStringLiteral(", ")));
    return change;
}

struct KeptDivide {
    MergeDay day;
    std::optional<DivideStrip> strip; ///< as printed
    int lastPosition = 0;
};

/// The merge day that the divide is of: the variant that has its strip, else the first of that yard and day.
std::optional<KeptDivide> keptOf(const EditContext& c, const DivideClose& divide) {
    std::optional<KeptDivide> first;
    for (const MergeDay& day : c.mergeDaysOf(divide.yard)) {
        if (day.day != divide.day) continue;
        const auto strips = c.divideStripsOf(day.id);
        KeptDivide kept{day, std::nullopt, strips.empty() ? 0 : strips.back().position};
        for (const DivideStrip& s : strips)
            if (s.colony == divide.colony) kept.strip = s;
        if (kept.strip) return kept;
        if (!first) first = kept;
    }
    return first;
}

void addDivideOutcome(const EditContext& c, const DivideClose& divide, ChangeSet& change) {
    auto kept = keptOf(c, divide);
    if (!kept) {
        kept.emplace();
        kept->day.id = {c.nextId(Table::MergeDay)};
        kept->day.yard = divide.yard;
        kept->day.day = divide.day;
        change.rows.push_back(added(kept->day));
    }
    if (kept->strip && kept->strip->outcome)
        refuse(Edits::tr("What came of the divide of %1 on %2 is written already.")
                   .arg(nameOf(c, divide), isoText(divide.day)));
    DivideStrip now = kept->strip.value_or(DivideStrip{});
    now.queens = divide.queens;
    now.outcome = divide.outcome;
    now.note = divide.note.trimmed();
    if (kept->strip) return change.rows.push_back(changed(*kept->strip, now));
    now.id = {c.nextId(Table::DivideStrip)};
    now.mergeDay = kept->day.id;
    now.position = kept->lastPosition + 1;
    now.colony = divide.colony;
    if (!divide.made.empty()) now.parts = static_cast<int>(divide.made.size()) + 1;
    change.rows.push_back(added(now));
}

QString outcomeText(const EditContext& c, const DivideClose& divide) {
    return (divide.outcome == StripOutcome::Changed ? Edits::tr("Noted that the divide of %1 was done otherwise on %2")
                                                    : Edits::tr("Noted that the divide of %1 was not done on %2"))
        .arg(nameOf(c, divide), isoText(divide.day));
}

ChangeSet close(const EditContext& c, const DivideClose& divide, bool asFact) {
    if (divide.outcome == StripOutcome::Changed && divide.note.trimmed().isEmpty())
        refuse(Edits::tr("What was done instead is to be noted."));
    needColony(c, divide.colony);
    needYard(c, divide.yard);
    ChangeSet change;
    if (divide.outcome == StripOutcome::Done) {
        if (!asFact) needStandsIn(c, divide.colony, divide.yard, divide.day);
        if (!asFact) refuseHeld(c, {divide.colony}, divide.day);
        change = makeColonies(c, divide);
        if (asFact) change.against = [divide](const EditContext& book) { return barring(book, divide); };
    } else {
        needLivesOn(c, divide.colony, divide.day);
        change.text = outcomeText(c, divide);
    }
    addDivideOutcome(c, divide, change);
    return change;
}

} // namespace

ChangeSet closeDivide(const EditContext& c, const DivideClose& divide) { return close(c, divide, false); }

ChangeSet closeDivideAsFact(const EditContext& c, const DivideClose& divide) { return close(c, divide, true); }

} // namespace core::edit
