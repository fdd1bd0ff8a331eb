#pragma once

#include "ui/plan/layout.h"

namespace ui::plan {

/// Puts the order numbers of unions on free ground on or beside their arcs, hides strengths that arcs or numbers run
/// across (written shorter, where that is enough), and puts the metres where there is still room. With
/// Layout::textsYield labels give way as well; the chosen hive's texts stay.
void placeSigns(const Scene& scene, const Texts& texts, Layout& layout);

/// What of it changes with the zoom alone: texts that arcs and numbers run across are hidden.
void yieldTexts(const Texts& texts, Layout& layout);

} // namespace ui::plan
