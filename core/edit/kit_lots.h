#pragma once

#include "core/edit/change_set.h"
#include "core/edit/edit_context.h"
#include "core/rules/kit_piles.h"

#include <map>
#include <vector>

namespace core::edit {

/// The lots of one place and part, and which of their colonies are held today.
struct KitLots {
    std::vector<Kit> all; ///< by id
    std::map<ColonyId, rules::KitHold> held;

    std::vector<Kit> of(const rules::KitPlace& pile) const; ///< those without a colony first
    int countOf(const rules::KitPlace& pile) const;
};
/// Reads the book's holds only where a lot names a colony, or `also` is set.
KitLots kitLots(const EditContext& c, std::optional<YardId> yard, const QString& part,
                std::optional<ColonyId> also = {});

/// A part of a lot.
struct KitPiece {
    Kit lot;
    int count = 0;
};
/// The first `count` of the lots.
std::vector<KitPiece> firstOf(const std::vector<Kit>& lots, int count);
/// Adds to the change: that piece is gone from its lot.
void takeAway(const KitPiece& piece, ChangeSet& change);

/// "3 × lid, usable, in North": for sentences.
QString kitText(int count, const QString& part);
QString kitPlaceText(const EditContext& c, std::optional<YardId> yard);

} // namespace core::edit
