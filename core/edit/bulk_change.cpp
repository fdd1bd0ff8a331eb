#include "core/edit/bulk_change.h"

#include "core/base/error.h"
#include "core/edit/after_context.h"
#include "core/edit/edit_checks.h"
#include "core/edit/edits.h"
#include "core/edit/put_right.h"

#include <functional>
#include <map>

namespace core::edit {

namespace {

template <class T> void take(std::optional<T>& value, const Put<T>& put) {
    if (put) value = *put;
}

QString noteWith(const QString& old, const PutNote& put) {
    const QString text = put.text.trimmed();
    if (!put.append || old.isEmpty()) return text;
    return text.isEmpty() ? old : old + u'\n' + text;
}

void needSome(size_t many) {
    if (many == 0) refuse(Edits::tr("Nothing is selected."));
    if (many > kMostAtOnce)
        refuse(Edits::tr("%1 are selected; at most %2 are changed at once.").arg(many).arg(kMostAtOnce));
}

/// `name` begins the sentence where the part is refused.
void inTurn(AfterContext& after, const std::function<QString()>& name,
            const std::function<ChangeSet(const EditContext&)>& part, ChangeSet& all) {
    try {
        const ChangeSet one = part(after);
        after.add(one.rows);
        all.rows.insert(all.rows.end(), one.rows.begin(), one.rows.end());
    } catch (const Error& e) {
        if (e.kind() != Error::Kind::BadData) throw;
        throw Error(e.kind(), Edits::tr("%1: %2").arg(name(), e.userMessage()), e.detail());
    }
}

/// The book as it is after the parts before, for each colony by its own alone: a visit is judged by no other colony's,
/// and many would make the reads of each slow. No part makes new rows, whose ids would have to differ.
class ByColony {
public:
    explicit ByColony(const EditContext& book) : m_book(book) {}
    AfterContext& of(VisitId id) {
        const auto visit = m_book.visit(id);
        return m_after.try_emplace(visit ? visit->colony : ColonyId{}, m_book).first->second;
    }

private:
    const EditContext& m_book;
    std::map<ColonyId, AfterContext> m_after;
};

QString visitName(const EditContext& c, VisitId id) {
    const auto visit = c.visit(id);
    if (!visit) return Edits::tr("A visit");
    return Edits::tr("%1, visit of %2")
        .arg(shownName(c, needColony(c, visit->colony), visit->day), isoText(visit->day));
}

QString colonyName(const EditContext& c, ColonyId id, Day day) {
    const auto colony = c.find<Colony>(id.value);
    return colony ? shownName(c, *colony, day) : Edits::tr("A colony");
}

} // namespace

Visit withPut(Visit v, const VisitPut& put) {
    if (put.day) v.day = *put.day;
    if (put.by) v.by = *put.by;
    if (put.note) v.note = noteWith(v.note, *put.note);
    take(v.boxes, put.boxes);
    take(v.beesTop, put.beesTop);
    take(v.beesBottom, put.beesBottom);
    take(v.upperBeesTop, put.upperBeesTop);
    take(v.upperBeesBottom, put.upperBeesBottom);
    take(v.stores, put.stores);
    take(v.upperStores, put.upperStores);
    take(v.queen, put.queen);
    take(v.broodFrames, put.broodFrames);
    take(v.broodChecked, put.broodChecked);
    take(v.supers, put.supers);
    take(v.gross, put.gross);
    take(v.mites, put.mites);
    take(v.miteSample, put.miteSample);
    return v;
}

Colony withPut(Colony colony, const ColonyPut& put) {
    if (put.box) colony.box = *put.box;
    if (put.broodBoxes) colony.broodBoxes = *put.broodBoxes;
    take(colony.queenBorn, put.queenBorn);
    if (put.note) colony.note = noteWith(colony.note, *put.note);
    return colony;
}

ChangeSet changeVisits(const EditContext& c, const std::vector<VisitId>& visits, const VisitPut& put) {
    needSome(visits.size());
    ByColony after(c);
    ChangeSet all;
    int many = 0;
    for (const VisitId id : visits) {
        const size_t before = all.rows.size();
        inTurn(
            after.of(id), [&] { return visitName(c, id); },
            [&](const EditContext& now) {
                const auto visit = now.visit(id);
                if (!visit) refuse(Edits::tr("it is no longer in the book."));
                return changeVisit(now, withPut(*visit, put));
            },
            all);
        many += all.rows.size() > before ? 1 : 0;
    }
    if (many == 0) return {};
    all.text = many == 1 ? Edits::tr("Changed 1 visit") : Edits::tr("Changed %1 visits").arg(many);
    return all;
}

ChangeSet takeBackVisits(const EditContext& c, const std::vector<VisitId>& visits) {
    needSome(visits.size());
    ByColony after(c);
    ChangeSet all;
    for (const VisitId id : visits)
        inTurn(
            after.of(id), [&] { return visitName(c, id); },
            [&](const EditContext& now) { return takeBackVisit(now, id); }, all);
    all.text =
        visits.size() == 1 ? Edits::tr("Took back 1 visit") : Edits::tr("Took back %1 visits").arg(visits.size());
    return all;
}

ChangeSet logVisits(const EditContext& c, const std::vector<ColonyId>& colonies, const Visit& like) {
    needSome(colonies.size());
    AfterContext after(c);
    ChangeSet all;
    for (const ColonyId colony : colonies)
        inTurn(
            after, [&] { return colonyName(c, colony, like.day); },
            [&](const EditContext& now) {
                Visit visit = like;
                visit.colony = colony;
                return logVisit(now, visit);
            },
            all);
    all.text =
        colonies.size() == 1
            ? Edits::tr("Logged the visit of 1 colony on %1").arg(isoText(like.day))
            : Edits::tr("Logged visits of %1 colonies on %2").arg(QString::number(colonies.size()), isoText(like.day));
    return all;
}

ChangeSet changeColonies(const EditContext& c, const std::vector<ColonyId>& colonies, const ColonyPut& put) {
    needSome(colonies.size());
    AfterContext after(c);
    ChangeSet all;
    int many = 0;
    for (const ColonyId id : colonies) {
        const size_t before = all.rows.size();
        inTurn(
            after, [&] { return colonyName(c, id, c.today()); },
            [&](const EditContext& now) { return changeColony(now, withPut(needColony(now, id), put)); }, all);
        many += all.rows.size() > before ? 1 : 0;
    }
    if (many == 0) return {};
    all.text =
        many == 1 ? Edits::tr("Changed the data of 1 colony") : Edits::tr("Changed the data of %1 colonies").arg(many);
    return all;
}

} // namespace core::edit
