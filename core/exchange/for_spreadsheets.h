#pragma once

#include "core/base/progress.h"
#include "core/edit/session.h"

#include <QString>

namespace core::exchange {

/// A cell that a spreadsheet would take for a formula (it begins with = + - @, a tab or a line break, and is no number)
/// gets an apostrophe before it; any other stays as it is. Source: OWASP, "CSV Injection" (from memory).
QString cellForSpreadsheets(const QString& cell);

/// The files of exportBook with every cell made safe, as `visits.for-spreadsheets.csv`: for looking at, not for reading
/// back; files without that ending in the folder are not touched. Throws Error(Book),
/// Stopped: then no file is there that was not.
void exportForSpreadsheets(const edit::Session& session, const QString& dir, const Progress& progress = {});

} // namespace core::exchange
