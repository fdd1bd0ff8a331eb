#pragma once

#include <QFont>

namespace ui::look {

/// The window's type: Noto Sans (package fonts-noto-core) with DejaVu Sans (fonts-dejavu-core) behind it, at the
/// system's size; figures line up.
QFont textFont(const QFont& system);
QFont lesserFont(const QFont& text);  ///< 0.85 ×
QFont headingFont(const QFont& text); ///< 1.3 ×, bold

} // namespace ui::look
