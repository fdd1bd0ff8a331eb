#pragma once

#include "core/edit/session.h"
#include "core/rules/medicine_book.h"

namespace core::edit {

/// What the medicine book is made of, as it stands for an edit: without its past (MedicineRows::changes).
rules::MedicineRows medicineRows(const EditContext& c);
/// The same of an open book, with its past.
rules::MedicineBook medicineBook(const Session& session);

} // namespace core::edit
