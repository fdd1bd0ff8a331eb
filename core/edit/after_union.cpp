#include "core/edit/after_union.h"

#include "core/edit/after_context.h"
#include "core/edit/edit_checks.h"
#include "core/edit/edits.h"
#include "core/edit/put_right.h"
#include "core/edit/strips_out.h"

#include <QStringList>

namespace core::edit {

namespace {

/// The visit of that day, or one to be made.
Visit visitOf(const EditContext& c, ColonyId colony, Day day, const QString& by) {
    needColony(c, colony);
    Visit v = c.visitOn(colony, day).value_or(Visit{});
    v.colony = colony;
    v.day = day;
    if (v.by.isEmpty()) v.by = by.trimmed();
    return v;
}

void addNote(Visit& v, const QStringList& sentences) {
    QStringList all{v.note};
    for (const QString& sentence : sentences) all << sentence.trimmed();
    all.removeAll(QString());
    v.note = all.join(u' ');
}

ChangeSet put(const EditContext& c, const Visit& v) { return v.id.value > 0 ? changeVisit(c, v) : logVisit(c, v); }

/// One that was answered, as yes or no.
void answer(QStringList& out, std::optional<bool> value, const QString& yes, const QString& no) {
    if (value) out << (*value ? yes : no);
}

std::optional<QueenSeen> queenOf(const UnionSeen& seen) {
    if (seen.eggs == true) return QueenSeen::Eggs;
    if (seen.oneQueen == true) return QueenSeen::Seen;
    if (seen.eggs || seen.oneQueen) return QueenSeen::Unknown;
    return std::nullopt;
}

QString shown(const EditContext& c, ColonyId colony, Day day) { return shownName(c, needColony(c, colony), day); }

void addBrood(Visit& v, const Loss& loss) {
    switch (loss.brood) {
    case BroodFound::NotLooked:
        break;
    case BroodFound::Healthy:
        if (loss.framesLooked) v.broodChecked = loss.framesLooked;
        break;
    case BroodFound::Doubtful:
        v.signs.add(Sign::BroodDoubt);
        break;
    case BroodFound::SignsOfAfb:
        v.signs.add(Sign::Afb);
        break;
    case BroodFound::SignsOfEfb:
        v.signs.add(Sign::Efb);
        break;
    }
}

QString broodText(const Loss& loss) {
    switch (loss.brood) {
    case BroodFound::NotLooked:
        return Edits::tr("Brood not looked at.");
    case BroodFound::Healthy:
        return Edits::tr("No signs of disease seen in the brood.");
    default:
        return {};
    }
}

QString causeText(UnionFailure how) {
    switch (how) {
    case UnionFailure::Queenless:
        return Edits::tr("queenless after the union");
    case UnionFailure::Fought:
        return Edits::tr("fought after the union");
    case UnionFailure::Absconded:
        return Edits::tr("absconded after the union");
    case UnionFailure::Dead:
        break;
    }
    return Edits::tr("after the union");
}

} // namespace

ChangeSet logUnionCheck(const EditContext& c, const UnionSeen& seen) {
    QStringList parts;
    answer(parts, seen.paperGone, Edits::tr("paper gone"), Edits::tr("paper not gone"));
    answer(parts, seen.oneQueen, Edits::tr("one queen"), Edits::tr("no queen seen"));
    answer(parts, seen.eggs, Edits::tr("eggs"), Edits::tr("no eggs"));
    if (parts.isEmpty()) refuse(Edits::tr("Nothing was looked at yet: paper, queen or eggs, one at least."));
    Visit v = visitOf(c, seen.colony, seen.day, seen.by);
    if (const auto queen = queenOf(seen)) v.queen = queen;
    const QString answers = parts.join(QStringLiteral(", "));
    addNote(v, {Edits::tr("Union check: %1.").arg(answers), seen.note});
    ChangeSet change = put(c, v);
    if (!change.empty())
        change.text = Edits::tr("Checked the union of %1 on %2: %3")
                          .arg(shown(c, seen.colony, seen.day), isoText(seen.day), answers);
    return change;
}

ChangeSet logTakenOut(const EditContext& c, ColonyId colony, Day day, const QString& product, const QString& by) {
    Visit v = visitOf(c, colony, day, by);
    addNote(v, {Edits::tr("Taken out: %1.").arg(product)});
    ChangeSet change = put(c, v);
    noteStripsOut(c, colony, day, product, by, change);
    change.text = Edits::tr("Took %1 out of %2 on %3").arg(product, shown(c, colony, day), isoText(day));
    return change;
}

ChangeSet recordLoss(const EditContext& c, const Loss& loss) {
    if (loss.framesLooked && loss.brood != BroodFound::Healthy)
        refuse(Edits::tr("Frames of brood are counted where they looked healthy."));
    Visit v = visitOf(c, loss.colony, loss.day, loss.by);
    if (v.id.value == 0) {
        v.beesTop = Quarters{0};
        if (c.boxesAt(loss.colony, loss.day) == 2) v.upperBeesTop = Quarters{0};
        v.queen = QueenSeen::None;
    }
    addBrood(v, loss);
    const QString cause = loss.cause.trimmed();
    addNote(v, {cause.isEmpty() ? Edits::tr("Found without bees, cause not known.")
                                : Edits::tr("Found without bees: %1.").arg(cause),
                broodText(loss), loss.note});
    ChangeSet change = put(c, v);
    const ChangeSet end = endColony(AfterContext(c, change.rows), loss.colony, loss.day, EndKind::Dead);
    change.rows.insert(change.rows.end(), end.rows.begin(), end.rows.end());
    change.text = cause.isEmpty() ? end.text : Edits::tr("%1. Cause: %2").arg(end.text, cause);
    return change;
}

ChangeSet recordFailure(const EditContext& c, const Failure& failure) {
    const bool lost = failure.how == UnionFailure::Absconded || failure.how == UnionFailure::Dead;
    Loss loss = failure.loss;
    if (loss.cause.trimmed().isEmpty()) loss.cause = causeText(failure.how);
    if (lost) return recordLoss(c, loss);
    Visit v = visitOf(c, loss.colony, loss.day, loss.by);
    v.queen = failure.how == UnionFailure::Queenless ? QueenSeen::None : failure.queen;
    addNote(v, {Edits::tr("Found %1.").arg(loss.cause), loss.note});
    ChangeSet change = put(c, v);
    change.text = Edits::tr("Found %1 %2 on %3").arg(shown(c, loss.colony, loss.day), loss.cause, isoText(loss.day));
    return change;
}

} // namespace core::edit
