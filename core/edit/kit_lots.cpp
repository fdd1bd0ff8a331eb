#include "core/edit/kit_lots.h"

#include "core/edit/edit_checks.h"
#include "core/edit/row_change.h"

#include <algorithm>
#include <numeric>

namespace core::edit {

std::vector<Kit> KitLots::of(const rules::KitPlace& pile) const {
    std::vector<Kit> lots;
    for (const Kit& lot : all)
        if (rules::pileOf(lot, held) == pile) lots.push_back(lot);
    std::stable_partition(lots.begin(), lots.end(), [](const Kit& lot) { return !lot.colony; });
    return lots;
}

int KitLots::countOf(const rules::KitPlace& pile) const {
    const auto lots = of(pile);
    return std::accumulate(lots.begin(), lots.end(), 0, [](int sum, const Kit& lot) { return sum + lot.count; });
}

KitLots kitLots(const EditContext& c, std::optional<YardId> yard, const QString& part, std::optional<ColonyId> also) {
    KitLots lots;
    c.each<Kit>([&](const Kit& lot) {
        if (lot.yard == yard && lot.part == part) lots.all.push_back(lot);
    });
    auto colonies = rules::coloniesOf(lots.all);
    if (also) colonies.insert(*also);
    if (!colonies.empty()) lots.held = rules::kitHolds(c.snapshot(c.today()), colonies);
    return lots;
}

std::vector<KitPiece> firstOf(const std::vector<Kit>& lots, int count) {
    std::vector<KitPiece> pieces;
    for (const Kit& lot : lots) {
        const int some = std::min(count, lot.count);
        if (some > 0) pieces.push_back({lot, some});
        count -= some;
    }
    return pieces;
}

void takeAway(const KitPiece& piece, ChangeSet& change) {
    Kit left = piece.lot;
    left.count -= piece.count;
    change.rows.push_back(left.count == 0 ? deleted(piece.lot) : changed(piece.lot, left));
}

QString kitText(int count, const QString& part) { return QStringLiteral("%1 × %2").arg(QString::number(count), part); }

QString kitPlaceText(const EditContext& c, std::optional<YardId> yard) {
    return yard ? needYard(c, *yard).name : Edits::tr("the store room");
}

} // namespace core::edit
