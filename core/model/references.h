#pragma once

#include "core/model/row.h"

#include <span>

namespace core {

/// A column that holds the id of a row of another table.
struct Reference {
    Table from = Table::Visit;
    size_t column = 0; ///< position in columnsOf(from)
    Table to = Table::Colony;
};

/// All of them, as the migrations declare them.
std::span<const Reference> references();

/// Values of these columns stand in a table once, among rows whose cell `onlyColumn` is `onlyValue` where one is named.
struct UniqueKey {
    Table table = Table::Visit;
    std::span<const size_t> columns;
    int onlyColumn = -1;
    Value onlyValue;
};

/// Those that a row which comes back can find taken.
std::span<const UniqueKey> uniqueKeys();

} // namespace core
