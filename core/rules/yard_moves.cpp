#include "core/rules/yard_moves.h"

#include <algorithm>
#include <map>
#include <set>

namespace core::rules {

namespace {

struct Move {
    ColonyIx colony;
    YardIx from, to;
};

std::optional<YardIx> yardOf(const Snapshot& s, YardId id) {
    for (size_t i = 0; i < s.yards.size(); ++i)
        if (s.yards[i].id == id) return YardIx{static_cast<qint32>(i)};
    return std::nullopt;
}

std::vector<Move> movesIn(const Snapshot& s, std::span<const std::pair<ColonyId, YardId>> asked) {
    std::map<ColonyId, YardId> to(asked.begin(), asked.end());
    std::vector<Move> out;
    for (size_t i = 0; i < s.livingCount(); ++i) {
        const ColonyIx colony{static_cast<qint32>(i)};
        const auto found = to.find(s.colony(colony).id);
        const SnapStay* stay = found == to.end() ? nullptr : s.placeOf(colony);
        const auto yard = stay ? yardOf(s, found->second) : std::nullopt;
        if (yard && *yard != stay->yard) out.push_back({colony, stay->yard, *yard});
    }
    return out;
}

/// The snapshot as it is once they have been carried.
Snapshot carried(const Snapshot& s, const std::vector<Move>& moves) {
    Snapshot after = s;
    after.stays.clear();
    size_t next = 0;
    for (size_t i = 0; i < s.stays.size(); ++i) {
        after.stays.push_back(s.stays[i]);
        const bool last = i + 1 == s.stays.size() || s.stays[i + 1].colony != s.stays[i].colony;
        while (next < moves.size() && moves[next].colony < s.stays[i].colony) ++next;
        if (!last || next == moves.size() || moves[next].colony != s.stays[i].colony) continue;
        after.stays.back().until = s.on;
        SnapStay there = s.stays[i];
        there.yard = moves[next].to;
        there.stand = {};
        there.since = s.on;
        there.until.reset();
        after.stays.push_back(there);
    }
    return after;
}

QString nameOf(const Snapshot& s, const Hold& hold) {
    return QStringLiteral("%1 (%2)").arg(s.colony(hold.colony).shown, holdWord(hold.kind));
}

QString someOf(const QStringList& names) {
    constexpr qsizetype kMost = 4;
    const QString some = names.mid(0, kMost).join(QLatin1StringView(", "));
    return names.size() > kMost ? QStringLiteral("%1 and %2 more").arg(some).arg(names.size() - kMost) : some;
}

} // namespace

bool keepsYards(HoldKind kind) { return kind != HoldKind::BroodNotChecked; }

QStringList againstYardMoves(const Snapshot& s, std::span<const std::pair<ColonyId, YardId>> asked) {
    const std::vector<Move> moves = movesIn(s, asked);
    if (moves.empty()) return {};
    std::set<YardIx> yards;
    for (const Move& m : moves) yards.insert({m.from, m.to});
    std::map<YardIx, QStringList> held;
    std::set<std::pair<ColonyIx, HoldKind>> before;
    for (const Hold& hold : holds(s)) {
        if (!keepsYards(hold.kind)) continue;
        before.insert({hold.colony, hold.kind});
        const SnapStay* stay = s.placeOf(hold.colony);
        if (stay && yards.contains(stay->yard)) held[stay->yard] += nameOf(s, hold);
    }
    QStringList out;
    for (const auto& [yard, names] : held)
        out += QStringLiteral("Held in %1: %2.").arg(s.yard(yard).name, someOf(names));
    QStringList newly; // a yard whose source or order left no hive in it
    for (const Hold& hold : holds(carried(s, moves)))
        if (keepsYards(hold.kind) && !before.contains({hold.colony, hold.kind})) newly += nameOf(s, hold);
    if (!newly.isEmpty()) out += QStringLiteral("It would bring a hold on %1.").arg(someOf(newly));
    return out;
}

} // namespace core::rules
