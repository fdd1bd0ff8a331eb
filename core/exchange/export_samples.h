#pragma once

#include "core/edit/edit_context.h"
#include "core/exchange/export_names.h"

#include <QStringList>

#include <vector>

// Samples and ends of quarantined kit as rows of files (columnsOf(FileKind::Samples), ...KitEnds).

namespace core::exchange {

/// By colony, then by day. A sample's answer is told by verdict and paper: the result itself stands in results.csv.
std::vector<QStringList> sampleRows(const edit::EditContext& c, const ExportNames& names);
/// By day, then as they read.
std::vector<QStringList> kitEndRows(const edit::EditContext& c, const ExportNames& names);

} // namespace core::exchange
