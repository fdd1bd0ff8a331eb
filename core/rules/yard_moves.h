#pragma once

#include "core/model/snapshot.h"
#include "core/rules/hold.h"

#include <QStringList>

#include <span>
#include <utility>

// Rule 4.15: hives from yard to yard.

namespace core::rules {

/// A hold that keeps hives in their yards: all kinds but brood-not-checked.
bool keepsYards(HoldKind kind);

/// What stands against carrying hives to other yards on the snapshot's day, a sentence each; empty: nothing. Those that
/// the snapshot does not have, or that stand in that yard already, are passed over.
QStringList againstYardMoves(const Snapshot& s, std::span<const std::pair<ColonyId, YardId>> moves);

} // namespace core::rules
