#pragma once

#include "core/model/row.h"
#include "core/store/database.h"

#include <QString>

#include <optional>
#include <set>
#include <span>

namespace core::store {

/// What must hold between the rows of a book and cannot be said by the schema.
struct Invariant {
    const char* name;     ///< stable: "stand-shared"
    const char* sentence; ///< what is wrong, before the rows that are named
    const char* sql;      ///< one text cell a row that breaks it
};

std::span<const Invariant> invariants();

/// What first breaks an invariant that reads one of these tables, as the book's check says it; nullopt: nothing.
std::optional<QString> firstBroken(const Database& db, const std::set<Table>& tables);

} // namespace core::store
