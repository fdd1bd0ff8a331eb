#include "ui/window/visit_paper.h"

#include "ui/health/round_page.h"
#include "ui/window/main_window.h"
#include "ui/window/to_paper.h"
#include "ui/window/wiring.h"

#include <QAction>
#include <QMenu>

namespace ui::window {

using core::report::Sheet;

namespace {

struct VisitWay {
    QAction* command;
    Sheet sheet;
    PaperWay way;
};

} // namespace

VisitPaper::VisitPaper(QMenu* book, QWidget* window)
    : QObject(window), m_menu(book->addMenu(tr("Tall&y sheet and card"))) {
    const auto add = [&](const QString& text, const QString& keys, const QString& tip) {
        QAction* action = m_menu->addAction(text);
        if (!keys.isEmpty()) action->setShortcut(QKeySequence(keys));
        action->setStatusTip(tip);
        window->addAction(action);
        return action;
    };
    const QString tally = tr("A blank row a hive, in walking order, to write a day's visits on");
    const QString card = tr("The chosen hive alone, with its last visits");
    previewTally = add(tr("Pre&view the tally sheet"), QStringLiteral("Ctrl+Alt+V"), tally);
    printTally = add(tr("&Print the tally sheet…"), QStringLiteral("Ctrl+Alt+Y"), tally);
    pdfTally = add(tr("Tally sheet as P&DF…"), {}, tally);
    m_menu->addSeparator();
    previewCard = add(tr("Preview the &card"), {}, card);
    printCard = add(tr("P&rint the card…"), QStringLiteral("Ctrl+Alt+C"), card);
    pdfCard = add(tr("Card &as PDF…"), {}, card);
}

void VisitPaper::setBookOpen(bool open) {
    for (QAction* a : {previewTally, printTally, pdfTally, previewCard, printCard, pdfCard}) a->setEnabled(open);
    m_menu->setEnabled(open);
}

void VisitPaper::wire(MainWindow& window, Dialogs& dialogs) {
    const VisitWay ways[] = {
        {previewTally, Sheet::Tally, PaperWay::Preview}, {printTally, Sheet::Tally, PaperWay::Print},
        {pdfTally, Sheet::Tally, PaperWay::Pdf},         {previewCard, Sheet::Card, PaperWay::Preview},
        {printCard, Sheet::Card, PaperWay::Print},       {pdfCard, Sheet::Card, PaperWay::Pdf}};
    for (const VisitWay& way : ways)
        onPage(window, way.command,
               [&window, &dialogs, way](WorkPage&) { toPaper(window, dialogs, way.way, way.sheet); });
    connect(&window, &MainWindow::bookOpened, this, [&window, &dialogs] {
        const auto* round = window.findChild<health::RoundPage*>();
        if (!round) return;
        const auto to = [&window, &dialogs](PaperWay way) {
            return [&window, &dialogs, way](const std::vector<core::ColonyId>& those) {
                roundToPaper(window, dialogs, way, those);
            };
        };
        connect(round, &health::RoundPage::printAsked, &window, to(PaperWay::Preview));
        connect(round, &health::RoundPage::pdfAsked, &window, to(PaperWay::Pdf));
    });
}

} // namespace ui::window
