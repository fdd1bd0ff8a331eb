#pragma once

#include "core/report/ledger_table.h"

#include <QString>

#include <vector>

namespace ui::print {

/// The ledger's pages as a PDF, on the usual paper; in place once it is whole. Throws Error(Book) where it cannot be
/// written.
void writeLedgerPdf(const core::Snapshot& s, const std::vector<core::rules::LedgerYear>& years,
                    const core::report::PageOrigin& origin, const QString& file);

} // namespace ui::print
