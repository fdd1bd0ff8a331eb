#include "ui/spring/spring_words.h"

#include "ui/look/words.h"

namespace ui::spring {

QString queensText(core::DivideQueens queens) {
    switch (queens) {
    case core::DivideQueens::Cells:
        return Spring::tr("sealed queen cells");
    case core::DivideQueens::Bought:
        return Spring::tr("bought queens");
    case core::DivideQueens::Own:
        break;
    }
    return Spring::tr("raised by the bees");
}

QString checkText(core::rules::DivideCheckKind what) {
    using core::rules::DivideCheckKind;
    switch (what) {
    case DivideCheckKind::CellEmerged:
        return Spring::tr("queen cell open");
    case DivideCheckKind::QueenOut:
        return Spring::tr("queen out of her cage");
    case DivideCheckKind::Mated:
        return Spring::tr("may be mated");
    case DivideCheckKind::Eggs:
        return Spring::tr("eggs");
    case DivideCheckKind::WorkerBrood:
        break;
    }
    return Spring::tr("workers' brood");
}

QString placeText(const core::rules::NewPlace& place, core::MmPoint mother, core::LengthUnit unit) {
    const QString way = look::wayText(mother, place.at, unit);
    const QString text =
        place.stand ? Spring::tr("stand %1, %2").arg(place.name, way) : Spring::tr("a new stand, %1").arg(way);
    return place.nearHeld ? Spring::tr("%1 (a held colony is near)").arg(text) : text;
}

} // namespace ui::spring
