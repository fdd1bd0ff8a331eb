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

QueenNote latestQueen(std::span<const SnapQueen> seen, std::optional<Day> freshStart) {
    QueenNote noted;
    for (const SnapQueen& visit : seen) {
        if ((freshStart && visit.day <= *freshStart) || !counts(noted.queen, visit.seen)) continue;
        noted = {visit.seen, visit.day};
    }
    return noted;
}

QueenSeen queenOn(Day on, const QueenNote& noted, const Settings& settings) {
    const Day day = noted.day.value_or(on);
    return present(noted.queen) && on - day > settings.queenMaxAgeDays ? QueenSeen::Unknown : noted.queen;
}

} // namespace core::rules
