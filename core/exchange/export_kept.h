#pragma once

#include "core/edit/edit_context.h"
#include "core/exchange/export_names.h"

#include <QStringList>

#include <vector>

// Rows of the files that are written where there are any, in the order of columnsOf(kind).

namespace core::exchange {

/// By colony, then by day.
std::vector<QStringList> feedingRows(const edit::EditContext& c, const ExportNames& names);
std::vector<QStringList> miteFallRows(const edit::EditContext& c, const ExportNames& names);
std::vector<QStringList> queenRows(const edit::EditContext& c, const ExportNames& names);
std::vector<QStringList> keeperRows(const edit::EditContext& c); ///< one at most
/// The book's own lines of what must be reported; by place, then disease.
std::vector<QStringList> notifiableRows(const edit::EditContext& c);

/// By treatment, then colony.
std::vector<QStringList> stripsOutRows(const edit::EditContext& c, const ExportNames& names);

} // namespace core::exchange
