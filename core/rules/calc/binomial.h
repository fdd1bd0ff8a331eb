#pragma once

#include "core/rules/calc/range.h"

#include <QtGlobal>

// Source: Clopper, Pearson, The use of confidence or fiducial limits illustrated in the case of the binomial,
// Biometrika 26, 1934 (from memory); the incomplete beta function by its continued fraction (own calculation).

namespace core::rules::calc {

/// The share of a beta distribution below x: the regularised incomplete beta function. 0 <= x <= 1; a, b > 0.
double incompleteBeta(double x, double a, double b);

/// The exact interval of Clopper and Pearson, as fractions 0..1, for `found` among `of`. It takes each of the `of` to
/// be drawn by itself. 0 <= found <= of, of >= 1.
Range exactInterval(qint64 found, qint64 of, double level = kLevel);

} // namespace core::rules::calc
