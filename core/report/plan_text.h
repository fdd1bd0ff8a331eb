#pragma once

#include "core/model/snapshot.h"
#include "core/rules/explain.h"
#include "core/rules/plan.h"

#include <QString>

class QTextStream;

namespace core::report {

/// The plan for people: sections in the order of a merge day, empty ones left out. Lines end with LF.
void writePlanText(QTextStream& out, const Snapshot& s, const rules::Plan& plan); ///< line by line: it can be long
QString planText(const Snapshot& s, const rules::Plan& plan);

/// What is due, a line a check; one sentence where nothing is.
QString dueText(const Snapshot& s, const std::vector<rules::Due>& due);

/// The summary and each rule that stands against the union, a line each.
QString explanationText(const Settings& settings, const rules::Explanation& explanation);

} // namespace core::report
