#pragma once

#include "core/store/database.h"

#include <QStringList>

namespace core::edit {

/// Where the history and the rows do not agree, one sentence each: every row is as the last line that wrote it left it,
/// each range has the rows that it should, nothing is there that no line made. Rows written as a range are counted, not
/// compared.
QStringList historyProblems(const store::Database& db);

} // namespace core::edit
