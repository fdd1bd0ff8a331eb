#pragma once

#include "core/edit/session.h"

namespace demo {

/// Entries of the medicine book besides those of the story: a complete one, one corrected, one taken back; all of 2025,
/// so that nothing of the fall of 2026 is another. Products are invented.
void tellMedicine(core::edit::Session& session);

} // namespace demo
