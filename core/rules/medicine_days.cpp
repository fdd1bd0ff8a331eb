#include "core/rules/medicine_days.h"

#include "core/rules/calc/papers.h"

#include <algorithm>

namespace core::rules {

Day treatmentLastDay(const Treatment& t) { return t.day + t.days.value_or(0); }

Day medicineKeptUntil(const Treatment& t, int years, std::optional<Day> lastOut) {
    const Day last = std::max({treatmentLastDay(t), t.disposed.value_or(t.day), lastOut.value_or(t.day)});
    return calc::keptUntil(last, years);
}

} // namespace core::rules
