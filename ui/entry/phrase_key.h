#pragma once

#include "ui/desk/desk.h"

class QLineEdit;

namespace ui::entry {

/// The brief word before the caret becomes its sentence. Where it stands for none, a list to pick from by the arrow
/// keys and Enter: of those that begin so, or of all.
void offerPhrases(QLineEdit& line, desk::Desk& desk);

/// F2 in that line does so from now on. `desk` outlives it.
void addPhraseKey(QLineEdit& line, desk::Desk& desk);

} // namespace ui::entry
