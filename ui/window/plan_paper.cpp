#include "ui/window/plan_paper.h"

#include "ui/dialogs.h"
#include "ui/pick/walking_order.h"
#include "ui/plan/plan_view.h"
#include "ui/print/book_origin.h"
#include "ui/print/paper_choice.h"
#include "ui/print/plan_output.h"
#include "ui/window/main_window.h"
#include "ui/window/wiring.h"
#include "ui/window/work_page.h"

#include <QAction>
#include <QMenu>

namespace ui::window {

namespace {

/// As it is shown; several selected hives are framed and listed.
std::optional<print::PlanSheetJob> jobOf(const MainWindow& window) {
    const desk::Desk& desk = *window.desk();
    const auto yard = desk.yard() ? desk.reading().find(*desk.yard()) : std::nullopt;
    const plan::Scene& scene = window.page()->plan()->scene();
    if (!yard || scene.blank) return std::nullopt;
    print::PlanSheetJob job;
    job.scene = scene;
    job.book = desk.session().bookTitle();
    job.revision = print::revisionOf(desk.session());
    job.day = desk.day();
    job.printedOn = desk.today();
    job.paper = print::lastPaperChoice().paper;
    if (desk.selected().size() > 1) job.selected = pick::walkingOrder(desk.reading(), *yard, desk.selected());
    return job;
}

struct Way {
    QAction* command;
    const char* ending;
    QString title;
    void (*write)(const print::PlanSheetJob&, const QString&);
};

} // namespace

PlanPaper::PlanPaper(QMenu* book, QWidget* window) : QObject(window), m_menu(book->addMenu(tr("Pl&an of the yard"))) {
    const auto add = [&](const QString& text, const QString& keys, const QString& tip) {
        QAction* action = m_menu->addAction(text);
        if (!keys.isEmpty()) action->setShortcut(QKeySequence(keys));
        action->setStatusTip(tip);
        window->addAction(action);
        return action;
    };
    print = add(tr("&Print the plan…"), QStringLiteral("Ctrl+Alt+P"),
                tr("The drawing alone, to scale where it fits; selected hives are framed and listed"));
    pdf = add(tr("Plan as P&DF…"), {}, tr("The same to a file"));
    svg = add(tr("Plan as &SVG…"), {}, tr("The drawing as lines, for other programs"));
    png = add(tr("Plan as a pi&cture…"), {}, tr("The drawing as PNG, 300 dots an inch"));
}

void PlanPaper::setBookOpen(bool open) {
    for (QAction* a : {print, pdf, svg, png}) a->setEnabled(open);
    m_menu->setEnabled(open);
}

void PlanPaper::wire(MainWindow& window, Dialogs& dialogs) {
    onPage(window, print, [&window, &dialogs](WorkPage& page) {
        guarded(dialogs, [&] {
            if (const auto job = jobOf(window)) print::printPlan(&page, *job);
        });
    });
    const Way ways[] = {{pdf, ".pdf", tr("Plan as PDF"), print::writePlanPdf},
                        {svg, ".svg", tr("Plan as SVG"), print::writePlanSvg},
                        {png, ".png", tr("Plan as a picture"), print::writePlanPng}};
    for (const Way& way : ways)
        onPage(window, way.command, [&window, &dialogs, way](WorkPage&) {
            guarded(dialogs, [&] {
                const auto job = jobOf(window);
                if (!job) return;
                const auto path =
                    dialogs.fileToWrite(way.title, tr("%1, plan").arg(job->scene.yard) + QLatin1StringView(way.ending));
                if (!path) return;
                way.write(*job, *path);
                const auto scale = print::PlanSheet(*job).scale();
                window.say(scale ? tr("The plan, 1:%1, is in %2.").arg(*scale).arg(*path)
                                 : tr("The plan, not to scale, is in %1.").arg(*path));
            });
        });
}

} // namespace ui::window
