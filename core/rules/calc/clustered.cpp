#include "core/rules/calc/clustered.h"

#include "core/rules/calc/binomial.h"
#include "core/rules/calc/student.h"

#include <algorithm>
#include <cmath>

namespace core::rules::calc {

namespace {

/// Pearson's X² divided by its degrees of freedom.
double spreadOf(std::span<const Counted> groups, double share, int freedom) {
    double sum = 0;
    for (const Counted& g : groups) {
        if (g.of == 0) continue;
        const auto of = static_cast<double>(g.of);
        const double off = static_cast<double>(g.found) - of * share;
        sum += off * off / (of * share * (1 - share));
    }
    return sum / freedom;
}

} // namespace

std::optional<ClusteredShare> clusteredShare(std::span<const Counted> groups, double level) {
    ClusteredShare all;
    int counted = 0;
    for (const Counted& g : groups) {
        all.found += g.found;
        all.of += g.of;
        counted += g.of > 0;
    }
    if (all.of == 0) return std::nullopt;
    if (counted == 1 || all.found == 0 || all.found == all.of) {
        all.interval = exactInterval(all.found, all.of, level);
        return all;
    }
    const double share = all.share();
    all.spread = std::max(1.0, spreadOf(groups, share, counted - 1));
    const double error = std::sqrt(*all.spread / (static_cast<double>(all.of) * share * (1 - share)));
    const double logit = std::log(share / (1 - share));
    const double reach = studentT(counted - 1, level) * error;
    const auto back = [](double x) { return 1 / (1 + std::exp(-x)); };
    all.interval = {back(logit - reach), back(logit + reach)};
    return all;
}

} // namespace core::rules::calc
