#pragma once

#include "core/edit/session.h"
#include "ui/desk/desk.h"
#include "ui/form/form.h"
#include "ui/records/record_rows.h"

#include <memory>

// A record of the list opened, or taken back.

namespace ui::records {

/// The form that changes it; nullptr for a visit, whose form is its own. Throws Error(BadData) where the record is
/// gone.
std::unique_ptr<form::Form> formOf(const core::edit::Session& book, const RecordRow& record);

core::edit::Edit takingBack(const RecordRow& record);
/// What is taken back, where a correction is asked for.
QString takingBackText(const RecordRow& record);
/// Takes it back, with a correction where one is asked for; what stands against it is said by the desk.
void takeBack(desk::Desk& desk, const RecordRow& record);

} // namespace ui::records
