#pragma once

#include "core/edit/session.h"
#include "ui/form/form.h"

#include <vector>

// What fields choose among, read from the book. Throws Error(Book).

namespace ui::form {

/// All colonies, living and ended, in natural order: the name that means each today (LABEL, or LABEL@SINCE where a
/// later colony has the label), and of the ended also when and how they ended.
std::vector<Option> colonyOptions(const core::edit::Session& session);
std::vector<Option> yardOptions(const core::edit::Session& session); ///< values are their names
std::vector<Option> boxOptions(const core::edit::Session& session);  ///< values are their names

/// The colony that a typed name means on a day: LABEL or LABEL@SINCE.
std::optional<core::Colony> colonyNamed(const core::edit::Session& session, const QString& name, core::Day on);
/// The name that means this colony on a day.
QString nameOn(const core::edit::Session& session, const core::Colony& colony, core::Day on);

} // namespace ui::form
