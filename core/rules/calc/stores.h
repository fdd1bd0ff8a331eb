#pragma once

#include "core/base/quantity.h"
#include "core/rules/calc/comb.h"
#include "core/rules/calc/range.h"

#include <span>

namespace core::rules::calc {

/// What one source asks for before winter. Regions differ: there is no figure for all.
struct StoresWanted {
    double kg = 0;
    bool wholeHive = false; ///< the weight of the hive, else of the stores alone
    const char* of;
    const char* source;
};
std::span<const StoresWanted> storesWanted();

/// Kilograms of stores for so many months with and without brood: 3 and 1 a month. Source: bienen&natur, Wie viel
/// Kilogramm Futter braucht ein Bienenvolk für den Winter.
double storesForMonths(int withBrood, int withoutBrood);

/// Kilograms that so many full frames hold, the range between sources: a Langstroth deep frame about 5 lb (Comstock,
/// How to Keep Bees, 1905, p. 146) to about 3 kg (BBKA News 216, August 2013). Other boxes by their share of comb (an
/// assumption).
Range storesOn(Quarters fullFrames, const CombShare& comb = {});

} // namespace core::rules::calc
