#pragma once

#include "core/model/snapshot.h"
#include "core/rules/plan.h"

namespace tests::report {

/// A yard of a snapshot with its plan.
struct Sample {
    core::Snapshot s;
    core::YardIx yard;
    core::rules::Plan plan;
};

/// tests/data/yards/FOLDER on a day.
Sample workedYard(const QString& folder, const QString& yard, const QString& day);

/// 60 hives in rows, some held, on 2026-09-20: 20 unions.
Sample yardOf60();

/// `count` hives of one yard, all held as their brood was never checked, with labels of 60 characters where
/// `longNames`.
Sample heldYard(int count, bool longNames);

/// Twelve hives whose labels have 60 characters and mostly unite, two of them in two boxes.
Sample longNamedYard();

} // namespace tests::report
