#pragma once

#include "core/edit/salvage.h"
#include "core/store/database.h"

namespace core::edit {

/// Files each name under its own key again (core/base/natural_order.h), where no other row has that; named in `mended`.
void fileNames(const store::Database& db, SalvageAccount& account);

} // namespace core::edit
