#pragma once

#include "core/base/quantity.h"

#include <QStringView>

#include <optional>

namespace ui::visit {

/// Frames as people type them: 3, 3.25, 3,25, 3¼, 3 ¼, 3 1/4, ½, 3/4. In quarters of a frame exactly, 0 to 24 frames;
/// nullopt for all else.
std::optional<core::Quarters> parseFrames(QStringView typed);

} // namespace ui::visit
