#pragma once

#include "core/edit/session.h"
#include "core/exchange/csv_writer.h"

namespace core::exchange {

/// history.csv: a line a change, oldest first, without their headers; changes.csv: a line a field that it changed.
/// `progress` may stop it; the writers tell it how far it is.
void exportHistory(const edit::Session& session, CsvWriter& lines, CsvWriter& fields, const Progress& progress);

} // namespace core::exchange
