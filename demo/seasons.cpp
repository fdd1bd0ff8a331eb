#include "demo/seasons.h"

#include <algorithm>
#include <array>

namespace demo {

namespace {

struct Round {
    int month, day;
    int strength; ///< per cent of the fall strength
    int brood;    ///< brood frames of a colony at full strength
};
// Our own curve of a year with a cold winter; an assumption, not a measurement.
constexpr std::array<Round, 10> kRounds = {{{4, 12, 70, 3},
                                            {5, 5, 95, 5},
                                            {5, 26, 120, 7},
                                            {6, 16, 140, 8},
                                            {7, 7, 150, 7},
                                            {7, 28, 140, 6},
                                            {8, 18, 125, 5},
                                            {9, 4, 110, 4},
                                            {9, 14, 100, 4},
                                            {10, 12, 90, 1}}};

constexpr int kTreatedYard = 1;
constexpr int kTreatedYear = 2025;
constexpr int kBeforeTreating = 5; // of kRounds: the mites are washed then

std::uint64_t key(int n) { return static_cast<std::uint64_t>(n); }

} // namespace

int fallQuarters(int colony, std::uint64_t seed) {
    const int kind = chance(100, seed, key(colony), 1);
    if (kind < 8) return 3 + chance(6, seed, key(colony), 2);
    if (kind < 42) return 9 + chance(11, seed, key(colony), 2);
    if (kind < 75) return 20 + chance(12, seed, key(colony), 2);
    return 32 + chance(9, seed, key(colony), 2);
}

core::Visit plainVisit(const Rounds& rounds, int n, int yard, int colony, std::uint64_t seed) {
    const int year = 2026 - rounds.years + 1 + n / 10;
    const int inYear = n % 10;
    const Round& round = kRounds[static_cast<size_t>(inYear)];
    const auto c = key(colony);
    const auto v = key(n);
    core::Visit visit;
    visit.day = core::dayOf(year, round.month, round.day) + yard % 4;
    const int q = std::clamp(fallQuarters(colony, seed) * round.strength / 100, 2, 38);
    visit.beesTop = core::Quarters{std::min(q + chance(3, seed, c, v, 3), 40)};
    visit.beesBottom = core::Quarters{std::max(q - chance(3, seed, c, v, 3), 0)};
    visit.queen = chance(5, seed, c, v, 4) == 0 ? core::QueenSeen::Seen : core::QueenSeen::Eggs;
    const int brood = std::clamp(q * round.brood / 40 + chance(2, seed, c, v, 5), 1, 9);
    visit.broodFrames = brood;
    visit.broodChecked = brood;
    if (inYear >= 5) {
        visit.stores = core::Quarters{8 + chance(16, seed, c, v, 6)};
        visit.gross = core::Decagrams{2500 + q * 20 + 50 * chance(16, seed, c, v, 7)};
    }
    if (inYear == kBeforeTreating || inYear == 8) {
        visit.miteSample = 300;
        visit.mites = chance(4, seed, c, v, 8) * chance(4, seed, c, v, 9);
        // Thistle Acre was treated in between.
        if (yard == kTreatedYard && year == kTreatedYear)
            visit.mites = inYear == kBeforeTreating ? *visit.mites + 7 : *visit.mites / 3;
    }
    visit.by = yard % 2 == 0 ? QStringLiteral("Wren") : QStringLiteral("Alder");
    return visit;
}

} // namespace demo
