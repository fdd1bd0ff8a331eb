#pragma once

#include "ui/look/colours.h"

#include <QString>

#include <functional>

class QWidget;

namespace ui::look {

/// The look of buttons, labels and menus in these colours. Properties: `primary`, `plain` (buttons), `quiet`, `warns`
/// (labels), `place` (the tabs at the top).
QString styleSheet(const Colours& c);

/// Gives a window type, palette and style sheet, light or dark by the application's palette: now, and again whenever
/// the system turns dark or light or its text changes size; `after` follows each time but the first.
void keepDressed(QWidget& window, std::function<void()> after = {});

/// The style that draws the same on every desktop; once, before the first window.
void setUpStyle();

} // namespace ui::look
