#pragma once

#include "ui/desk/desk.h"

namespace ui::look {
class Paged;
}
namespace ui::window {
class WorkPage;
}

namespace ui::find {

/// "All colonies" and "Search notes".
void addColonyPages(look::Paged& pages, window::WorkPage& page, desk::Desk& desk, Dialogs& dialogs);
/// "All visits".
void addVisitPage(look::Paged& pages, window::WorkPage& page, desk::Desk& desk, Dialogs& dialogs);

} // namespace ui::find
