#include "core/rules/calc/stores.h"

namespace core::rules::calc {

namespace {

constexpr double kPound = 0.45359237;
constexpr char kOntario[] = "OMAFRA, Best Management Practices for Ontario Beekeepers in Advance of Winter";
constexpr StoresWanted kWanted[] = {
    {30 * kPound, false, "sealed honey, USA 1905", "Comstock, How to Keep Bees, 1905, p. 146"},
    {15, false, "Germany", "bienen&natur, Wie viel Kilogramm Futter braucht ein Bienenvolk für den Winter"},
    {20, false, "average colony, United Kingdom", "BBKA News 216, August 2013, Winter Feeding"},
    {25, false, "full-size colony, United Kingdom", "National Bee Unit, as quoted by Exeter Beekeepers"},
    {32, true, "one brood box, Ontario", kOntario},
    {45, true, "two brood boxes, Ontario", kOntario},
    {130 * kPound, true, "two bodies of ten frames, Northern States of the USA",
     "Farrar, Productive Management of Honeybee Colonies in the Northern States, USDA Circular 702, 1944"},
};

} // namespace

std::span<const StoresWanted> storesWanted() { return kWanted; }

double storesForMonths(int withBrood, int withoutBrood) { return 3.0 * withBrood + 1.0 * withoutBrood; }

Range storesOn(Quarters fullFrames, const CombShare& comb) {
    const double deep = fullFrames.frames() * comb.share;
    return {deep * 5 * kPound, deep * 3};
}

} // namespace core::rules::calc
