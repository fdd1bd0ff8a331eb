#pragma once

#include "core/edit/session.h"
#include "core/report/page_origin.h"

namespace ui::print {

/// Number of the book's last history line; 0: it has none.
qint64 revisionOf(const core::edit::Session& book);

/// Pages of the book made today, for the paper last used on this machine.
core::report::PageOrigin originOf(const core::edit::Session& book);

} // namespace ui::print
