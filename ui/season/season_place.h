#pragma once

#include "ui/desk/desk.h"

namespace ui::look {
class Paged;
}

namespace ui::season {

/// The pages of the season: strength, mites, feed, queens, winter loss.
void addSeasonPages(look::Paged& pages, desk::Desk& desk, Dialogs& dialogs);

} // namespace ui::season
