#include "core/rules/queen.h"

namespace core::rules {

namespace {

/// A queen, or what she leaves, was there to be seen.
bool present(QueenSeen q) { return q == QueenSeen::Seen || q == QueenSeen::Eggs || q == QueenSeen::Virgin; }

/// Whether a later visit's `next` counts after `before`.
bool counts(QueenSeen before, QueenSeen next) {
    if (before == QueenSeen::LayingWorkers) return present(next);
    return !(lacksQueen(before) && next == QueenSeen::Unknown);
}

} // namespace

QueenSeen queenOn(Day on, std::span<const SnapQueen> seen, std::optional<Day> freshStart, const Settings& settings) {
    QueenSeen queen = QueenSeen::Unknown;
    Day day = on;
    for (const SnapQueen& visit : seen) {
        if ((freshStart && visit.day <= *freshStart) || !counts(queen, visit.seen)) continue;
        queen = visit.seen;
        day = visit.day;
    }
    return present(queen) && on - day > settings.queenMaxAgeDays ? QueenSeen::Unknown : queen;
}

} // namespace core::rules
