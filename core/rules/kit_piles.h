#pragma once

#include "core/model/rows.h"
#include "core/rules/kit_hold.h"

#include <QString>

#include <map>
#include <optional>
#include <set>
#include <tuple>
#include <vector>

// The book keeps kit in lots, one each time that some was counted or came free; people see piles.

namespace core::rules {

/// What makes a pile: kit of one part at one place in one state. Kit that is quarantined, burned or sterilised is kept
/// by the colony that it came off; the rest is not.
struct KitPlace {
    std::optional<YardId> yard; ///< not set: the store room
    QString part;
    QString state; ///< model/kit_words.h
    std::optional<ColonyId> colony = {};
    friend bool operator==(const KitPlace&, const KitPlace&) = default;
    friend bool operator<(const KitPlace& a, const KitPlace& b) {
        return std::tie(a.yard, a.part, a.state, a.colony) < std::tie(b.yard, b.part, b.state, b.colony);
    }
};

struct KitPile {
    KitPlace place;
    int count = 0;
    std::optional<KitHold> hold = {}; ///< of `place.colony`
};

/// In what pile a lot lies. What came off a colony that is held now lies in quarantine, whatever was written of it.
KitPlace pileOf(const Kit& lot, const std::map<ColonyId, KitHold>& held);

/// Colonies that lots came off.
std::set<ColonyId> coloniesOf(const std::vector<Kit>& lots);

/// By yard (the store room first), part, state in the order in which states are shown, colony. Piles of 0 that somebody
/// counted are among them.
std::vector<KitPile> kitPiles(const std::vector<Kit>& lots, const std::map<ColonyId, KitHold>& held);

/// Usable kit of that part, which alone is offered: in the yard, and in the store room. Not set: none was counted.
struct KitOffer {
    std::optional<int> inYard, inStoreRoom;
    int inAll() const { return inYard.value_or(0) + inStoreRoom.value_or(0); }
    bool counted() const { return inYard || inStoreRoom; }
};
KitOffer kitOffer(const std::vector<KitPile>& piles, YardId yard, const QString& part);

} // namespace core::rules
