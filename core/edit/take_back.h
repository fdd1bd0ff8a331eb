#pragma once

#include "core/edit/change_set.h"
#include "core/store/database.h"

#include <QString>

#include <optional>

namespace core::edit {

/// What takes a `do` line of the history back out of turn, though later lines stand. Throws Error(BadData) with one
/// sentence: it is none, it is taken back already, or what rests on it — a later line wrote one of its rows, a record
/// made later points to one, or one stands in its place.
ChangeSet takeBackOf(const store::Database& db, qint64 seq);

/// Once the change is written: throws Error(BadData) with the sentence of the first invariant that it breaks, or where
/// a hive would stand too near another.
void needSoundBook(const store::Database& db, const ChangeSet& change, Day today);

/// Why it cannot be taken back, as far as a few reads tell: it is none, it is taken back, or its rows are not as it
/// left them. nullopt: it can be tried.
std::optional<QString> takeBackBarred(const store::Database& db, qint64 seq);

} // namespace core::edit
