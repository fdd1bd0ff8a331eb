#pragma once

#include "ui/dialogs.h"

namespace ui::window {

class MainWindow;

enum class PaperWay { Preview, Print, Pdf };

/// The shown yard's merge day to paper, by the window's ways; says where a PDF went.
void toPaper(MainWindow& window, Dialogs& dialogs, PaperWay way);

} // namespace ui::window
