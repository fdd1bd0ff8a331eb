#pragma once

#include "ui/window/main_window.h"

#include <QAction>

#include <utility>

namespace ui::window {

class WorkPage;

/// Connects each command to what it does, one function a menu.
void wire(MainWindow& window, Commands& commands, Dialogs& dialogs);

/// `work(WorkPage&)` when the command is given and a book is open.
template <class Work> void onPage(MainWindow& window, QAction* command, Work work) {
    QObject::connect(command, &QAction::triggered, &window, [&window, work = std::move(work)] {
        if (window.page()) work(*window.page());
    });
}

} // namespace ui::window
