#pragma once

#include "core/edit/change_set.h"
#include "core/exchange/ledger.h"

namespace core::exchange {

/// What the import writes, from a ledger without faults; gives the new rows their ids, in an order that does not depend
/// on that of files and rows. The result reads the ledger's rows: it must live until the change is written.
edit::ChangeSet importChanges(Ledger& ledger);

} // namespace core::exchange
