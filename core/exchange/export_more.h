#pragma once

#include "core/edit/edit_context.h"
#include "core/exchange/csv_writer.h"
#include "core/exchange/export_names.h"

#include <memory>
#include <vector>

namespace core::exchange {

/// Adds the files for what the ten do not hold, each only where it has rows; each row ticks.
void exportMore(const edit::EditContext& c, const ExportNames& names, const QString& dir,
                std::vector<std::unique_ptr<CsvWriter>>& files, Ticker& ticker);

} // namespace core::exchange
