#pragma once

#include "core/model/snapshot.h"

#include <QStringList>

/// Every field of a snapshot as lines of text, by names and not by ids or positions; sorted, so that the order of rows
/// of one day does not matter. Signs: those of visits with afb, efb or brood-doubt.
QStringList linesOf(const core::Snapshot& s);
