#pragma once

#include <optional>
#include <span>

// What common guidance says of lifting by hand. None of these is a legal limit or a safe weight: local rules decide.
// Source of the equation: Waters, Putz-Anderson, Garg, Applications Manual for the Revised NIOSH Lifting Equation,
// 94-110, 1994, as excerpted in Fundamentals and Assessment Tools for Occupational Ergonomics, section 46.2.1.

namespace core::rules::calc {

/// A weight at which one guidance says to stop and think.
struct LiftLimit {
    double kg = 0;
    const char* says;
    const char* source;
};
/// From the lightest to the heaviest.
std::span<const LiftLimit> liftLimits();
/// Those that a weight passes.
std::span<const LiftLimit> limitsPassed(double kg);

enum class Grip { Good, Fair, Poor };

/// How a load is lifted, in centimetres: hands from the ankles, hands above the floor, height that it is moved.
struct Lift {
    double outCm = 25;
    double startCm = 75;
    double movedCm = 25;
    double turnDegrees = 0;
    double liftsAMinute = 0.2;
    double hours = 1; ///< of such lifting in one go: up to 1, 2 or 8
    Grip grip = Grip::Good;
};

/// Kilograms that the NIOSH equation recommends as a limit, with its formulas, not its rounded tables (the printed
/// examples round each factor, and lie up to 3 % away). 0 where it should not be lifted so; nullopt for lifting more
/// often or longer than its table has. Factors for grip and for more than 2 hours are from memory.
std::optional<double> recommendedKg(const Lift& lift);

enum class LiftRisk { Low, Raised, NearlyAll };
/// Load by limit: above 1 the risk is raised, above 3 for nearly all workers (restating Waters et al. 1994, p. 35).
LiftRisk liftRisk(double kg, double recommendedKg);

} // namespace core::rules::calc
