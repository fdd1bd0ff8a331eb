#pragma once

#include "core/edit/bulk_change.h"
#include "ui/bulk/common.h"

#include <vector>

namespace ui::bulk {

/// The note of several records: it begins empty; what is typed is written after what is there, or instead of it.
void addNoteFields(std::vector<form::Field>& fields, const Common& common);
std::optional<core::edit::PutNote> noteOf(const form::Values& values);

} // namespace ui::bulk
