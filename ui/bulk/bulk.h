#pragma once

#include "ui/desk/desk.h"
#include "ui/form/form.h"

#include <functional>
#include <memory>
#include <vector>

// What is done with several visits or colonies at once. Each is one edit and one undo. False, and said why: nothing was
// begun. Throw Error.

namespace ui::bulk {

/// Shows a form at the right; false: it could not be (WorkPage::openForm).
using Open = std::function<bool(std::unique_ptr<form::Form>)>;

bool changeVisits(desk::Desk& desk, const std::vector<core::VisitId>& visits, const Open& open);
/// At once; asks for a correction where a foulbrood hold rests on one of them.
bool takeBackVisits(desk::Desk& desk, const std::vector<core::VisitId>& visits);
/// Of the selected hives: their data; the same visit of each, on the day shown.
bool changeSelected(desk::Desk& desk, const Open& open);
bool visitSelected(desk::Desk& desk, const Open& open);

} // namespace ui::bulk
