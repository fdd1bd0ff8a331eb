#include "core/edit/divide_day.h"

#include "core/edit/edit_checks.h"
#include "core/edit/merge_day_checks.h"
#include "core/edit/merge_words.h"
#include "core/edit/row_change.h"

#include <algorithm>
#include <set>

namespace core::edit {

namespace {

constexpr int kMostParts = 24; // the table's CHECK

QString queensText(const std::optional<DivideQueens>& queens, const QString& of) {
    if (!queens) return Edits::tr("Left open how the divides of %1 come to queens").arg(of);
    switch (*queens) {
    case DivideQueens::Cells:
        return Edits::tr("Queen cells for the divides of %1").arg(of);
    case DivideQueens::Bought:
        return Edits::tr("Bought queens for the divides of %1").arg(of);
    case DivideQueens::Own:
        break;
    }
    return Edits::tr("The divides of %1 raise their own queens").arg(of);
}

QString choiceText(const EditContext& c, const RowChange& row, const MergeDay& day) {
    const auto choice = fromRow<DivideChoice>(row.id, row.after ? *row.after : *row.before);
    const QString name = shownName(c, needColony(c, choice.colony), day.day);
    const QString of = mergeDayName(c, day, Case::Within);
    if (!row.after) return Edits::tr("Left it to the rule how %1 is divided for %2").arg(name, of);
    return choice.parts == 1 ? Edits::tr("Left %1 whole for %2").arg(name, of)
                             : Edits::tr("At most %3 parts of %1 for %2").arg(name, of).arg(choice.parts);
}

QString askedText(const EditContext& c, const std::optional<MergeDay>& old, const MergeDay& now,
                  const std::vector<RowChange>& choices) {
    const bool queens = (old ? old->queens : std::nullopt) != now.queens;
    if (queens && choices.empty()) return queensText(now.queens, mergeDayName(c, now, Case::Within));
    if (!queens && choices.size() == 1) return choiceText(c, choices[0], now);
    return Edits::tr("Changed the divides of %1").arg(mergeDayName(c, now, Case::Within));
}

void needChoices(const EditContext& c, const DividesAsked& asked) {
    std::set<ColonyId> named;
    for (const DivideChoice& choice : asked.choices) {
        needLivesOn(c, choice.colony, asked.day);
        checkRange(choice.parts, 1, kMostParts, Edits::tr("Parts"));
        if (!named.insert(choice.colony).second) refuse(Edits::tr("The same is asked twice."));
    }
}

/// What must go, change and come, so that just `now` stands.
std::vector<RowChange> choiceChanges(const EditContext& c, MergeDayId id, const std::vector<DivideChoice>& old,
                                     std::vector<DivideChoice> now) {
    std::vector<RowChange> rows;
    for (const DivideChoice& was : old) {
        const auto same = std::find_if(now.begin(), now.end(), [&](const auto& x) { return x.colony == was.colony; });
        if (same == now.end()) {
            rows.push_back(deleted(was));
            continue;
        }
        DivideChoice stays = was;
        stays.parts = same->parts;
        stays.note = same->note.trimmed();
        if (stays != was) rows.push_back(changed(was, stays));
        now.erase(same);
    }
    qint64 next = c.nextId(Table::DivideChoice);
    for (DivideChoice& fresh : now) {
        fresh.id = {next++};
        fresh.mergeDay = id;
        fresh.note = fresh.note.trimmed();
        rows.push_back(added(fresh));
    }
    return rows;
}

MergeDay dayAsked(const EditContext& c, const DividesAsked& asked, const std::optional<MergeDay>& old) {
    MergeDay now = old.value_or(MergeDay{});
    now.yard = asked.yard;
    now.day = asked.day;
    now.variant = asked.variant;
    now.queens = asked.queens;
    now = checkedMergeDay(c, now);
    if (!old) now.id = {c.nextId(Table::MergeDay)};
    return now;
}

} // namespace

ChangeSet askDivides(const EditContext& c, const DividesAsked& asked) {
    const auto old = mergeDayAt(c, asked.yard, asked.day, asked.variant);
    MergeDay now = dayAsked(c, asked, old);
    needChoices(c, asked);
    const auto stood = old ? c.divideChoicesOf(now.id) : std::vector<DivideChoice>();
    ChangeSet change;
    change.rows = choiceChanges(c, now.id, stood, asked.choices);
    if (change.rows.empty() && now.queens == (old ? old->queens : std::nullopt)) return {};
    if (old) needOpen(c, *old);
    change.text = askedText(c, old, now, change.rows);
    if (old) now.revision = old->revision + 1;
    change.rows.insert(change.rows.begin(), old ? changed(*old, now) : added(now));
    return change;
}

ChangeSet printDivides(const EditContext& c, MergeDayId id, const std::vector<DivideStrip>& strips) {
    const MergeDay day = needMergeDay(c, id);
    const auto old = c.divideStripsOf(id);
    std::vector<DivideStrip> now = strips;
    std::set<ColonyId> named;
    for (size_t i = 0; i < now.size(); ++i) {
        needLivesOn(c, now[i].colony, day.day);
        checkRange(now[i].parts, 2, kMostParts, Edits::tr("Parts"));
        if (!named.insert(now[i].colony).second)
            refuse(Edits::tr("%1 is on two strips.").arg(shownName(c, needColony(c, now[i].colony), day.day)));
        now[i].id = {i < old.size() ? old[i].id.value : 0}; // for the comparison
        now[i].mergeDay = id;
        now[i].position = static_cast<int>(i) + 1;
        now[i].outcome.reset();
        now[i].note.clear();
    }
    if (now == old) return {};
    needOpen(c, day);
    ChangeSet change;
    for (const DivideStrip& strip : old) change.rows.push_back(deleted(strip));
    qint64 next = c.nextId(Table::DivideStrip);
    for (DivideStrip& strip : now) {
        strip.id = {next++};
        change.rows.push_back(added(strip));
    }
    change.text = Edits::tr("Put the divides of %1, revision %2, to paper")
                      .arg(mergeDayName(c, day, Case::Within))
                      .arg(day.revision);
    return change;
}

} // namespace core::edit
