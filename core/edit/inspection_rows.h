#pragma once

#include "core/edit/session.h"
#include "core/rules/inspection_report.h"

namespace core::edit {

/// From `from` to `until`, both included. `yards`: names; empty: all that ever bore a hive. Throws Error(BadData) where
/// a yard is not in the book or `from` lies after `until`, Error(Book) where the file fails.
rules::InspectionBook inspectionRows(const Session& session, Day from, Day until, const QStringList& yards);

} // namespace core::edit
