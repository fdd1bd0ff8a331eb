#pragma once

#include "core/rules/calc/range.h"

#include <optional>

namespace core::rules::calc {

/// The largest sample that the book takes.
inline constexpr int kMostBees = 10'000;

/// The chance that a sample shows no mite though so many in 100 bees carry one: (1 − p)ⁿ. Source: Oliver, Re-evaluating
/// varroa monitoring part 2, 2020.
double chanceOfNone(double perHundred, int bees);

/// Bees of the smallest sample that shows a mite with that chance; nullopt where more than kMostBees are needed.
/// 0 < perHundred < 100.
std::optional<int> beesToFind(double perHundred, double chance = kLevel);

/// Bees of a sample whose exact interval, where so many mites per 100 bees are found as expected, reaches on average
/// `within` mites per 100 bees to each side; nullopt where more than kMostBees are needed. The search starts at the
/// normal formula n = z² p (1 − p) / d², which the exact interval never undercuts. 0 < perHundred < 100, within > 0.
std::optional<int> beesForPrecision(double perHundred, double within);

} // namespace core::rules::calc
