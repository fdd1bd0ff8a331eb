#pragma once

#include <vector>

class QWidget;

namespace ui::window {

/// The keys go to the pane after (`by` 1) or before (−1) the one that has them, around the end; panes where nothing
/// takes keys are passed over.
void goOn(const std::vector<QWidget*>& panes, int by);

} // namespace ui::window
