#include "core/rules/calc/mites_change.h"

#include "core/rules/calc/binomial.h"
#include "core/rules/calc/student.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace core::rules::calc {

namespace {

double changeOf(const WashedTwice& w) { return mitesPerHundred(w.after) - mitesPerHundred(w.before); }

struct Sum {
    qint64 mites = 0;
    qint64 bees = 0;
    double rate() const { return 100.0 * static_cast<double>(mites) / static_cast<double>(bees); }
    void add(const MiteSample& s) {
        mites += s.mites;
        bees += s.bees;
    }
};

/// How far it reaches below and above the change.
struct Reach {
    double below = 0;
    double above = 0;
};

std::optional<Reach> ofAllBees(std::span<const WashedTwice> colonies) {
    Sum before, after;
    for (const WashedTwice& w : colonies) {
        before.add(w.before);
        after.add(w.after);
    }
    if (before.mites > before.bees || after.mites > after.bees) return std::nullopt;
    const Range b = exactInterval(before.mites, before.bees);
    const Range a = exactInterval(after.mites, after.bees);
    return Reach{std::hypot(after.rate() - 100 * a.low, 100 * b.high - before.rate()),
                 std::hypot(100 * a.high - after.rate(), before.rate() - 100 * b.low)};
}

double byStudent(std::span<const WashedTwice> colonies, double mean) {
    double squares = 0;
    for (const WashedTwice& w : colonies) squares += std::pow(changeOf(w) - mean, 2);
    const auto n = static_cast<double>(colonies.size());
    const int freedom = static_cast<int>(colonies.size()) - 1;
    return studentT(freedom) * std::sqrt(squares / freedom / n);
}

YardMites sideOf(std::span<const WashedTwice> colonies, MiteSample WashedTwice::*side) {
    std::vector<MiteSample> all;
    for (const WashedTwice& w : colonies) all.push_back(w.*side);
    YardMites yard = *yardMites(all, static_cast<int>(all.size()));
    if (all.size() == 1) yard.interval = mitesInterval(all.front());
    return yard;
}

Change saidBy(const MiteChange& c) {
    if (!c.interval || (c.interval->low <= 0 && c.interval->high >= 0)) return Change::Open;
    if (c.colonies == 1 && c.before.interval->low <= c.after.interval->high &&
        c.after.interval->low <= c.before.interval->high)
        return Change::Open;
    return c.interval->high < 0 ? Change::Fell : Change::Rose;
}

} // namespace

std::optional<MiteChange> mitesChange(std::span<const WashedTwice> colonies) {
    if (colonies.empty()) return std::nullopt;
    MiteChange out;
    out.colonies = static_cast<int>(colonies.size());
    out.before = sideOf(colonies, &WashedTwice::before);
    out.after = sideOf(colonies, &WashedTwice::after);
    for (const WashedTwice& w : colonies) out.change += changeOf(w) / out.colonies;
    if (const auto chance = ofAllBees(colonies)) {
        const double spread = out.colonies > 1 ? byStudent(colonies, out.change) : 0;
        out.interval =
            Range{out.change - std::max(spread, chance->below), out.change + std::max(spread, chance->above)};
    }
    out.said = saidBy(out);
    return out;
}

} // namespace core::rules::calc
