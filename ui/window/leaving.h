#pragma once

#include "ui/dialogs.h"

namespace ui::window {

class WorkPage;

/// Before a book is left: what is typed and is not kept beside it is kept now; where that cannot be, the user is asked.
/// False: stay.
bool mayLeave(const WorkPage& page, Dialogs& dialogs);

} // namespace ui::window
