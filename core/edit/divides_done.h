#pragma once

#include "core/edit/session.h"
#include "core/rules/divide_checks.h"

#include <vector>

namespace core::edit {

/// How the new colonies of divides came to queens, of the strips of merge days that were done. Throws Error(Book).
std::vector<rules::DivideDone> dividesDone(const Session& book);

} // namespace core::edit
