#include "ui/window/main_window.h"

#include "ui/look/sheet.h"
#include "ui/plan/plan_view.h"
#include "ui/print/worksheet_paper.h"
#include "ui/window/commands.h"
#include "ui/window/import_folder.h"
#include "ui/window/recent_books.h"
#include "ui/window/welcome.h"
#include "ui/window/work_page.h"

#include <QAction>
#include <QEvent>
#include <QFrame>
#include <QLabel>
#include <QPushButton>
#include <QStackedWidget>
#include <QStatusBar>
#include <QVBoxLayout>

namespace ui::window {

MainWindow::MainWindow(const core::Clock& clock, Dialogs& dialogs)
    : m_clock(clock),
      m_dialogs(dialogs),
      m_paper(print::worksheetPaper()),
      m_top(new TopBar(this)),
      m_stack(new QStackedWidget(this)),
      m_welcome(new Welcome(m_stack)),
      m_saying(new QLabel(this)) {
    setWindowTitle(tr("Yardwright"));
    resize(1440, 900);
    look::dress(*this);
    m_commands = new Commands(m_top->menus(), this);
    auto* all = new QWidget(this);
    auto* down = new QVBoxLayout(all);
    down->setContentsMargins(0, 0, 0, 0);
    down->setSpacing(0);
    down->addWidget(m_top);
    auto* rule = new QFrame(all);
    rule->setFrameShape(QFrame::HLine);
    rule->setFrameShadow(QFrame::Plain);
    rule->setForegroundRole(QPalette::Mid);
    down->addWidget(rule);
    down->addWidget(m_stack, 1);
    m_stack->addWidget(m_welcome);
    setCentralWidget(all);
    m_saying->setObjectName(QStringLiteral("saying"));
    m_saying->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_saying->setContentsMargins(14, 3, 0, 5);
    statusBar()->addWidget(m_saying, 1);
    auto* advice = new QLabel(tr("Advice only: local law, inspectors, veterinarians and labels decide"), this);
    advice->setProperty("quiet", true);
    advice->setContentsMargins(12, 3, 14, 5);
    statusBar()->addPermanentWidget(advice);
    statusBar()->setSizeGripEnabled(false);
    connectCommands();
    settle();
}

MainWindow::~MainWindow() {
    delete m_page; // before the desk that it shows
}

void MainWindow::connectCommands() {
    connect(m_commands->makeBook, &QAction::triggered, this, [this] {
        if (const auto path = m_dialogs.bookToMake()) makeBook(*path);
    });
    connect(m_commands->openBook, &QAction::triggered, this, [this] {
        if (const auto path = m_dialogs.bookToOpen()) openBook(*path);
    });
    connect(m_commands->importCsv, &QAction::triggered, this, [this] {
        if (const auto folder = m_dialogs.folderOfCsv()) importFolder(*folder);
    });
    connect(m_commands, &Commands::recentAsked, this, [this](const QString& path) { openBook(path); });
    connect(m_commands->close, &QAction::triggered, this, &QWidget::close);
    connect(m_commands->undo, &QAction::triggered, this, &MainWindow::undo);
    connect(m_commands->redo, &QAction::triggered, this, &MainWindow::redo);
    connect(m_top, &TopBar::undoAsked, this, &MainWindow::undo);
    connect(m_top, &TopBar::placeAsked, this, &MainWindow::setPlace);
    connect(m_commands->yardPlan, &QAction::triggered, this, [this] { setPlace(Place::YardPlan); });
    connect(m_commands->mergeDay, &QAction::triggered, this, [this] { setPlace(Place::MergeDay); });
    const auto onPage = [this](QAction* action, auto work) {
        connect(action, &QAction::triggered, this, [this, work] {
            if (m_page) work(*m_page);
        });
    };
    onPage(m_commands->logVisit, [](WorkPage& p) { p.logVisit(); });
    onPage(m_commands->zoomIn, [](WorkPage& p) { p.plan()->zoomIn(); });
    onPage(m_commands->zoomOut, [](WorkPage& p) { p.plan()->zoomOut(); });
    onPage(m_commands->fit, [](WorkPage& p) { p.plan()->fit(); });
    onPage(m_commands->table, [this](WorkPage& p) { p.setTableShown(m_commands->table->isChecked()); });
    onPage(m_commands->preview, [this](WorkPage&) { toPaper(0); });
    onPage(m_commands->print, [this](WorkPage&) { toPaper(1); });
    onPage(m_commands->pdf, [this](WorkPage&) { toPaper(2); });
    connect(m_welcome, &Welcome::makeAsked, m_commands->makeBook, &QAction::trigger);
    connect(m_welcome, &Welcome::openAsked, m_commands->openBook, &QAction::trigger);
    connect(m_welcome, &Welcome::importAsked, m_commands->importCsv, &QAction::trigger);
    connect(
        m_welcome, &Welcome::recentAsked, this, [this](const QString& path) { openBook(path); }, Qt::QueuedConnection);
}

bool MainWindow::openBook(const QString& path, bool remember) {
    bool opened = false;
    guarded(m_dialogs, [&] {
        lay(openOrRead(path, m_clock));
        if (remember) rememberBook(m_desk->session().path());
        opened = true;
    });
    return opened;
}

bool MainWindow::makeBook(const QString& path) {
    bool made = false;
    guarded(m_dialogs, [&] {
        lay(core::edit::Session::create(path, m_clock));
        rememberBook(m_desk->session().path());
        made = true;
    });
    return made;
}

/// The book on the desk; the one before is put away.
void MainWindow::lay(std::unique_ptr<core::edit::Session> session) {
    auto desk = std::make_unique<desk::Desk>(std::move(session), m_dialogs);
    delete m_page;
    m_page = nullptr;
    m_desk = std::move(desk);
    m_page = new WorkPage(*m_desk, m_dialogs, m_stack);
    m_stack->addWidget(m_page);
    connect(m_desk.get(), &desk::Desk::said, this, &MainWindow::say);
    connect(m_desk.get(), &desk::Desk::read, this, &MainWindow::settle);
    connect(m_page, &WorkPage::previewAsked, this, [this] { toPaper(0); });
    connect(m_page, &WorkPage::printAsked, this, [this] { toPaper(1); });
    connect(m_page, &WorkPage::pdfAsked, this, [this] { toPaper(2); });
    connect(m_page, &WorkPage::carryingChanged, this, &MainWindow::setCarrying);
    setWindowTitle(tr("%1 – Yardwright").arg(m_desk->session().bookTitle()));
    say(m_desk->session().readOnly() ? tr("This book is open in another window: here it can only be read.")
                                     : QString());
    m_page->setTableShown(m_commands->table->isChecked());
    setPlace(Place::YardPlan);
}

bool MainWindow::importFolder(const QString& folder) {
    bool imported = false;
    guarded(m_dialogs, [&] {
        if (!m_desk) return;
        const ImportedFolder done = importFolderInto(m_desk->session(), folder);
        imported = done.faults.isEmpty();
        if (!imported)
            return m_dialogs.showFaults(tr("Nothing was read in: these lines need a look first."), done.faults);
        say(done.summary);
    });
    return imported;
}

void MainWindow::setPlace(Place place) {
    guarded(m_dialogs, [&] {
        if (m_page) m_page->setPlace(place);
        m_top->setPlace(place);
        settle();
    });
}

void MainWindow::setPaper(Paper paper) {
    m_paper = std::move(paper);
    settle();
}

/// What is shown and may be done, as the book now is.
void MainWindow::settle() {
    const bool open = m_desk != nullptr;
    const bool yards = open && !m_desk->reading().snapshot.yards.empty();
    if (!open) m_welcome->showStart(recentBooks());
    if (open && !yards) m_welcome->showEmptyBook(m_desk->session().bookTitle());
    m_stack->setCurrentWidget(yards ? static_cast<QWidget*>(m_page) : m_welcome);
    m_top->setPlacesShown(yards);
    m_commands->setBookOpen(open, open && !m_desk->session().readOnly());
    m_commands->preview->setEnabled(yards && m_paper.preview);
    m_commands->print->setEnabled(yards && m_paper.print);
    m_commands->pdf->setEnabled(yards && m_paper.pdf);
    m_commands->setRecent(recentBooks());
    const bool writable = open && !m_desk->session().readOnly();
    const QString undoText = writable ? m_desk->session().undoText().value_or(QString()) : QString();
    const QString redoText = writable ? m_desk->session().redoText().value_or(QString()) : QString();
    m_commands->setUndo(undoText, redoText);
    m_top->setUndo(undoText);
}

void MainWindow::say(const QString& sentence) {
    m_saying->setText(sentence);
    m_saying->setToolTip(sentence);
    m_saying->setAccessibleName(sentence.isEmpty() ? tr("Status line") : sentence);
}

QString MainWindow::saying() const { return m_saying->text(); }

void MainWindow::toPaper(int way) {
    guarded(m_dialogs, [&] {
        const auto yard = m_desk && m_desk->yard() ? m_desk->reading().find(*m_desk->yard()) : std::nullopt;
        if (!yard) return;
        if (m_page->place() != Place::MergeDay) setPlace(Place::MergeDay);
        const PaperJob job{m_desk->session(), m_desk->reading(), *yard};
        if (way == 0 && m_paper.preview) m_paper.preview(this, job);
        if (way == 1 && m_paper.print) m_paper.print(this, job);
        if (way != 2 || !m_paper.pdf) return;
        const auto path = m_dialogs.pdfToWrite(job.reading.snapshot.yard(*yard).name + QStringLiteral(".pdf"));
        if (!path) return;
        m_paper.pdf(job, *path);
        say(tr("The worksheet is in %1.").arg(*path));
    });
}

void MainWindow::undo() {
    guarded(m_dialogs, [this] {
        if (m_desk) m_desk->undo();
    });
}

void MainWindow::redo() {
    guarded(m_dialogs, [this] {
        if (m_desk) m_desk->redo();
    });
}

/// Undo and other edits wait while a hive is on its way.
void MainWindow::setCarrying(bool carrying) {
    for (QAction* a : {m_commands->undo, m_commands->redo, m_commands->logVisit, m_commands->importCsv})
        a->setEnabled(!carrying);
    m_top->undoButton()->setEnabled(!carrying);
    if (!carrying) settle();
}

/// Follows the system when it turns dark or its text larger.
bool MainWindow::event(QEvent* event) {
    const bool handled = QMainWindow::event(event);
    const bool look =
        event->type() == QEvent::ApplicationPaletteChange || event->type() == QEvent::ApplicationFontChange;
    if (look && !m_dressing) {
        m_dressing = true;
        look::dress(*this);
        m_dressing = false;
    }
    return handled;
}

} // namespace ui::window
