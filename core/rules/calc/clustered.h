#pragma once

#include "core/rules/calc/range.h"

#include <QtGlobal>

#include <optional>
#include <span>

// Source: van der Zee et al., Standard survey methods for estimating colony losses, J. Apic. Res. 52(4), 2013 (COLOSS
// BEEBOOK), and the BEEBOOK's epidemiology chapter 1.3.3.1.1: across operations a quasi-binomial model, as the
// colonies of one keeper are not independent; a plain binomial interval only within one operation.

namespace core::rules::calc {

/// So many of so many, of one keeper or yard. 0 <= found <= of.
struct Counted {
    qint64 found = 0;
    qint64 of = 0;
};

struct ClusteredShare {
    qint64 found = 0;             ///< the sums
    qint64 of = 0;                ///< > 0
    std::optional<double> spread; ///< of the quasi-binomial interval: how much wider than chance alone (squared)
    Range interval;               ///< fractions 0..1
    double share() const { return static_cast<double>(found) / static_cast<double>(of); }
};

/// The summed share of several groups with the interval of a quasi-binomial model without covariates: on the scale of
/// the logit, Student's t with one degree less than groups, spread by Pearson. Groups of 0 are left out; none left:
/// nullopt. Of one group, or where all or nothing was found: the exact interval of the sums, without `spread`.
/// Own choices, assumptions both: a spread below 1 counts as 1 (the interval is never narrower than by chance alone),
/// and t in place of 1.96 (wider for few groups).
std::optional<ClusteredShare> clusteredShare(std::span<const Counted> groups, double level = kLevel);

} // namespace core::rules::calc
