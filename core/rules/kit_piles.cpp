#include "core/rules/kit_piles.h"

#include "core/base/natural_order.h"
#include "core/model/kit_words.h"

#include <algorithm>

namespace core::rules {

namespace {

/// Where a state stands among those shown.
qsizetype rankOf(const QString& state) { return kit::states().indexOf(state); }

bool before(const KitPile& a, const KitPile& b) {
    if (a.place.yard != b.place.yard) return a.place.yard < b.place.yard;
    if (a.place.part != b.place.part) return naturalCompare(a.place.part, b.place.part) < 0;
    if (a.place.state != b.place.state) return rankOf(a.place.state) < rankOf(b.place.state);
    return a.place.colony < b.place.colony;
}

} // namespace

KitPlace pileOf(const Kit& lot, const std::map<ColonyId, KitHold>& held) {
    KitPlace place{lot.yard, lot.part, lot.state, lot.colony};
    if (kit::keepsColony(place.state)) return place;
    if (lot.colony && held.contains(*lot.colony))
        place.state = kit::kQuarantined;
    else
        place.colony.reset();
    return place;
}

std::set<ColonyId> coloniesOf(const std::vector<Kit>& lots) {
    std::set<ColonyId> colonies;
    for (const Kit& lot : lots)
        if (lot.colony) colonies.insert(*lot.colony);
    return colonies;
}

std::vector<KitPile> kitPiles(const std::vector<Kit>& lots, const std::map<ColonyId, KitHold>& held) {
    std::map<KitPlace, int> counts;
    for (const Kit& lot : lots) counts[pileOf(lot, held)] += lot.count;
    std::vector<KitPile> piles;
    for (const auto& [place, count] : counts) {
        const auto hold = place.colony ? held.find(*place.colony) : held.end();
        piles.push_back({place, count, hold == held.end() ? std::nullopt : std::optional(hold->second)});
    }
    std::sort(piles.begin(), piles.end(), before);
    return piles;
}

KitOffer kitOffer(const std::vector<KitPile>& piles, YardId yard, const QString& part) {
    KitOffer offer;
    for (const KitPile& pile : piles) {
        if (pile.place.state != kit::kUsable || pile.place.part != part) continue;
        if (!pile.place.yard) offer.inStoreRoom = pile.count;
        if (pile.place.yard == yard) offer.inYard = pile.count;
    }
    return offer;
}

} // namespace core::rules
