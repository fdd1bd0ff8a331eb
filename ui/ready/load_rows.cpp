#include "ui/ready/load_rows.h"

#include "core/model/kit_words.h"
#include "core/rules/kit_to_load.h"
#include "ui/look/words.h"
#include "ui/ready/ready_rows.h"

namespace ui::ready {

using board::BoardRow;
using board::RowKind;
namespace rules = core::rules;
using rules::KitThing;

namespace {

QString counted(qint64 n, const QString& one, const QString& many) {
    return n == 1 ? one : many.arg(QString::number(n));
}

QString thingText(const core::Snapshot& s, const rules::KitLine& line) {
    switch (line.what) {
    case KitThing::Newspaper:
        return counted(line.count, Ready::tr("1 sheet of newspaper"), Ready::tr("%1 sheets of newspaper"));
    case KitThing::Straps:
        return counted(line.count, Ready::tr("1 strap"), Ready::tr("%1 straps"));
    case KitThing::Barrow:
        return Ready::tr("a barrow");
    case KitThing::QueenCages:
        return counted(line.count, Ready::tr("1 queen cage"), Ready::tr("%1 queen cages"));
    case KitThing::Floors:
        return counted(line.count, Ready::tr("1 floor"), Ready::tr("%1 floors"));
    case KitThing::Lids:
        return counted(line.count, Ready::tr("1 lid"), Ready::tr("%1 lids"));
    case KitThing::InnerCovers:
        return counted(line.count, Ready::tr("1 inner cover"), Ready::tr("%1 inner covers"));
    case KitThing::Boxes:
        return counted(line.count, Ready::tr("1 box with frames"), Ready::tr("%1 boxes with frames"));
    case KitThing::SyrupHalfLitres:
        return Ready::tr("%1 of syrup, 2 : 1")
            .arg(look::feedOf(static_cast<int>(line.count), s.settings.shown().volume));
    case KitThing::WaterSpray:
        return Ready::tr("a water spray");
    case KitThing::Smoker:
        return Ready::tr("a smoker");
    case KitThing::Pencil:
        return Ready::tr("worksheet and pencil");
    }
    return {};
}

/// What it is for, or what comes with it.
QString noteText(KitThing what) {
    switch (what) {
    case KitThing::Barrow:
        return Ready::tr("or a second pair of hands");
    case KitThing::WaterSpray:
        return Ready::tr("so that the paper stays where it is laid");
    case KitThing::Smoker:
        return Ready::tr("with fuel, water to put it out, hive tool, brush, spare gloves");
    default:
        return {};
    }
}

/// Kit of that part that is kept apart, here or in the store room.
int keptApart(const std::vector<rules::KitPile>& piles, core::YardId yard, const QString& part) {
    int count = 0;
    for (const rules::KitPile& pile : piles)
        if (pile.place.part == part && pile.place.state == core::kit::kQuarantined &&
            (!pile.place.yard || pile.place.yard == yard))
            count += pile.count;
    return count;
}

QString offerText(const rules::KitOffer& offer, const QString& yard) {
    QStringList parts;
    if (offer.inYard) parts << Ready::tr("%1 usable in %2").arg(QString::number(*offer.inYard), yard);
    if (offer.inStoreRoom) parts << Ready::tr("%1 usable in the store room").arg(*offer.inStoreRoom);
    return parts.isEmpty() ? Ready::tr("none counted") : parts.join(QStringLiteral(" · "));
}

BoardRow loadRow(const desk::Reading& reading, core::YardIx yard, const rules::KitLine& line,
                 const std::vector<rules::KitPile>& piles) {
    BoardRow row;
    row.title = thingText(reading.snapshot, line);
    if (const QString note = noteText(line.what); !note.isEmpty()) row.lines = {note};
    const QString part = rules::kitPartOf(reading.snapshot, line);
    if (part.isEmpty()) return row;
    const core::SnapYard& here = reading.snapshot.yard(yard);
    const rules::KitOffer offer = rules::kitOffer(piles, here.id, part);
    const bool own = line.what == KitThing::Straps || line.what == KitThing::QueenCages;
    if (own && !offer.counted()) return row; // few count such
    if (line.what == KitThing::Boxes) row.title += Ready::tr(" (%1)").arg(part);
    row.right = offerText(offer, here.name);
    if (offer.counted() && offer.inAll() < line.count)
        row.cautions << Ready::tr("%1 short.").arg(line.count - offer.inAll());
    if (const int apart = keptApart(piles, here.id, part); apart > 0)
        row.cautions << Ready::tr("%1 more in quarantine: not to be used.").arg(apart);
    return row;
}

QString freedText(const core::Snapshot& s, const rules::KitFreed& freed) {
    QStringList parts{counted(freed.floors, Ready::tr("1 floor"), Ready::tr("%1 floors")),
                      counted(freed.lids, Ready::tr("1 lid"), Ready::tr("%1 lids")),
                      counted(freed.innerCovers, Ready::tr("1 inner cover"), Ready::tr("%1 inner covers"))};
    for (const rules::KitLine& line : freed.boxes)
        parts << Ready::tr("%1 (%2)").arg(counted(line.count, Ready::tr("1 box"), Ready::tr("%1 boxes")),
                                          rules::kitPartOf(s, line));
    return Ready::tr("Comes free: %1. It is counted as to be cleaned when the day is written back.")
        .arg(parts.join(QStringLiteral(", ")));
}

} // namespace

void addLoad(const desk::Reading& reading, core::YardIx yard, const std::vector<rules::KitPile>& piles,
             std::vector<BoardRow>& rows) {
    const rules::KitToLoad load = rules::kitToLoad(reading.snapshot, reading.facts, reading.plan, yard);
    if (load.lines.empty()) return;
    BoardRow section;
    section.kind = RowKind::Section;
    section.title = Ready::tr("Load before leaving");
    rows.push_back(section);
    for (const rules::KitLine& line : load.lines) rows.push_back(loadRow(reading, yard, line, piles));
    if (load.freed.floors == 0) return;
    BoardRow note;
    note.kind = RowKind::Note;
    note.lines = {freedText(reading.snapshot, load.freed)};
    rows.push_back(note);
}

} // namespace ui::ready
