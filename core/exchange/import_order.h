#pragma once

#include "core/exchange/ledger.h"

#include <vector>

namespace core::exchange {

/// New rows in the order of their ids: natural order of names, then days. The same for the same rows, however they were
/// shuffled.
struct ImportOrder {
    std::vector<int> yards;
    std::vector<int> boxes;
    std::vector<int> stands;
    std::vector<int> colonies;
    std::vector<int> stays;
    std::vector<int> lineage;
    std::vector<int> colonyRank; ///< of every colony, the book's too
    std::vector<int> yardRank;
};

ImportOrder importOrder(const Ledger& ledger);

/// Puts visits, transfers, results, treatments, feedings, queens, samples, ends of kit, mites fallen and settings in
/// order.
void orderRecords(Ledger& ledger, const ImportOrder& order);

} // namespace core::exchange
