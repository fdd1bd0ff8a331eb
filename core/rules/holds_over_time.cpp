#include "core/rules/holds_over_time.h"

#include "core/rules/holds_then.h"
#include "core/rules/judged_days.h"

#include <algorithm>
#include <map>
#include <set>

namespace core::rules {

namespace {

using Kinds = quint16; ///< bit n: held as the n-th HoldKind

Kinds kindsOn(const Snapshot& whole, ColonyId colony, Day on) {
    Kinds kinds = 0;
    for (const HeldThen& held : holdsThen(whole, on))
        if (held.colony == colony) kinds = static_cast<Kinds>(kinds | (1 << static_cast<int>(held.kind)));
    return kinds;
}

/// Days with a record that names the colony.
void addOwnDays(std::set<Day>& days, const Snapshot& whole, ColonyIx colony) {
    const auto add = [&days](Day day) { days.insert(day); };
    for (const SnapCheck& row : whole.checksOf(colony)) add(row.day);
    for (const SnapSign& row : whole.signsOf(colony)) add(row.day);
    for (const SnapStay& row : whole.staysOf(colony)) add(row.since);
    for (const SnapTransfer& row : whole.transfers)
        if (row.from == colony || row.to == colony) add(row.day);
    for (const SnapLineage& row : whole.lineage)
        if (row.colony == colony || row.into == colony) add(row.day);
    for (const SnapResult& row : whole.results)
        if (row.colony == colony || row.colony.value < 0) add(row.day); // of any yard: it may have stood there
    for (const SnapTreatment& row : whole.treatments)
        if (row.colony == colony) add(row.day);
}

std::vector<HoldSpan> spansOf(const std::map<Day, Kinds>& judged) {
    std::vector<HoldSpan> out;
    for (int kind = 0; kind < kHoldKindCount; ++kind) {
        bool open = false;
        for (const auto& [day, kinds] : judged) {
            const bool held = (kinds >> kind) & 1;
            if (held && !open) out.push_back({static_cast<HoldKind>(kind), day, day});
            if (held) out.back().to = day;
            open = held;
        }
    }
    std::ranges::stable_sort(out, {}, &HoldSpan::from);
    return out;
}

} // namespace

std::vector<HoldSpan> holdsOverTime(const Snapshot& whole, ColonyId colony, Day first, Day last, int apart,
                                    const std::function<bool()>& stop) {
    const auto ix = std::ranges::find(whole.colonies, colony, &SnapColony::id);
    if (ix == whole.colonies.end() || last < first) return {};
    std::set<Day> days{first, last};
    for (Day day = first; day < last; day = day + std::max(apart, 1)) days.insert(day);
    addOwnDays(days, whole, {static_cast<qint32>(ix - whole.colonies.begin())});
    std::erase_if(days, [&](Day day) { return day < first || day > last; });
    const auto judged = judgedDays<Kinds>(
        days, [&](Day day) { return kindsOn(whole, colony, day); }, stop);
    if (judged.empty()) return {};
    return spansOf(judged);
}

} // namespace core::rules
