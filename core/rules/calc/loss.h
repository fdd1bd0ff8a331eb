#pragma once

#include "core/rules/calc/clustered.h"

#include <QtGlobal>

#include <optional>
#include <span>

// Source: COLOSS BEEBOOK vol. II, survey chapter 10.3.2 (overall and average loss) and epidemiology chapter 1.3.3.1
// (colonies at risk; which interval). Always shown with its numerator and denominator.

namespace core::rules::calc {

/// Colonies of one keeper or yard over a period.
struct PeriodCounts {
    int start = 0;
    int splits = 0;
    int bought = 0;
    int removed = 0; ///< sold or given away
    int end = 0;
};

/// Lost among those at risk: start + splits + bought − removed; nullopt where the counts contradict each other or none
/// was at risk.
std::optional<Counted> lossOf(const PeriodCounts& counts);

/// The three kinds of winter loss, kept apart and summed as counts (never as rounded percents).
struct WinterLoss {
    qint64 dead = 0;
    qint64 queenProblems = 0; ///< alive but with a queen problem that could not be solved
    qint64 disaster = 0;
    qint64 lost() const { return dead + queenProblems + disaster; }
};

struct LossRates {
    /// Overall: sum lost / sum at risk; weighs large keepers. Its interval is the survey standard's: across keepers
    /// quasi-binomial, of one keeper exact. Where every colony was counted, and the question is only how many were
    /// lost, no interval is needed.
    ClusteredShare overall;
    double average = 0; ///< of the keepers' own fractions; weighs small keepers
    double median = 0;
};
/// nullopt where nothing was at risk. Groups with none at risk are left out.
std::optional<LossRates> lossRates(std::span<const Counted> keepers);

/// Whole percent, a half rounded up, in integers: as the USDA tables are printed. of > 0.
qint64 wholePercent(qint64 lost, qint64 of);

} // namespace core::rules::calc
