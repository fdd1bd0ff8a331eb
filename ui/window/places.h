#pragma once

#include "ui/desk/desk.h"

namespace ui::window {

class WorkPage;

/// The places besides plan and merge day: Colonies, Visits, Season, each of one page or several under tabs.
void addPlaces(WorkPage& page, desk::Desk& desk, Dialogs& dialogs);

} // namespace ui::window
