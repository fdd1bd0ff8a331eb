#include "ui/pick/find_labels.h"

#include "core/base/natural_order.h"

#include <algorithm>
#include <tuple>

namespace ui::pick {

namespace {
constexpr int kNot = 3;

int rankOf(const QString& label, const QString& typed) {
    const auto at = core::folded(label).indexOf(typed);
    if (at < 0) return kNot;
    return at > 0 ? 2 : label.size() == typed.size() ? 0 : 1;
}
} // namespace

std::vector<Found> findLabels(const desk::Reading& reading, std::optional<core::YardIx> here, const QString& typed) {
    std::vector<Found> out;
    const QString asked = core::folded(typed.trimmed());
    if (asked.isEmpty()) return out;
    for (const core::rules::ColonyFacts& f : reading.facts) {
        const core::SnapColony& colony = reading.snapshot.colony(f.colony);
        const int rank = rankOf(colony.label, asked);
        const bool inYard = here && f.yard == *here;
        if (rank == kNot || (rank == 2 && !inYard)) continue;
        const QString yard = f.yard.value >= 0 ? reading.snapshot.yard(f.yard).name : QString();
        out.push_back({colony.id, colony.shown, inYard, yard, rank});
    }
    std::stable_sort(out.begin(), out.end(), [](const Found& a, const Found& b) {
        return std::tuple(!a.here, a.rank) < std::tuple(!b.here, b.rank);
    });
    return out;
}

} // namespace ui::pick
