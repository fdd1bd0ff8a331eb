#include "core/edit/queens.h"

#include "core/edit/after_context.h"
#include "core/edit/edit_checks.h"
#include "core/edit/judge.h"
#include "core/edit/queen_checks.h"
#include "core/edit/row_change.h"

#include <algorithm>

namespace core::edit {

namespace {

constexpr int kFirstBorn = 1990;
constexpr int kLastBorn = 2100;
constexpr int kLongestTag = 12;

int yearOf(Day day) { return isoText(day).left(4).toInt(); }

void checkMother(const EditContext& c, const Queen& q) {
    if (!q.mother) return;
    const Colony mother = needColony(c, *q.mother);
    if (q.since < mother.since)
        refuse(Edits::tr("Raised from: %1 began on %2; a queen of %3 cannot be of it.")
                   .arg(shownName(c, mother, mother.since), isoText(mother.since), isoText(q.since)));
}

void checkEnd(const EditContext& c, const Colony& colony, const Queen& q) {
    if (q.until.has_value() != q.fate.has_value())
        refuse(q.until ? Edits::tr("What became of her: expected a word where she has an end, found nothing.")
                       : Edits::tr("Until: expected the day where it is said what became of her, found nothing."));
    if (!q.until) return;
    if (*q.until < q.since)
        refuse(Edits::tr("Until: %1 is before she began, on %2.").arg(isoText(*q.until), isoText(q.since)));
    needLife(c, colony, *q.until);
}

/// "superseded", as the sentences of the history say it.
QString fateText(QueenFate fate) {
    return fate == QueenFate::Moved ? Edits::tr("moved to another colony") : word(fate);
}

QString bornText(const Queen& q) { return q.born ? Edits::tr(" (born %1)").arg(*q.born) : QString(); }

/// The one that heads the colony, where `now` begins while she does.
std::optional<Queen> gaveWay(const EditContext& c, const Queen& now) {
    for (const Queen& q : c.queensOf(now.colony))
        if (q.id != now.id && !q.until && q.since <= now.since) return q;
    return std::nullopt;
}

/// Another began where she ended, or the day after.
bool madeRoom(const Queen& before, const Queen& taken) {
    return (before.fate == QueenFate::Superseded || before.fate == QueenFate::Replaced) && before.until &&
           *before.until <= taken.since && taken.since - *before.until <= 1;
}

} // namespace

Queen needQueen(const EditContext& c, QueenId id) {
    auto queen = c.find<Queen>(id.value);
    if (!queen) refuse(Edits::tr("That queen is no longer in the book."));
    return *std::move(queen);
}

QString queenName(const EditContext& c, const Queen& q) {
    return Edits::tr("the queen of %1 since %2").arg(shownName(c, needColony(c, q.colony), q.since), isoText(q.since));
}

Queen checkedQueen(const EditContext& c, const Queen& typed) {
    Queen q = typed;
    for (QString Queen::*text : {&Queen::tag, &Queen::source, &Queen::note}) q.*text = (typed.*text).trimmed();
    const Colony colony = needColony(c, q.colony);
    needLife(c, colony, q.since);
    checkRange(q.born, kFirstBorn, kLastBorn, Edits::tr("Born"));
    if (q.born && *q.born > yearOf(q.since))
        refuse(Edits::tr("Born: %1 is after the day that she begins, %2.")
                   .arg(QString::number(*q.born), isoText(q.since)));
    if (q.tag.size() > kLongestTag)
        refuse(Edits::tr("Number on her disc: expected at most %1 characters, found %2.")
                   .arg(kLongestTag)
                   .arg(q.tag.size()));
    checkMother(c, q);
    checkEnd(c, colony, q);
    return q;
}

void giveWay(const EditContext& c, const Queen& now, const std::optional<QueenBefore>& before, ChangeSet& change) {
    const auto old = gaveWay(c, now);
    if (!old) return;
    if (!before)
        refuse(Edits::tr("%1 has a queen since %2: what became of her?")
                   .arg(shownName(c, needColony(c, now.colony), now.since), isoText(old->since)));
    Queen gone = *old;
    gone.until = before->until.value_or(now.since);
    gone.fate = before->fate;
    checkEnd(c, needColony(c, gone.colony), gone);
    change.rows.push_back(changed(*old, gone));
}

void tellQueensYear(const EditContext& c, const Colony& colony, ChangeSet& change) {
    const auto queens = AfterContext(c, change.rows).queensOf(colony.id);
    if (queens.empty()) return;
    Colony now = colony;
    now.queenBorn = queens.back().born;
    if (now != colony) change.rows.push_back(changed(colony, now));
}

ChangeSet newQueen(const EditContext& c, const Queen& typed, const std::optional<QueenBefore>& before) {
    Queen queen = typed;
    queen.id = QueenId{c.nextId(Table::Queen)};
    queen = checkedQueen(c, queen);
    const Colony colony = needColony(c, queen.colony);
    ChangeSet change;
    giveWay(c, queen, before, change);
    change.rows.push_back(added(queen));
    tellQueensYear(c, colony, change);
    judge(c, change.rows);
    change.text = Edits::tr("New queen of %1 on %2%3")
                      .arg(shownName(c, colony, queen.since), isoText(queen.since), bornText(queen));
    return change;
}

ChangeSet endQueen(const EditContext& c, QueenId id, Day day, QueenFate fate) {
    const Queen old = needQueen(c, id);
    if (old.until)
        refuse(Edits::tr("What became of %1 is in the book: %2 on %3.")
                   .arg(queenName(c, old), fateText(*old.fate), isoText(*old.until)));
    Queen now = old;
    now.until = day;
    now.fate = fate;
    checkEnd(c, needColony(c, now.colony), now);
    ChangeSet change;
    change.rows.push_back(changed(old, now));
    judge(c, change.rows);
    change.text = Edits::tr("Noted of %1: %2 on %3").arg(queenName(c, old), fateText(fate), isoText(day));
    return change;
}

ChangeSet changeQueen(const EditContext& c, const Queen& typed) {
    const Queen old = needQueen(c, typed.id);
    if (typed.colony != old.colony)
        refuse(Edits::tr("A queen's row stays its colony's: move her, or take it back and write it for the other."));
    const Queen now = checkedQueen(c, typed);
    if (now == old) return {};
    ChangeSet change;
    change.rows.push_back(changed(old, now));
    // Nothing that tells a year was touched: what the colony's row says stays.
    if (now.born != old.born || now.since != old.since) tellQueensYear(c, needColony(c, now.colony), change);
    judge(c, change.rows);
    change.text = Edits::tr("Changed %1").arg(queenName(c, old));
    return change;
}

ChangeSet takeBackQueen(const EditContext& c, QueenId id) {
    const Queen old = needQueen(c, id);
    const Colony colony = needColony(c, old.colony);
    const auto all = c.queensOf(old.colony);
    const auto at = std::find_if(all.begin(), all.end(), [&](const Queen& q) { return q.id == id; });
    ChangeSet change;
    change.rows.push_back(deleted(old));
    if (at != all.begin() && std::next(at) == all.end() && madeRoom(*std::prev(at), old)) {
        Queen heads = *std::prev(at);
        heads.until.reset();
        heads.fate.reset();
        change.rows.push_back(changed(*std::prev(at), heads));
    }
    if (all.size() > 1) {
        tellQueensYear(c, colony, change);
    } else if (old.born && colony.queenBorn == old.born) { // it was hers
        Colony now = colony;
        now.queenBorn.reset();
        change.rows.push_back(changed(colony, now));
    }
    judge(c, change.rows);
    change.text = Edits::tr("Took back %1").arg(queenName(c, old));
    return change;
}

ChangeSet takeBackQueenEnd(const EditContext& c, QueenId id) {
    const Queen old = needQueen(c, id);
    if (!old.until) refuse(Edits::tr("What became of %1 is not in the book.").arg(queenName(c, old)));
    Queen now = old;
    now.until.reset();
    now.fate.reset();
    ChangeSet change;
    change.rows.push_back(changed(old, now));
    judge(c, change.rows);
    change.text = Edits::tr("Took back what became of %1 (%2 on %3)")
                      .arg(queenName(c, old), fateText(*old.fate), isoText(*old.until));
    return change;
}

} // namespace core::edit
