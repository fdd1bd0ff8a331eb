#pragma once

#include <QStringView>

#include <optional>

// Source of densities: CRC Handbook of Chemistry and Physics, sucrose table at 20 °C (50 to 70 % by mass), straight
// lines between its rows; of saturation: Mohos, Confectionery and Chocolate Engineering, 2010, Table A2.3.

namespace core::rules::calc {

/// A mix by mass; record the mix, not a nickname such as "2:1". Both above 0.
struct Mix {
    double sugarKg = 2;
    double waterKg = 1;
};

/// "3:2", "1.5 : 1": sugar to water, each above 0 and at most 100, with a decimal point or comma; nullopt for any other
/// text.
std::optional<Mix> mixOf(QStringView text);

inline constexpr double kWaterKgPerL = 0.9982;     ///< at 20 °C
inline constexpr double kSaturatedPercent = 67.09; ///< of sugar by mass, at 20 °C

/// Stores of 18 % water, nothing lost in the making: an assumption (bees use some of it).
inline constexpr double kSugarInStores = 0.82;

double sugarPercent(const Mix& mix); ///< by mass

/// kg per litre at 20 °C; nullopt outside the printed 50 to 70 %.
std::optional<double> densityKgPerL(double sugarPercent);

struct Syrup {
    double sugarPercent = 0;
    double kg = 0;
    double storesKg = 0;                ///< that it makes
    std::optional<double> litres;       ///< at 20 °C; nullopt where no density is printed
    std::optional<double> sugarKgPerL;  ///< likewise
    std::optional<double> storesKgPerL; ///< likewise
    bool saturated = false;             ///< at 20 °C not all of the sugar stays dissolved
};
Syrup syrupOf(const Mix& mix);

} // namespace core::rules::calc
