#pragma once

#include "core/model/words.h"

#include <QString>

namespace ui::health {

/// What to do at once where a sign of the brood was seen: the one place that says it. `what`: Afb, Efb or BroodDoubt.
QString whatNow(core::Sign what);

} // namespace ui::health
