#include "core/edit/bulk_change.h"
#include "tests/edit/every_edit.h"

#include <algorithm>

// Several visits or colonies at once, among the random edits.

namespace tests::edit {

namespace {

VisitPut put(RandomEdits& some) {
    VisitPut out;
    if (some.upTo(2) == 0) out.supers = std::optional(some.upTo(2));
    if (some.upTo(2) == 0) out.queen = Put<QueenSeen>{std::optional<QueenSeen>{}};
    if (some.upTo(3) == 0) out.broodChecked = std::optional(3);
    if (some.upTo(3) == 0) out.boxes = std::optional(1);
    if (some.upTo(2) == 0) out.note = PutNote{QStringLiteral("fed"), some.upTo(1) == 0};
    if (some.upTo(5) == 0) out.day = dayOf(2026, 6, 1) + some.upTo(20);
    return out;
}

} // namespace

std::pair<std::string, ChangeSet> EveryEdit::together(const EditContext& c) {
    std::vector<VisitId> visits;
    const qint64 last = c.nextId(Table::Visit) - 1;
    for (int i = 0; i < 3 && last > 0; ++i)
        visits.push_back(VisitId{1 + upTo(static_cast<int>(std::min<qint64>(last, 40)) - 1)});
    std::ranges::sort(visits);
    visits.erase(std::ranges::unique(visits).begin(), visits.end());
    std::vector<ColonyId> colonies{colony(c)};
    if (const ColonyId other = colony(c); other != colonies.front()) colonies.push_back(other);
    switch (upTo(3)) {
    case 0:
        return {"takeBackVisits", takeBackVisits(c, visits)};
    case 1: {
        Visit like;
        like.day = day();
        like.supers = upTo(2);
        return {"logVisits", logVisits(c, colonies, like)};
    }
    case 2: {
        ColonyPut data;
        if (upTo(1)) data.queenBorn = std::optional(2020 + upTo(5));
        if (upTo(2) == 0) data.box = BoxKindId{1 + upTo(4)};
        if (upTo(2) == 0) data.broodBoxes = 1 + upTo(1);
        return {"changeColonies", changeColonies(c, colonies, data)};
    }
    default:
        return {"changeVisits", changeVisits(c, visits, put(m_some))};
    }
}

} // namespace tests::edit
