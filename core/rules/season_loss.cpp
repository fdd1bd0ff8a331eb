#include "core/rules/season_loss.h"

#include <algorithm>

namespace core::rules {

namespace {

/// With one yard on its half of the earth there is no sum: that yard's years are it.
bool wanted(const LedgerYear& year, std::span<const LedgerYear> ledger, std::optional<YardIx> yard) {
    if (yard) return year.yard == yard;
    if (!year.yard) return true;
    return std::ranges::none_of(
        ledger, [&](const LedgerYear& other) { return !other.yard && other.southern == year.southern; });
}

std::optional<WinterOf> winterOf(const LedgerYear& year) {
    const LedgerPeriod* winter = year.of(LedgerSeason::Winter);
    const LedgerPeriod* fall = year.of(LedgerSeason::Fall);
    if (!winter || !fall || winter->count.start + winter->count.in() == 0) return std::nullopt;
    const LedgerCount& c = winter->count;
    return WinterOf{year.year,      year.southern, winter->from,
                    winter->until,  winter->over,  fall->count.givenUp(),
                    c.start,        c.lost(),      c.givenUp() + c.sold + c.movedOut,
                    year.winterLoss};
}

} // namespace

std::vector<WinterOf> winters(std::span<const LedgerYear> ledger, std::optional<YardIx> yard) {
    std::vector<WinterOf> out;
    for (const LedgerYear& year : ledger) {
        if (!wanted(year, ledger, yard)) continue;
        if (auto winter = winterOf(year)) out.push_back(std::move(*winter));
    }
    std::ranges::stable_sort(out, [](const WinterOf& a, const WinterOf& b) {
        return a.southern != b.southern ? b.southern : a.year < b.year;
    });
    return out;
}

} // namespace core::rules
