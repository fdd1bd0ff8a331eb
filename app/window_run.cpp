#include "app/window_run.h"

#include "app/cli.h"
#include "app/demo_file.h"
#include "ui/backup/keeping.h"
#include "ui/look/sheet.h"
#include "ui/salvage/salvage_window.h"
#include "ui/window/backup_commands.h"
#include "ui/window/commands.h"
#include "ui/window/copy_commands.h"
#include "ui/window/demo_offer.h"
#include "ui/window/furniture.h"
#include "ui/window/main_window.h"
#include "ui/window/real_dialogs.h"

#include <QApplication>

namespace app {

bool isWindow(const QStringList& words) {
    return words.isEmpty() || (needs(words) == Needs::Window && words.first() != QLatin1StringView("pictures"));
}

int runWindow(const QStringList& words, const core::Clock& clock, QTextStream& err) {
    if (words.size() > 1) {
        err << "yardwright: “" << words.at(1) << "” was not expected; yardwright --help lists the commands.\n";
        return 2;
    }
    ui::look::setUpStyle();
    ui::window::RealDialogs dialogs;
    ui::window::MainWindow window(clock, dialogs);
    const ui::window::Furniture furniture(window);
    ui::window::offerDemo(window, dialogs, [&clock](const QString& path, const core::Progress& progress) {
        makeDemo(path, clock, {}, progress);
    });
    window.commands()->backups()->keepByItself();
    ui::window::copiesOf(window)->lookByItself();
    window.show();
    // Of a damaged book the window shows what can be done.
    if (!words.isEmpty() && !window.openBook(words.first()) && !window.findChild<ui::salvage::SalvageWindow*>())
        return 5;
    const int status = QApplication::exec();
    ui::window::copiesOf(window)->finish();
    if (auto* backups = window.commands()->backups()->keeping()) backups->finish();
    return status;
}

} // namespace app
