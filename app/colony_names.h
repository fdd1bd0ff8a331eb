#pragma once

#include "core/model/snapshot.h"
#include "core/rules/plan.h"

#include <QString>

namespace app {

/// The living colony that `name` (LABEL or LABEL@SINCE) means on the snapshot's day. Throws Error(BadData).
core::ColonyIx colonyCalled(const core::Snapshot& s, const QString& name);

/// "A+B" split where both sides are colonies of the book. Throws Error(BadData) where none or several splits fit.
core::rules::ColonyPair pairCalled(const core::Snapshot& s, const QString& option, const QString& text);

/// Throws Error(BadData).
core::YardIx yardCalled(const core::Snapshot& s, const QString& name);

} // namespace app
