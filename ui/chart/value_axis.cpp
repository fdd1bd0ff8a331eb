#include "ui/chart/value_axis.h"

#include <algorithm>
#include <cmath>

namespace ui::chart {

namespace {

/// 1, 2 or 5 times a power of ten that is not below `least`.
double roundStep(double least) {
    const double power = std::pow(10.0, std::floor(std::log10(least)));
    for (const double times : {1.0, 2.0, 5.0})
        if (times * power >= least * (1 - 1e-9)) return times * power;
    return 10 * power;
}

} // namespace

int ValueAxis::steps() const { return std::max(1, static_cast<int>(std::lround((high - low) / step))); }

std::vector<double> ValueAxis::ticks() const {
    std::vector<double> out;
    for (int i = 0; i <= steps(); ++i) out.push_back(low + i * step);
    return out;
}

int ValueAxis::decimals() const { return std::max(0, static_cast<int>(-std::floor(std::log10(step) + 1e-9))); }

ValueAxis valueAxis(double least, double most, bool fromZero, int mostSteps, int decimals) {
    if (fromZero) {
        least = std::min(least, 0.0);
        most = std::max(most, 0.0);
    }
    const double finest = std::pow(10.0, -decimals);
    if (most - least < finest) most = least + finest;
    ValueAxis out;
    for (double wanted = (most - least) / std::max(1, mostSteps);; wanted = out.step * 1.01) {
        out.step = std::max(roundStep(wanted), finest);
        out.low = std::floor(least / out.step + 1e-9) * out.step;
        out.high = std::ceil(most / out.step - 1e-9) * out.step;
        if (out.steps() <= std::max(1, mostSteps) || (out.low < 0 && out.high > 0 && out.steps() <= 2)) break;
    }
    return out;
}

} // namespace ui::chart
