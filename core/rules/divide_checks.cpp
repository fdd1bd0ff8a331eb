#include "core/rules/divide_checks.h"

#include "core/rules/limits.h"
#include "core/rules/queen.h"

#include <algorithm>

namespace core::rules {

namespace {

constexpr int kListedFor = fixed::kUnionCheckFor;

const DivideDone* doneOf(std::span<const DivideDone> done, ColonyId mother, Day day) {
    const auto at = std::ranges::find_if(done, [&](const DivideDone& d) { return d.mother == mother && d.day == day; });
    return at == done.end() ? nullptr : &*at;
}

bool needsQueen(DivideCheckKind what) { return what == DivideCheckKind::Eggs || what == DivideCheckKind::WorkerBrood; }

/// What the latest visit with a word of the queen says, if it is of the new colony's own time.
std::optional<SnapQueen> lastQueen(const SnapLatest& latest, Day divided) {
    if (latest.queen.empty() || latest.queen.back().day <= divided) return std::nullopt;
    return latest.queen.back();
}

/// What lacks a queen is in the plan as that: nothing more is looked for here.
bool lacking(const SnapLatest& latest, Day divided) {
    const auto queen = lastQueen(latest, divided);
    return queen && (lacksQueen(queen->seen) || queen->seen == QueenSeen::LayingWorkers);
}

bool answered(const SnapLatest& latest, const DivideDate& date, Day divided) {
    if (!latest.visit || *latest.visit <= divided) return false;
    if (needsQueen(date.what) && *latest.visit >= date.look) return true;
    if (!needsQueen(date.what)) return *latest.visit >= date.range.first;
    const auto queen = lastQueen(latest, divided);
    return queen && queen->day >= date.range.first &&
           (queen->seen == QueenSeen::Seen || queen->seen == QueenSeen::Eggs);
}

} // namespace

std::vector<DivideDue> divideChecks(const Snapshot& s, std::span<const DivideDone> done) {
    std::vector<DivideDue> due;
    for (const SnapLineage& l : s.lineage) {
        if (l.how != LineageHow::Divided || !s.colony(l.into).living()) continue;
        if (lacking(s.latestOf(l.into), l.day)) continue;
        const DivideDone* known = doneOf(done, s.colony(l.colony).id, l.day);
        for (const DivideDate& date : divideDates(known ? known->queens : DivideQueens::Own, l.day)) {
            if (date.what == DivideCheckKind::Mated) continue; // nobody looks
            if (s.on < date.look - fixed::kListedBefore || s.on > date.look + kListedFor) continue;
            if (!answered(s.latestOf(l.into), date, l.day))
                due.push_back({l.into, l.colony, l.day, date, known != nullptr});
        }
    }
    std::ranges::sort(due, [](const DivideDue& a, const DivideDue& b) {
        if (a.date.look != b.date.look) return a.date.look < b.date.look;
        return a.colony != b.colony ? a.colony < b.colony : a.date.what < b.date.what;
    });
    return due;
}

} // namespace core::rules
