#pragma once

class QWidget;

namespace ui::look {

/// Gives each Alt key of the window to one of what is shown: to its menus first, then in the order of the widgets. One
/// that comes too late gets another letter of its text, or none. Again whenever something else is shown.
void settleMnemonics(QWidget& window);

} // namespace ui::look
