#pragma once

#include "core/model/rows.h"

#include <optional>

namespace core::rules {

/// The last day of a treatment as it is recorded: its day and the `days` after it (0 where they are not recorded).
Day treatmentLastDay(const Treatment& t);

/// The first day on which an entry of the medicine book need not be kept any more: `years` after the last of the
/// treatment's last day, the day on which the last of its strips came out, and the disposal of what was left.
/// Sources: Regulation (EU) 2019/6 article 108; Veterinary Medicines Regulations 2013 (administration or disposal).
Day medicineKeptUntil(const Treatment& t, int years, std::optional<Day> lastOut = {});

} // namespace core::rules
