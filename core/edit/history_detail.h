#pragma once

#include "core/base/progress.h"
#include "core/edit/history.h"
#include "core/store/database.h"

#include <optional>

namespace core::edit {

/// What one line did, in words: of many records the first `most`. nullopt: there is no such line. Throws Stopped where
/// `progress` is to stop.
std::optional<HistoryDetail> historyDetail(const store::Database& db, qint64 seq, int most = 300,
                                           const Progress& progress = {});

} // namespace core::edit
