#pragma once

#include "core/edit/session.h"
#include "core/model/words.h"

#include <QString>

namespace ui::health {

/// What to do at once where a sign of the brood was seen: the one place that says it. `what`: Afb, Efb or BroodDoubt.
QString whatNow(core::Sign what);
/// Whom to tell of it where the keeper is; empty for a doubt, and where no place is recorded.
QString whomToTell(const core::edit::Session& session, core::Sign what);

} // namespace ui::health
