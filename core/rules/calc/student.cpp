#include "core/rules/calc/student.h"

#include "core/rules/calc/binomial.h"

#include <cmath>

namespace core::rules::calc {

double studentT(int freedom, double level) {
    // Beyond t in either direction lies incompleteBeta(f / (f + t²), f/2, 1/2); it falls as t grows.
    const double f = freedom;
    const auto beyond = [&](double t) { return incompleteBeta(f / (f + t * t), f / 2, 0.5); };
    double low = 0;
    double high = 1;
    while (beyond(high) > 1 - level) high *= 2;
    for (;;) {
        const double middle = low + (high - low) / 2;
        if (middle <= low || middle >= high) return middle;
        (beyond(middle) > 1 - level ? low : high) = middle;
    }
}

} // namespace core::rules::calc
