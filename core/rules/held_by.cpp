#include "core/rules/held_by.h"

#include <algorithm>
#include <set>
#include <utility>

namespace core::rules {

namespace {

bool among(std::span<const SignSeen> seen, ColonyIx colony, Day day) {
    return std::ranges::any_of(seen, [&](const SignSeen& at) { return at.colony == colony && at.day == day; });
}

/// The same book without what was seen.
Snapshot without(const Snapshot& s, std::span<const SignSeen> seen) {
    Snapshot out = s;
    for (SnapSign& sign : out.signs)
        if (among(seen, sign.colony, sign.day)) sign.signs = {};
    for (SnapCheck& check : out.checks)
        if (among(seen, check.colony, check.day)) check.signs = {};
    std::erase_if(out.results, [&](const SnapResult& result) {
        return result.verdict == Verdict::Positive && among(seen, result.colony, result.day);
    });
    return out;
}

/// Held for what was seen of it or of another, not for want of a check alone.
bool forDisease(HoldKind kind) { return kind != HoldKind::BroodNotChecked && kind != HoldKind::Order; }

} // namespace

std::vector<ColonyIx> heldBy(const Snapshot& s, std::span<const Hold> now, std::span<const SignSeen> seen) {
    std::set<std::pair<ColonyIx, HoldKind>> before;
    for (const Hold& hold : holds(without(s, seen))) before.emplace(hold.colony, hold.kind);
    const auto isSeen = [&](ColonyIx colony) {
        return std::ranges::any_of(seen, [&](const SignSeen& at) { return at.colony == colony; });
    };
    std::set<ColonyIx> held;
    for (const Hold& hold : now) {
        const bool own = forDisease(hold.kind) && isSeen(hold.colony);
        if (own || std::ranges::any_of(hold.sources, isSeen) || !before.contains({hold.colony, hold.kind}))
            held.insert(hold.colony);
    }
    return {held.begin(), held.end()};
}

} // namespace core::rules
