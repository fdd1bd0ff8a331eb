#include "core/edit/merge_sheet.h"

#include <algorithm>

namespace core::edit {

std::vector<MergeStrip> stripsPlanned(const Snapshot& s, const rules::Plan& plan, YardIx yard) {
    std::vector<MergeStrip> out;
    const auto add = [&](LineageHow how, ColonyIx moved, ColonyIx host, std::optional<ColonyIx> upper) {
        MergeStrip strip;
        strip.position = static_cast<int>(out.size()) + 1;
        strip.how = how;
        strip.moved = s.colony(moved).id;
        strip.host = s.colony(host).id;
        if (upper) strip.upper = s.colony(*upper).id;
        out.push_back(strip);
    };
    std::vector<const rules::Union*> unions;
    for (const rules::Union& u : plan.unions)
        if (u.yard == yard) unions.push_back(&u);
    std::ranges::stable_sort(unions, {}, [](const rules::Union* u) { return u->order; });
    for (const rules::Union* u : unions) add(LineageHow::United, u->moved, u->host, u->upper);
    for (const rules::ShakeOut& x : plan.shakeOuts)
        if (x.yard == yard) add(LineageHow::ShakenOut, x.colony, x.into, std::nullopt);
    return out;
}

std::optional<MergeDay> standingDay(const EditContext& c, YardId yard, Day day) {
    std::optional<MergeDay> best;
    int bestRank = -1;
    for (const MergeDay& d : c.mergeDaysOf(yard)) {
        if (d.day != day) continue;
        const auto strips = c.stripsOf(d.id);
        const auto divides = c.divideStripsOf(d.id);
        const auto written = [](const auto& strip) { return strip.outcome.has_value(); };
        const bool begun = std::ranges::any_of(strips, written) || std::ranges::any_of(divides, written);
        const int rank = begun ? 2 : strips.empty() && divides.empty() ? 0 : 1;
        if (rank > bestRank) {
            best = d;
            bestRank = rank;
        }
    }
    return best;
}

} // namespace core::edit
