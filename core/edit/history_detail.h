#pragma once

#include "core/edit/history.h"
#include "core/store/database.h"

#include <optional>

namespace core::edit {

/// What one line did, in words: of many records the first `most`. nullopt: there is no such line.
std::optional<HistoryDetail> historyDetail(const store::Database& db, qint64 seq, int most = 300);

} // namespace core::edit
