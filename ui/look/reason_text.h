#pragma once

#include "core/rules/limits.h"

#include <QString>

namespace ui::look {

// The rule and the limits behind a finding, as small print.

/// "Rule 4.12: stores.single_kg 32 kg · weigh.max_age_days 30 days (assumption)"
QString rulesText(const core::Snapshot& s, const core::rules::Reason& why);
/// The same at length: what was seen, and each limit with its source, line by line.
QString reasonTip(const core::Snapshot& s, const core::rules::Reason& why);

} // namespace ui::look
