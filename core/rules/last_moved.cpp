#include "core/rules/last_moved.h"

namespace core::rules {

std::vector<std::optional<Day>> lastMoved(const Snapshot& s) {
    std::vector<std::optional<Day>> out(s.livingCount());
    const auto mark = [&](ColonyIx colony, Day day) {
        const auto i = static_cast<size_t>(colony.value);
        if (i < out.size() && (!out[i] || *out[i] < day)) out[i] = day;
    };
    for (const SnapTransfer& t : s.transfers) {
        if (t.what == TransferKind::Feed) continue;
        mark(t.from, t.day);
        mark(t.to, t.day);
    }
    for (const SnapLineage& l : s.lineage)
        if (l.how == LineageHow::ShakenOut) mark(l.into, l.day);
    return out;
}

} // namespace core::rules
