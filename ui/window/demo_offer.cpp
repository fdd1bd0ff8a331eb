#include "ui/window/demo_offer.h"

#include "ui/busy/run.h"
#include "ui/window/main_window.h"
#include "ui/window/welcome.h"

namespace ui::window {

void offerDemo(MainWindow& window, Dialogs& dialogs, DemoMaker make) {
    const auto begin = [&window, &dialogs, make = std::move(make)] {
        guarded(dialogs, [&] {
            const auto path = dialogs.bookToMake();
            if (!path) return;
            const auto work = [&](const core::Progress& progress) { make(*path, progress); };
            if (busy::run(window, MainWindow::tr("An invented book is made…"), work))
                window.openBook(*path);
            else
                window.say(MainWindow::tr("Stopped: no book was made."));
        });
    };
    QObject::connect(window.welcome(), &Welcome::demoAsked, &window, begin);
    window.welcome()->setDemoOffered();
}

} // namespace ui::window
