#include "core/edit/after_context.h"
#include "core/edit/edit_checks.h"
#include "core/edit/edits.h"
#include "core/edit/judge.h"
#include "core/edit/put_right.h"
#include "core/edit/row_change.h"

namespace core::edit {

namespace {

constexpr int kMostFrames = 24;
constexpr int kMostSupers = 10;
constexpr int kHeaviestDag = 30'000;
constexpr int kMostMites = 10'000;

void checkFrames(std::optional<Quarters> value, int frames, const QString& field) {
    if (!value || (value->value >= 0 && value->value <= frames * 4)) return;
    refuse(Edits::tr("%1: %2 is not from 0 to %3, the frames of the box.")
               .arg(field, framesText(*value), QString::number(frames)));
}

void checkFrameCounts(const Visit& v, int frames) {
    checkFrames(v.beesTop, frames, Edits::tr("Bees seen from above"));
    checkFrames(v.beesBottom, frames, Edits::tr("Bees seen from below"));
    checkFrames(v.upperBeesTop, frames, Edits::tr("Bees of the upper box seen from above"));
    checkFrames(v.upperBeesBottom, frames, Edits::tr("Bees of the upper box seen from below"));
    checkFrames(v.stores, frames, Edits::tr("Frames of stores"));
    checkFrames(v.upperStores, frames, Edits::tr("Frames of stores in the upper box"));
}

void checkBrood(const Visit& v) {
    checkRange(v.broodFrames, 0, kMostFrames, Edits::tr("Brood frames"));
    checkRange(v.broodChecked, 0, kMostFrames, Edits::tr("Brood frames examined for disease"));
    if (v.broodFrames && v.broodChecked && *v.broodChecked > *v.broodFrames)
        refuse(Edits::tr("Brood frames examined for disease: %1 is more than the %2 brood frames.")
                   .arg(*v.broodChecked)
                   .arg(*v.broodFrames));
}

void checkMites(const Visit& v) {
    checkRange(v.mites, 0, kMostMites, Edits::tr("Mites"));
    checkRange(v.miteSample, 1, kMostMites, Edits::tr("Bees in the mite sample"));
    if (v.mites.has_value() != v.miteSample.has_value())
        refuse(Edits::tr("Mites: expected the mites and the bees in the sample, or neither."));
}

void checkRanges(const Visit& v, int frames) {
    checkRange(v.boxes, 1, 2, Edits::tr("Brood boxes"));
    checkFrameCounts(v, frames);
    checkBrood(v);
    checkRange(v.supers, 0, kMostSupers, Edits::tr("Honey boxes"));
    if (v.gross && (v.gross->value < 0 || v.gross->value > kHeaviestDag))
        refuse(Edits::tr("Weight: %1 kg is not from 0 to 300 kg.").arg(kilogramsText(*v.gross)));
    checkMites(v);
}

/// With this visit's `boxes`, a later visit would count a box that is not there.
void checkLater(const EditContext& c, const Visit& v) {
    for (const Visit& later : c.visitsOf(v.colony, -1)) {
        if (later.day <= v.day) break;
        if (countsUpper(later) && !later.boxes && c.boxesSince(v.colony, later.day) <= v.day)
            refuse(Edits::tr("Brood boxes: the visit of %1 counts an upper box.").arg(isoText(later.day)));
    }
}

void checkBoxes(const EditContext& c, const Visit& v) {
    const int boxes = c.boxesAt(v.colony, v.day, v.boxes);
    if (boxes == 1 && countsUpper(v))
        refuse(Edits::tr("Upper box: the colony is in one brood box that day; expected no counts of an upper box."));
    if (v.boxes == 1) checkLater(c, v);
}

/// Rows of the signs that `v` has and `there` (its rows in the book) do not, and the other way round.
void writeSigns(const EditContext& c, const Visit& v, const std::vector<std::pair<qint64, Row>>& there,
                ChangeSet& change) {
    Signs kept;
    for (const auto& [id, cells] : there) {
        const auto sign = fromWord<Sign>(std::get<QString>(cells.at(1)));
        if (sign && v.signs.has(*sign))
            kept.add(*sign);
        else
            change.rows.push_back({Table::VisitSign, id, cells, std::nullopt});
    }
    qint64 id = c.nextId(Table::VisitSign);
    for (size_t i = 0; i < wordsOf<Sign>().size(); ++i) {
        const auto sign = static_cast<Sign>(i);
        if (v.signs.has(sign) && !kept.has(sign))
            change.rows.push_back({Table::VisitSign, id++, std::nullopt, Row{v.id.value, word(sign)}});
    }
}

/// What is typed of a visit, new or not; its id is set. `c`: the book without it.
Visit checkedVisit(const EditContext& c, const Visit& typed) {
    Visit v = typed;
    v.by = typed.by.trimmed();
    v.note = typed.note.trimmed();
    const Colony colony = needColony(c, v.colony);
    needLife(c, colony, v.day);
    if (c.visitOn(v.colony, v.day))
        refuse(Edits::tr("%1 has a visit on %2 already; expected one visit a colony a day.")
                   .arg(shownName(c, colony, v.day), isoText(v.day)));
    const auto box = c.boxKind(colony.box);
    checkRanges(v, box ? box->frames : kMostFrames);
    checkBoxes(c, v);
    return v;
}

Visit needVisit(const EditContext& c, VisitId id) {
    auto visit = c.visit(id);
    if (!visit) refuse(Edits::tr("That visit is no longer in the book."));
    return *std::move(visit);
}

QString shownColony(const EditContext& c, ColonyId id, Day day) { return shownName(c, needColony(c, id), day); }

} // namespace

ChangeSet logVisit(const EditContext& c, const Visit& typed) {
    Visit fresh = typed;
    fresh.id = VisitId{c.nextId(Table::Visit)};
    const Visit v = checkedVisit(c, fresh);
    ChangeSet change;
    change.text = Edits::tr("Logged the visit of %1 on %2").arg(shownColony(c, v.colony, v.day), isoText(v.day));
    change.rows.push_back(added(v));
    writeSigns(c, v, {}, change);
    return change;
}

ChangeSet changeVisit(const EditContext& c, const Visit& typed) {
    const Visit old = needVisit(c, typed.id);
    if (typed.colony != old.colony)
        refuse(Edits::tr("A visit stays its colony's: take it back and log it for the other."));
    const Visit now = checkedVisit(AfterContext(c, {deleted(old)}), typed);
    ChangeSet change;
    if (toRow(now) != toRow(old)) change.rows.push_back(changed(old, now));
    writeSigns(c, now, c.signRows(old.id), change);
    if (change.empty()) return {};
    judgeCounts(AfterContext(c, change.rows), needColony(c, old.colony));
    const QString name = shownColony(c, old.colony, old.day);
    change.text = old.day == now.day
                      ? Edits::tr("Changed the visit of %1 on %2").arg(name, isoText(old.day))
                      : Edits::tr("Moved the visit of %1 from %2 to %3").arg(name, isoText(old.day), isoText(now.day));
    return change;
}

ChangeSet takeBackVisit(const EditContext& c, VisitId id) {
    const Visit old = needVisit(c, id);
    ChangeSet change;
    for (const auto& [sign, cells] : c.signRows(id)) change.rows.push_back({Table::VisitSign, sign, cells, {}});
    change.rows.push_back(deleted(old));
    judgeCounts(AfterContext(c, change.rows), needColony(c, old.colony));
    change.text =
        Edits::tr("Took back the visit of %1 on %2").arg(shownColony(c, old.colony, old.day), isoText(old.day));
    return change;
}

} // namespace core::edit
