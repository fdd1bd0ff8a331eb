#pragma once

#include "core/rules/holds_then.h"

#include <QString>

#include <vector>

namespace ui::health {

/// "Were K1 positive, 14 more colonies would be held: Kiln Field: K2 (afb-contact), …". `more`: holds that do not stand
/// yet, by colony. A colony held otherwise already is named too.
QString supposedText(const core::Snapshot& s, core::ColonyIx colony, const std::vector<core::rules::HeldThen>& more);

} // namespace ui::health
