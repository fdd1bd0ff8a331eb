#include "core/base/natural_order.h"
#include "core/exchange/cell_text.h"
#include "core/exchange/same_as_book.h"

#include <algorithm>

namespace core::exchange {

namespace {

/// The carry of that colony on that day; −1 where there is none.
int carryOn(const Ledger& ledger, int colony, Day day) {
    for (const int i : ledger.colonies[static_cast<size_t>(colony)].stays) {
        const Placement& row = ledger.stays[static_cast<size_t>(i)].row;
        if (!row.first && row.since == day) return i;
    }
    return -1;
}

bool samePlacement(Ledger& ledger, const PlacementDraft& draft, const StayEntry& stay) {
    const StandEntry& stand = ledger.stands[static_cast<size_t>(stay.stand)];
    const QString& yard = ledger.yards[static_cast<size_t>(stand.yard)].row.name;
    const auto metres = [](qint32 mm) { return metresText(Millimetres{mm}); };
    const auto name = [](const QString& given, const QString& stored) {
        return folded(given) == folded(stored) ? stored : given;
    };
    return sameAsBook(ledger, draft.at, ledger.shown(stay.colony) + u' ' + isoText(draft.day),
                      {{"yard", name(draft.place.yard, yard), yard},
                       {"stand", name(draft.place.stand, stand.row.name), stand.row.name},
                       {"x_m", metres(draft.place.point.x), metres(stand.row.at.x)},
                       {"y_m", metres(draft.place.point.y), metres(stand.row.at.y)},
                       {"heading_deg", cellText(draft.place.headingDeg), cellText(stay.row.headingDeg)}});
}

void addCarry(Ledger& ledger, const PlacementDraft& draft, int colony) {
    const int yard = ledger.yardNamed(draft.place.yard, draft.at);
    const int stand = yard < 0 ? -1 : ledger.standFor(yard, draft.place, draft.at);
    if (stand < 0) return;
    StayEntry stay;
    stay.at = draft.at;
    stay.colony = colony;
    stay.stand = stand;
    stay.row.headingDeg = draft.place.headingDeg;
    stay.row.since = draft.day;
    ledger.addStay(std::move(stay));
    ledger.colonies[static_cast<size_t>(colony)].touched = true;
    ++ledger.count(FileKind::Placements).added;
}

} // namespace

void mergePlacements(Ledger& ledger) {
    for (const PlacementDraft& draft : ledger.drafts.placements) {
        ledger.ticker.tick();
        const int colony = ledger.colonyNamed(draft.colony, draft.day, draft.at, "colony");
        if (colony < 0) continue;
        const int found = carryOn(ledger, colony, draft.day);
        if (found < 0) {
            addCarry(ledger, draft, colony);
            continue;
        }
        const StayEntry& stay = ledger.stays[static_cast<size_t>(found)];
        if (!stay.at.inBook())
            faultTwice(ledger, draft.at, "date",
                       Say::tr("a placement of %1 on %2").arg(ledger.shown(colony), isoText(draft.day)), stay.at);
        else if (samePlacement(ledger, draft, stay))
            ++ledger.count(FileKind::Placements).passedOver;
    }
}

void settleStays(Ledger& ledger) {
    for (ColonyEntry& colony : ledger.colonies) {
        if (!colony.touched) continue;
        const auto stayOf = [&](int i) -> StayEntry& { return ledger.stays[static_cast<size_t>(i)]; };
        std::ranges::sort(colony.stays, [&](int a, int b) {
            return std::pair(stayOf(a).row.since, !stayOf(a).row.first) <
                   std::pair(stayOf(b).row.since, !stayOf(b).row.first);
        });
        for (size_t i = 0; i < colony.stays.size(); ++i) {
            StayEntry& stay = stayOf(colony.stays[i]);
            const bool last = i + 1 == colony.stays.size();
            stay.until = last ? colony.row.ended : std::optional(stayOf(colony.stays[i + 1]).row.since);
            if (stay.row.first) continue;
            if (stay.at.inBook()) {
                // A carry of the book can only fall after an end that the files give.
                if (colony.row.ended && stay.row.since > *colony.row.ended)
                    ledger.checkLife(stay.colony, stay.row.since, colony.endAt, colony.endColumn);
            } else {
                ledger.checkLife(stay.colony, stay.row.since, stay.at, "date");
            }
        }
    }
}

void checkStands(Ledger& ledger) {
    std::vector<std::vector<int>> onStand(ledger.stands.size());
    for (size_t i = 0; i < ledger.stays.size(); ++i)
        onStand[static_cast<size_t>(ledger.stays[i].stand)].push_back(static_cast<int>(i));
    constexpr Day kNever{INT_MAX};
    const auto stayOf = [&](int i) -> const StayEntry& { return ledger.stays[static_cast<size_t>(i)]; };
    const auto untilOf = [&](int i) { return stayOf(i).until.value_or(kNever); };
    for (std::vector<int>& stays : onStand) {
        std::ranges::sort(stays, [&](int a, int b) {
            return std::tuple(stayOf(a).row.since, untilOf(a), a) < std::tuple(stayOf(b).row.since, untilOf(b), b);
        });
        int longest = -1;
        for (const int i : stays) {
            if (longest >= 0 && stayOf(i).row.since < untilOf(longest)) {
                const int late = stayOf(i).at.inBook() ? longest : i;
                const int other = late == i ? longest : i;
                const StandEntry& stand = ledger.stands[static_cast<size_t>(stayOf(i).stand)];
                ledger.fault(stayOf(late).at, "stand",
                             Say::tr("two colonies on stand “%1” of “%2” on %3: “%4” and “%5”, expected one a day")
                                 .arg(stand.row.name, ledger.yards[static_cast<size_t>(stand.yard)].row.name,
                                      isoText(stayOf(i).row.since), ledger.shown(stayOf(late).colony),
                                      ledger.shown(stayOf(other).colony)));
            }
            if (longest < 0 || untilOf(i) > untilOf(longest)) longest = i;
        }
    }
}

} // namespace core::exchange
