#pragma once

#include "ui/desk/desk.h"

#include <QStringList>

#include <set>

namespace ui::health {

/// Merge days of today and later whose strips, not written back yet, or pins name a colony that is held on the day
/// shown: a sentence a merge day. Throws Error(Book).
QStringList brokenPlans(const desk::Desk& desk);
/// The same of these colonies alone.
QStringList brokenPlans(const desk::Desk& desk, const std::set<core::ColonyId>& held);

} // namespace ui::health
