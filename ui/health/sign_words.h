#pragma once

#include "core/rules/hold.h"
#include "ui/health/sign_records.h"

#include <set>
#include <span>

namespace ui::health {

/// "American foulbrood suspected: A1 in Kiln Field, 15 Sep 2026": a line a kind of sign.
QStringList signTitles(const core::Snapshot& s, const std::vector<SignRecord>& records);

/// Which hives are held by them, of how many in which yards, as a sentence. `held`: living colonies.
QString heldByText(const core::Snapshot& s, std::span<const core::ColonyIx> held);

} // namespace ui::health
