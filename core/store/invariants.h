#pragma once

#include <span>

namespace core::store {

/// What must hold between the rows of a book and cannot be said by the schema.
struct Invariant {
    const char* name;     ///< stable: "stand-shared"
    const char* sentence; ///< what is wrong, before the rows that are named
    const char* sql;      ///< one text cell a row that breaks it
};

std::span<const Invariant> invariants();

} // namespace core::store
