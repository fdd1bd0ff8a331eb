#pragma once

#include "core/edit/edit_context.h"
#include "core/exchange/export_names.h"

#include <QStringList>

#include <vector>

// Feed given and queens as rows of files (columnsOf(FileKind::Feedings), ...Queens).

namespace core::exchange {

/// By colony, then by day.
std::vector<QStringList> feedingRows(const edit::EditContext& c, const ExportNames& names);
std::vector<QStringList> queenRows(const edit::EditContext& c, const ExportNames& names);

} // namespace core::exchange
