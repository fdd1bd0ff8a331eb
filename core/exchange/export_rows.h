#pragma once

#include "core/edit/edit_context.h"
#include "core/exchange/csv_writer.h"
#include "core/exchange/export_names.h"

// One function a kind: the book's rows of it, in order, without the header.

namespace core::exchange {

void exportYards(const ExportNames& names, CsvWriter& out);
void exportBoxKinds(const ExportNames& names, CsvWriter& out);
void exportColonies(const edit::EditContext& c, const ExportNames& names, CsvWriter& out);
void exportPlacements(const edit::EditContext& c, const ExportNames& names, CsvWriter& out);
void exportVisits(const edit::EditContext& c, const ExportNames& names, CsvWriter& out);
void exportTransfers(const edit::EditContext& c, const ExportNames& names, CsvWriter& out);
void exportResults(const edit::EditContext& c, const ExportNames& names, CsvWriter& out);
void exportTreatments(const edit::EditContext& c, const ExportNames& names, CsvWriter& out);
void exportLineage(const edit::EditContext& c, const ExportNames& names, CsvWriter& out);
/// Those that differ from their defaults.
void exportSettings(const edit::EditContext& c, CsvWriter& out);

} // namespace core::exchange
