#include "core/rules/value.h"

#include "core/rules/limits.h"

#include <cmath>

namespace core::rules {

namespace {

__extension__ using Wide = __int128; // squares of squares of millimetres

/// A table between its whole frames, at `q` quarters.
int between(const ValueTable& table, int q) {
    const auto f = static_cast<size_t>(q / 4);
    const int r = q % 4;
    const int above = r == 0 ? 0 : table[f + 1];
    return (table[f] * (4 - r) + above * r + 2) / 4;
}

} // namespace

ValueOf::ValueOf(const Settings& settings) {
    for (int q = 0; q <= kMost; ++q) {
        const int alive = between(settings.winter, q);
        const int divided = between(settings.divide, q);
        m_value[static_cast<size_t>(q)] = (alive * (1000 + divided) + 500) / 1000;
    }
}

int tableAt(const ValueTable& table, Quarters strength) {
    return between(table, std::min(strength.value, 4 * fixed::kMostValued));
}

qint64 carryCost(MmPoint from, MmPoint to, Millionths perMetre) {
    // x = √squared · perMetre / 10⁹. n is right when n − 1/2 <= x < n + 1/2; compared squared, in integers.
    const qint64 squared = squaredDistance(from, to);
    const double x = std::sqrt(static_cast<double>(squared)) * static_cast<double>(perMetre.value) / 1e9;
    const Wide twiceSquared = Wide(4) * squared * perMetre.value * perMetre.value;
    const auto reached = [&](qint64 n) {
        const Wide limit = Wide(2 * n - 1) * 1'000'000'000;
        return limit * limit <= twiceSquared;
    };
    auto n = static_cast<qint64>(x + 0.5);
    while (n > 0 && !reached(n)) --n;
    while (reached(n + 1)) ++n;
    return n;
}

} // namespace core::rules
