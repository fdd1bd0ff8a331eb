#include "ui/window/main_window.h"

#include "core/edit/people.h"
#include "core/edit/salvage.h"
#include "ui/busy/long_edit.h"
#include "ui/look/mnemonics.h"
#include "ui/look/sheet.h"
#include "ui/look/text_size.h"
#include "ui/merge/merge_place.h"
#include "ui/people/author.h"
#include "ui/people/who_keeps.h"
#include "ui/print/worksheet_paper.h"
#include "ui/settings/settings_dialog.h"
#include "ui/start/start_desk.h"
#include "ui/window/commands.h"
#include "ui/window/guarded_application.h"
#include "ui/window/import_folder.h"
#include "ui/window/leaving.h"
#include "ui/window/one_error.h"
#include "ui/window/open_book.h"
#include "ui/window/read_banner.h"
#include "ui/window/recent_books.h"
#include "ui/window/status_line.h"
#include "ui/window/welcome.h"
#include "ui/window/wiring.h"
#include "ui/window/work_page.h"
#include "ui/window/yard_commands.h"

#include <QAction>
#include <QCloseEvent>
#include <QEvent>
#include <QFileInfo>
#include <QFrame>
#include <QPushButton>
#include <QStackedWidget>
#include <QStatusTipEvent>
#include <QVBoxLayout>

namespace ui::window {

namespace {

QFrame* thinRule(QWidget* parent) {
    auto* rule = new QFrame(parent);
    rule->setFrameShape(QFrame::HLine);
    rule->setFrameShadow(QFrame::Plain);
    rule->setForegroundRole(QPalette::Mid);
    return rule;
}

/// The session's own file, or what lies in its place by now.
bool isBookAt(const core::edit::Session& session, const QString& path) {
    return QFileInfo(path).canonicalFilePath() == session.path();
}

} // namespace

MainWindow::MainWindow(const core::Clock& clock, Dialogs& dialogs)
    : m_clock(clock),
      m_dialogs(*new OneError(dialogs, this)),
      m_paper(print::worksheetPaper()),
      m_top(new TopBar(this)),
      m_banner(new ReadBanner(this)),
      m_stack(new QStackedWidget(this)),
      m_welcome(new Welcome(m_stack)),
      m_whoKeeps(new people::WhoKeeps(this)),
      m_status(new StatusLine(this)) {
    if (auto* app = dynamic_cast<GuardedApplication*>(qApp)) app->setDialogs(&m_dialogs);
    setWindowTitle(tr("Yardwright"));
    resize(1440, 900);
    look::keepDressed(*this);
    m_commands = new Commands(m_top->menus(), this);
    buildFrame();
    wire(*this, *m_commands, m_dialogs);
    settle();
}

MainWindow::~MainWindow() {
    if (auto* app = dynamic_cast<GuardedApplication*>(qApp)) app->setDialogs(nullptr);
    delete findChild<settings::SettingsDialog*>(); // before the desk that they show
    delete m_page;
}

void MainWindow::buildFrame() {
    auto* all = new QWidget(this);
    auto* down = new QVBoxLayout(all);
    down->setContentsMargins(0, 0, 0, 0);
    down->setSpacing(0);
    down->addWidget(m_top);
    down->addWidget(thinRule(all));
    down->addWidget(m_banner);
    down->addWidget(m_whoKeeps);
    down->addWidget(m_stack, 1);
    down->addWidget(m_status);
    m_stack->addWidget(m_welcome);
    setCentralWidget(all);
    m_whoKeeps->hide();
    connect(m_whoKeeps, &people::WhoKeeps::named, this, &MainWindow::keptBy);
    connect(m_whoKeeps, &people::WhoKeeps::later, m_whoKeeps, &QWidget::hide);
}

bool MainWindow::openBook(const QString& path, bool remember) {
    bool opened = false;
    if (m_desk && isBookAt(m_desk->session(), path)) {
        // Its own lock would stand against it. What cannot be read does not take the place of what is shown.
        guarded(m_dialogs, [&] {
            core::edit::Session::open(path, m_clock, core::edit::Session::Access::ReadOnly);
            opened = true;
        });
        return opened && replaceBook([](const QString&) {});
    }
    guarded(m_dialogs, [&] {
        try {
            OpenedBook opening = openOrRead(path, m_clock, *this);
            if (!opening.session) return say(tr("Stopped: the book is as it was."));
            if (!mayLeave()) return;
            lay(std::move(opening.session), opening.onlyRead);
        } catch (const core::Error& e) {
            if (!core::edit::mayBeSalvaged(e, path)) throw;
            return emit bookDamaged(path, e.userMessage());
        }
        if (remember) rememberBook(m_desk->session().path());
        opened = true;
    });
    return opened;
}

bool MainWindow::makeBook(const QString& path) {
    bool made = false;
    guarded(m_dialogs, [&] {
        if (!mayLeave()) return;
        lay(core::edit::Session::create(path, m_clock));
        rememberBook(m_desk->session().path());
        m_whoKeeps->ask(people::lastAuthor());
        m_whoKeeps->show();
        made = true;
    });
    return made;
}

bool MainWindow::replaceBook(const std::function<void(const QString& book)>& work) {
    if (!m_desk || !mayLeave()) return false;
    const QString book = m_desk->session().path();
    putAway();
    m_desk.reset();
    settle();
    bool done = false;
    guarded(m_dialogs, [&] {
        work(book);
        done = true;
    });
    return openBook(book) && done;
}

/// Nothing that is typed is lost by it, or whoever typed it was asked.
bool MainWindow::mayLeave() { return !m_page || window::mayLeave(*m_page, m_dialogs); }

void MainWindow::closeEvent(QCloseEvent* event) { event->setAccepted(mayLeave()); }

/// What shows the book on the desk.
void MainWindow::putAway() {
    if (m_page) emit bookLeaving();
    delete findChild<settings::SettingsDialog*>();
    delete m_page;
    m_page = nullptr;
}

/// The book on the desk; the one before is put away.
void MainWindow::lay(std::unique_ptr<core::edit::Session> session, const QString& onlyRead) {
    auto desk = std::make_unique<desk::Desk>(std::move(session), m_dialogs, onlyRead);
    putAway();
    m_desk = std::move(desk);
    m_page = new WorkPage(*m_desk, m_dialogs, m_stack);
    m_stack->addWidget(m_page);
    connectBook();
    m_whoKeeps->hide();
    m_desk->setAuthor(people::lastAuthor());
    setWindowTitle(tr("%1 – Yardwright").arg(m_desk->session().bookTitle()));
    say(m_desk->onlyRead());
    m_page->setTableShown(m_commands->table->isChecked());
    setPlace(Place::YardPlan);
    emit bookOpened();
}

void MainWindow::connectBook() {
    m_desk->setWhileWritten([this] { return std::make_shared<busy::LongEdit>(m_desk->session(), *this); });
    connect(m_page->merge(), &merge::MergePlace::stepAsked, this, [this] { setPlace(Place::MergeDay); });
    m_page->addActions(m_page->merge()->stepActions());
    connect(m_desk.get(), &desk::Desk::said, this, &MainWindow::say);
    connect(m_desk.get(), &desk::Desk::did, m_status, &StatusLine::sayDone);
    connect(m_desk.get(), &desk::Desk::notSaved, m_status, &StatusLine::sayNotSaved);
    connect(m_desk.get(), &desk::Desk::read, this, &MainWindow::settle);
    connect(m_desk.get(), &desk::Desk::authorChanged, this, &MainWindow::settleAuthor);
    connect(m_page, &WorkPage::previewAsked, m_commands->preview, &QAction::trigger);
    connect(m_page, &WorkPage::printAsked, m_commands->print, &QAction::trigger);
    connect(m_page, &WorkPage::pdfAsked, m_commands->pdf, &QAction::trigger);
    connect(m_page->start(), &start::StartDesk::busyChanged, this, &MainWindow::settle);
    connect(m_page, &WorkPage::carryingChanged, this, &MainWindow::setCarrying);
}

bool MainWindow::importFolder(const QString& folder) {
    bool imported = false;
    guarded(m_dialogs, [&] {
        if (!m_desk) return;
        const ImportedFolder done = importFolderInto(m_desk->session(), folder, *this);
        imported = done.faults.isEmpty() && !done.stopped;
        if (done.stopped) return say(tr("Stopped: nothing was written."));
        if (!imported)
            return m_dialogs.showFaults(tr("Nothing was read in: these lines need a look first."), done.faults);
        done.changed ? m_status->sayDone(done.summary) : say(done.summary);
    });
    return imported;
}

void MainWindow::setPlace(Place place) {
    guarded(m_dialogs, [&] {
        if (m_page) m_page->setPlace(place);
        m_top->setPlace(m_page ? m_page->place() : place); // a form not saved keeps the place
        settle();
        emit placeChanged();
    });
}

void MainWindow::setTextPercent(int percent) {
    look::setTextPercent(percent);
    say(tr("Text at %1 % of its usual size.").arg(look::textPercent()));
    emit textSizeChanged();
}

void MainWindow::setPaper(Paper paper) {
    m_paper = std::move(paper);
    settle();
}

/// What is shown and may be done, as the book now is.
void MainWindow::settle() {
    const bool open = m_desk != nullptr;
    const bool writable = open && m_desk->onlyRead().isEmpty();
    const bool yards = open && !m_desk->reading().snapshot.yards.empty();
    const bool work = yards || (open && m_page && m_page->start()->busy());
    if (!open) m_welcome->showStart(recentBooks());
    if (open && !work) m_welcome->showEmptyBook(m_desk->session().bookTitle());
    m_commands->yards()->setYards(yards);
    m_stack->setCurrentWidget(work ? static_cast<QWidget*>(m_page) : m_welcome);
    if (m_page)
        for (const Place place : m_page->places()) {
            m_top->addPlace(place);
            m_commands->placeAction(place)->setVisible(true);
        }
    m_top->setPlacesShown(yards);
    m_status->setBook(!open      ? StatusLine::Book::None
                      : writable ? StatusLine::Book::Writable
                                 : StatusLine::Book::ReadOnly);
    m_banner->show(open ? m_desk->onlyRead() : QString());
    m_commands->setBookOpen(open, writable);
    m_commands->preview->setEnabled(yards && m_paper.preview);
    m_commands->print->setEnabled(yards && m_paper.print);
    m_commands->pdf->setEnabled(yards && m_paper.pdf);
    m_commands->setRecent(recentBooks());
    settleUndo();
    settleAuthor();
}

/// Those who are offered, and whoever writes though not among them.
void MainWindow::settleAuthor() {
    QStringList names;
    if (m_desk)
        for (const core::Person& p : m_desk->session().people())
            if (p.active) names << p.name;
    const QString author = m_desk ? m_desk->author() : QString();
    if (!author.isEmpty() && !names.contains(author)) names << author;
    m_commands->setAuthors(names, author);
}

void MainWindow::writeAs(const QString& name) {
    if (!m_desk) return;
    m_desk->setAuthor(name);
    people::rememberAuthor(name);
    say(tr("Written by %1 from now on.").arg(name));
}

/// The answer of a new book's keeper.
void MainWindow::keptBy(const QString& name) {
    guarded(m_dialogs, [&] {
        const QString before = m_desk->author();
        m_desk->setAuthor(name);
        try {
            m_desk->save(tr("Add a person"),
                         [&](const core::edit::EditContext& c) { return core::edit::addPerson(c, name); });
            people::rememberAuthor(name);
            m_whoKeeps->hide();
        } catch (const core::Error& e) {
            m_desk->setAuthor(before);
            m_whoKeeps->refuse(e.userMessage());
        }
    });
}

void MainWindow::settleUndo() {
    const bool writable = m_desk && !m_desk->session().readOnly();
    const QString undoText = writable ? m_desk->session().undoText().value_or(QString()) : QString();
    const QString redoText = writable ? m_desk->session().redoText().value_or(QString()) : QString();
    m_commands->setUndo(undoText, redoText);
    m_top->setUndo(undoText);
}

void MainWindow::say(const QString& sentence) { m_status->say(sentence); }

QString MainWindow::saying() const { return m_status->saying(); }

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

void MainWindow::tryAgain() {
    guarded(m_dialogs, [this] {
        if (!m_desk || m_desk->onlyRead().isEmpty()) return;
        try {
            m_desk->session().readOnly() ? m_desk->takeOver() : m_desk->session().needOwnFile();
            m_desk->setOnlyRead({});
        } catch (const core::Error& e) {
            if (m_desk->session().readOnly()) m_desk->setOnlyRead(onlyReadSince(e, m_clock));
        }
        say(m_desk->onlyRead().isEmpty() ? tr("The book can be changed here now.") : m_desk->onlyRead());
    });
}

/// Undo and other edits wait while a hive is on its way.
void MainWindow::setCarrying(bool carrying) {
    for (QAction* a :
         {m_commands->undo, m_commands->redo, m_commands->logVisit, m_commands->importCsv, m_commands->readFile})
        a->setEnabled(!carrying);
    for (const auto& [what, action] : m_commands->notes) action->setEnabled(!carrying);
    m_top->undoButton()->setEnabled(!carrying);
    if (!carrying) settle();
}

/// Follows the system when it turns dark or its text larger; hints of the menus go to the status line.
bool MainWindow::event(QEvent* event) {
    if (event->type() == QEvent::StatusTip) {
        m_status->hint(static_cast<QStatusTipEvent*>(event)->tip());
        return true;
    }
    const bool handled = QMainWindow::event(event);
    if (event->type() == QEvent::LayoutRequest) look::settleMnemonics(*this); // something else is shown
    return handled;
}

} // namespace ui::window
