#pragma once

#include "ui/plan/carry_guide.h"
#include "ui/plan/paint_scene.h"

class QPainter;

namespace ui::plan {

/// Hives on their way over the scene: the gripped one with its distance and what is said beside it, the others as
/// outlines with their labels; those that cannot stand there in orange and crossed out, barred by a hold hatched. In
/// layout pixels.
void paintCarry(QPainter& p, const Scene& scene, const Layout& layout, const Texts& texts, const Camera& camera,
                const Carry& carry, const CarryWords& words, const look::Colours& c);

} // namespace ui::plan
