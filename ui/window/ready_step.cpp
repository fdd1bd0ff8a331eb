#include "ui/window/ready_step.h"

#include "ui/kit/kit_window.h"
#include "ui/merge/merge_place.h"
#include "ui/ready/ready_page.h"
#include "ui/window/main_window.h"
#include "ui/window/to_paper.h"
#include "ui/window/work_page.h"

namespace ui::window {

void addReadyStep(WorkPage& page, desk::Desk& desk, Dialogs& dialogs) {
    auto* ready = new ready::ReadyPage(desk, dialogs, page.merge());
    page.merge()->addStep(merge::Step::GetReady, ready);
    QObject::connect(ready, &ready::ReadyPage::visitAsked, &page, [&page, &desk](core::ColonyId colony) {
        desk.choose(colony);
        page.logVisit();
    });
    QObject::connect(ready, &ready::ReadyPage::walkAsked, &page, &WorkPage::walk);
    QObject::connect(ready, &ready::ReadyPage::sheetAsked, &page, [&page, &dialogs] {
        auto* window = qobject_cast<MainWindow*>(page.window());
        if (window) toPaper(*window, dialogs, PaperWay::Preview, core::report::Sheet::Walk);
    });
    QObject::connect(ready, &ready::ReadyPage::kitAsked, &page,
                     [&page, &desk, &dialogs] { guarded(dialogs, [&] { kit::showKit(desk, dialogs, &page); }); });
}

} // namespace ui::window
