#pragma once

#include "ui/desk/desk.h"

namespace ui::window {

class WorkPage;

/// Makes Get ready the first step of the page's merge day: its visits open in the page, its kit beside it.
void addReadyStep(WorkPage& page, desk::Desk& desk, Dialogs& dialogs);

} // namespace ui::window
