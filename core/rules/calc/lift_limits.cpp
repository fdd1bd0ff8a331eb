#include "core/rules/calc/lift_limits.h"

#include <algorithm>
#include <cmath>
#include <iterator>

namespace core::rules::calc {

namespace {

constexpr char kFilter[] = "HSE, lifting filter (figures from memory): a screening value, not a limit";
constexpr LiftLimit kLimits[] = {
    {16, "women, hands between knuckle and elbow height, close to the body", kFilter},
    {23, "the most that the NIOSH equation recommends, under the best conditions",
     "Fundamentals and Assessment Tools for Occupational Ergonomics, section 46.2.1"},
    {25, "men, hands between knuckle and elbow height, close to the body", kFilter},
};

struct Often {
    double perMinute;
    double factor;
};
constexpr Often kOneHour[] = {{0.2, 1}, {0.5, .97}, {1, .94}, {2, .91}, {3, .88},  {4, .84},  {5, .80},
                              {6, .75}, {7, .70},   {8, .60}, {9, .52}, {10, .45}, {11, .41}, {12, .37}};
constexpr Often kTwoHours[] = {{0.2, .95}, {0.5, .92}, {1, .88}, {2, .84}, {3, .79}};
constexpr Often kEightHours[] = {{0.2, .85}, {0.5, .81}, {1, .75}, {2, .65}, {3, .55}, {4, .45}, {5, .35}};

std::span<const Often> tableFor(double hours) {
    if (hours <= 1) return kOneHour;
    if (hours <= 2) return kTwoHours;
    return kEightHours;
}

/// Between two rows the one for more lifts.
std::optional<double> oftenFactor(const Lift& lift) {
    if (lift.hours > 8) return std::nullopt;
    for (const Often& row : tableFor(lift.hours))
        if (lift.liftsAMinute <= row.perMinute) return row.factor;
    return std::nullopt;
}

double outFactor(double cm) { return cm > 63 ? 0 : 25 / std::max(cm, 25.0); }
double heightFactor(double cm) { return cm > 175 ? 0 : 1 - 0.003 * std::abs(cm - 75); }
double movedFactor(double cm) { return cm > 175 ? 0 : 0.82 + 4.5 / std::max(cm, 25.0); }
double turnFactor(double degrees) { return degrees > 135 ? 0 : 1 - 0.0032 * degrees; }

double gripFactor(Grip grip, double startCm) {
    if (grip == Grip::Poor) return 0.90;
    return grip == Grip::Fair && startCm < 75 ? 0.95 : 1;
}

} // namespace

std::span<const LiftLimit> liftLimits() { return kLimits; }

std::span<const LiftLimit> limitsPassed(double kg) {
    const auto* end =
        std::find_if(std::begin(kLimits), std::end(kLimits), [&](const LiftLimit& limit) { return kg <= limit.kg; });
    return {std::begin(kLimits), end};
}

std::optional<double> recommendedKg(const Lift& lift) {
    constexpr double kMostKg = 23;
    const auto often = oftenFactor(lift);
    if (!often) return std::nullopt;
    return kMostKg * outFactor(lift.outCm) * heightFactor(lift.startCm) * movedFactor(lift.movedCm) *
           turnFactor(lift.turnDegrees) * *often * gripFactor(lift.grip, lift.startCm);
}

LiftRisk liftRisk(double kg, double recommended) {
    if (kg <= recommended) return LiftRisk::Low;
    return kg <= 3 * recommended ? LiftRisk::Raised : LiftRisk::NearlyAll;
}

} // namespace core::rules::calc
