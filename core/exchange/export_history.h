#pragma once

#include "core/edit/session.h"
#include "core/exchange/csv_writer.h"

namespace core::exchange {

/// history.csv: a line a change, oldest first, without their headers; changes.csv: a line a field that it changed.
void exportHistory(const edit::Session& session, CsvWriter& lines, CsvWriter& fields);

} // namespace core::exchange
