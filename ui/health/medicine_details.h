#pragma once

#include "core/rules/medicine_book.h"

#include <QString>

namespace ui::health {

/// One entry with all its fields, what is missing of it by which rule, and what was altered: the old words struck
/// through, with who, when and why. HTML.
QString medicineDetails(const core::rules::MedicineBook& book, const core::rules::MedicineEntry& entry);

/// Who is under withdrawal on the book's day and until when; whose withdrawal cannot be counted. Empty: nobody.
QString withdrawalSummary(const core::rules::MedicineBook& book);

} // namespace ui::health
