#pragma once

#include "ui/form/form.h"

#include <vector>

class QLineEdit;

namespace ui::form {

/// Completes what is typed with those options whose value begins so, without regard to case; the list shows their
/// texts. Enter takes the marked one; with none marked it closes the list and goes on to the form.
void suggest(QLineEdit& edit, const std::vector<Option>& options);

} // namespace ui::form
