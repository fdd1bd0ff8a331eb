#include "core/rules/calc/binomial.h"

#include <cmath>

namespace core::rules::calc {

namespace {

/// A value that must not become 0 where it divides.
double notZero(double x) {
    constexpr double kTiny = 1e-300;
    return std::abs(x) < kTiny ? kTiny : x;
}

/// The continued fraction of the incomplete beta function, from the front (Lentz). Quick for x below (a+1)/(a+b+2).
double betaFraction(double x, double a, double b) {
    constexpr int kMostSteps = 100'000;
    constexpr double kEnough = 1e-15;
    double c = 1;
    double d = 1 / notZero(1 - (a + b) * x / (a + 1));
    double fraction = d;
    const auto step = [&](double term) {
        d = 1 / notZero(1 + term * d);
        c = notZero(1 + term / c);
        fraction *= c * d;
        return c * d;
    };
    for (int m = 1; m < kMostSteps; ++m) {
        step(m * (b - m) * x / ((a + 2 * m - 1) * (a + 2 * m)));
        const double change = step(-(a + m) * (a + b + m) * x / ((a + 2 * m) * (a + 2 * m + 1)));
        if (std::abs(change - 1) < kEnough) break;
    }
    return fraction;
}

/// xᵃ (1 − x)ᵇ / B(a, b). 0 < x < 1.
double front(double x, double a, double b) {
    return std::exp(std::lgamma(a + b) - std::lgamma(a) - std::lgamma(b) + a * std::log(x) + b * std::log1p(-x));
}

/// The x at which incompleteBeta is `wanted`, to the last digits: Newton's steps, halving where one would leave the
/// bracket that is known by then.
double inverseBeta(double wanted, double a, double b) {
    constexpr int kMostSteps = 200;
    constexpr double kEnough = 1e-10; // of the last step: each squares what is left
    double low = 0;
    double high = 1;
    double x = a / (a + b);
    for (int i = 0; i < kMostSteps; ++i) {
        const double off = incompleteBeta(x, a, b) - wanted;
        (off < 0 ? low : high) = x;
        const double next = x - off * x * (1 - x) / front(x, a, b);
        if (std::abs(next - x) <= kEnough * x) return next;
        x = next > low && next < high ? next : low + (high - low) / 2;
    }
    return x;
}

} // namespace

double incompleteBeta(double x, double a, double b) {
    if (x <= 0) return 0;
    if (x >= 1) return 1;
    const double f = front(x, a, b);
    return x < (a + 1) / (a + b + 2) ? f * betaFraction(x, a, b) / a : 1 - f * betaFraction(1 - x, b, a) / b;
}

Range exactInterval(qint64 found, qint64 of, double level) {
    const double tail = (1 - level) / 2;
    const auto k = static_cast<double>(found);
    const auto n = static_cast<double>(of);
    return {found == 0 ? 0 : inverseBeta(tail, k, n - k + 1), found == of ? 1 : inverseBeta(1 - tail, k + 1, n - k)};
}

} // namespace core::rules::calc
