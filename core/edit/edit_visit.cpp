#include "core/edit/edit_checks.h"
#include "core/edit/edits.h"
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

bool countsUpper(const Visit& v) { return v.upperBeesTop || v.upperBeesBottom || v.upperStores; }

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

void addSigns(const EditContext& c, const Visit& v, ChangeSet& change) {
    qint64 id = c.nextId(Table::VisitSign);
    for (size_t i = 0; i < wordsOf<Sign>().size(); ++i) {
        const auto sign = static_cast<Sign>(i);
        if (v.signs.has(sign))
            change.rows.push_back({Table::VisitSign, id++, std::nullopt, Row{v.id.value, word(sign)}});
    }
}

} // namespace

ChangeSet logVisit(const EditContext& c, const Visit& typed) {
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
    v.id = VisitId{c.nextId(Table::Visit)};
    ChangeSet change{Edits::tr("Logged the visit of %1 on %2").arg(shownName(c, colony, v.day), isoText(v.day)),
                     {added(v)},
                     {},
                     {},
                     {}};
    addSigns(c, v, change);
    return change;
}

} // namespace core::edit
