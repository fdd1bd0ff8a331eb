#pragma once

#include "core/exchange/ledger.h"

#include <vector>

namespace core::exchange {

/// A field as a file would have it; blank where nothing is recorded.
struct Field {
    const char* column;
    QString given;
    QString stored;
};

/// True where the book says the same of `name`. Else the fields that differ are kept, and the first of them is a fault,
/// unless such rows are left out.
bool sameAsBook(Ledger& ledger, Origin at, const QString& name, const std::vector<Field>& fields);

/// Faults a second row of one key.
void faultTwice(Ledger& ledger, Origin at, const char* column, const QString& name, Origin before);

} // namespace core::exchange
