#pragma once

#include "core/store/database.h"

#include <optional>

namespace core::store {

/// Keeps the packed rows of one part of a deleted range with a line of the history.
void addHistoryPart(const Database& db, qint64 seq, int ofRange, int part, const QByteArray& rows);
/// nullopt after the last part.
std::optional<QByteArray> historyPart(const Database& db, qint64 seq, int ofRange, int part);

} // namespace core::store
