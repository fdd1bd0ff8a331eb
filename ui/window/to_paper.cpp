#include "ui/window/to_paper.h"

#include "ui/window/main_window.h"
#include "ui/window/work_page.h"

namespace ui::window {

void toPaper(MainWindow& window, Dialogs& dialogs, PaperWay way) {
    guarded(dialogs, [&] {
        desk::Desk* desk = window.desk();
        const auto yard = desk && desk->yard() ? desk->reading().find(*desk->yard()) : std::nullopt;
        if (!yard) return;
        if (window.page()->place() != Place::MergeDay) window.setPlace(Place::MergeDay);
        const Paper& paper = window.paper();
        const PaperJob job{desk->session(), desk->reading(), *yard};
        if (way == PaperWay::Preview && paper.preview) paper.preview(&window, job);
        if (way == PaperWay::Print && paper.print) paper.print(&window, job);
        if (way != PaperWay::Pdf || !paper.pdf) return;
        const auto path = dialogs.pdfToWrite(job.reading.snapshot.yard(*yard).name + QStringLiteral(".pdf"));
        if (!path) return;
        paper.pdf(job, *path);
        window.say(MainWindow::tr("The worksheet is in %1.").arg(*path));
    });
}

} // namespace ui::window
