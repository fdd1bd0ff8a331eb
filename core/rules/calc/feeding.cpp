#include "core/rules/calc/feeding.h"

#include <algorithm>

namespace core::rules::calc {

int halfLitresFor(qint64 shortBy, Millionths storesPerLitre) {
    const qint64 perLitre = storesPerLitre.value;
    return static_cast<int>((2 * std::max<qint64>(shortBy, 0) + perLitre - 1) / perLitre);
}

Feeding feedingFor(double storesKg, const Mix& mix) {
    const double sugar = storesKg * kSugarInStores;
    const Mix whole{sugar, sugar * mix.waterKg / mix.sugarKg};
    return {whole.sugarKg, whole.waterKg, syrupOf(whole).litres};
}

} // namespace core::rules::calc
