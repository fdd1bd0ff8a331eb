#pragma once

#include "core/model/settings.h"
#include "core/rules/calc/syrup.h"

#include <QtGlobal>

#include <optional>

namespace core::rules::calc {

/// Half litres of syrup, rounded up exactly, that make up for `shortBy` millionths of a kilogram of stores; 0 where
/// nothing is short. `storesPerLitre` > 0.
int halfLitresFor(qint64 shortBy, Millionths storesPerLitre);

struct Feeding {
    double sugarKg = 0;
    double waterKg = 0;
    std::optional<double> litres; ///< at 20 °C; nullopt where no density is printed
};

/// The sugar and the water, in the parts of `mix`, that make so many kilograms of stores (18 % water: an assumption).
Feeding feedingFor(double storesKg, const Mix& mix);

} // namespace core::rules::calc
