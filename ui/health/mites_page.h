#pragma once

#include "ui/season/season_page.h"

namespace ui::health {

/// Mites of the yard or of all: the latest washes, washes over time, natural fall, and before and after treatments.
season::SeasonPage* mitesPage(desk::Desk& desk, Dialogs& dialogs, QWidget* parent);

} // namespace ui::health
