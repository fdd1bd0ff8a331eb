#pragma once

#include "core/model/rows.h"

#include <QString>

namespace ui::look {

/// "died", "destroyed", …
QString endWord(core::EndKind how);
/// "died on 3 Mar 2026"; empty for one that lives.
QString endText(const core::Colony& colony);

} // namespace ui::look
