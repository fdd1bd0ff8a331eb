#pragma once

namespace ui {
struct Dialogs;
}

namespace ui::window {

class MainWindow;

/// Where a sign of foulbrood is said as soon as it is in the book: above all else, in whatever place one is
/// (ui/health/sign_notice.h). One a book.
void wireSignNotice(MainWindow& window, Dialogs& dialogs);

} // namespace ui::window
