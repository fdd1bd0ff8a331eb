#pragma once

#include "ui/plan/layout.h"

namespace ui::plan {

/// Gives letters, labels, feed and strengths of `layout` their places, the more important ones first.
void placeTexts(const Scene& scene, const Texts& texts, Layout& layout);

/// Texts that an arc runs across (there was no other way for it) are moved to where none does; a strength is hidden
/// rather.
void moveTexts(const Scene& scene, const Texts& texts, Layout& layout);

} // namespace ui::plan
