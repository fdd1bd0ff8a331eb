#include "ui/window/copy_commands.h"

#include "core/edit/book_copies.h"
#include "ui/copies/copies_notice.h"
#include "ui/copies/copies_text.h"
#include "ui/copies/copies_window.h"
#include "ui/copies/file_watch.h"
#include "ui/copies/known.h"
#include "ui/window/backup_commands.h"
#include "ui/window/commands.h"
#include "ui/window/main_window.h"
#include "ui/window/read_banner.h"
#include "ui/window/work_page.h"

#include <QAction>
#include <QBoxLayout>
#include <QDir>
#include <QEvent>
#include <QFileInfo>
#include <QMenu>

namespace ui::window {

namespace {

using Kind = desk::FileTrouble::Kind;

QAction* offered(const QString& text, const QString& tip, QObject* parent) {
    auto* action = new QAction(text, parent);
    action->setStatusTip(tip);
    return action;
}

} // namespace

CopyCommands::CopyCommands(QMenu* book, QWidget* window)
    : QObject(window),
      show(book->addAction(tr("Copies o&f this book…"))),
      openThere(offered(tr("Open what lies there &now"), tr("The file at the book's path as it is by now"), this)),
      openMoved(offered(tr("Open it where it is &now"), tr("The same book, in its new place"), this)),
      writeAgain(offered(tr("&Write it there again"), tr("All that this window has, to where the book was"), this)),
      overrule(offered(tr("Change it &here"), tr("The note is no longer true: the book is closed there"), this)),
      m_beside(this) {
    show->setShortcut(QKeySequence(QStringLiteral("Ctrl+Alt+O")));
    show->setEnabled(false);
    show->setStatusTip(tr("Files beside it that a sync program, a stick or a backup left: what each has"));
    window->addAction(show);
}

void CopyCommands::wire(MainWindow& window, Dialogs& dialogs) {
    m_window = &window;
    m_dialogs = &dialogs;
    m_offers.emplace(*window.banner());
    window.installEventFilter(this);
    m_notice = new copies::CopiesNotice(window.centralWidget());
    auto* down = qobject_cast<QBoxLayout*>(window.centralWidget()->layout());
    down->insertWidget(down->indexOf(window.banner()) + 1, m_notice);
    connect(show, &QAction::triggered, this, [this] { guarded(*m_dialogs, [this] { open(); }); });
    connect(m_notice, &copies::CopiesNotice::lookAsked, show, &QAction::trigger);
    connect(&window, &MainWindow::bookOpened, this, &CopyCommands::begin);
    connect(&window, &MainWindow::bookLeaving, this, [this] {
        finish();
        delete m_watch;
        m_watch = nullptr;
        show->setEnabled(false);
    });
    connectOffers();
}

void CopyCommands::connectOffers() {
    // Queued: the book goes, and with it the button that was pressed.
    const auto does = [this](QAction* action, auto work) {
        connect(
            action, &QAction::triggered, this,
            [this, work] {
                if (m_watch) guarded(*m_dialogs, [&] { work(*m_window); });
            },
            Qt::QueuedConnection);
    };
    does(openThere, [](MainWindow& w) { w.openBook(w.desk()->session().path()); });
    does(openMoved, [this](MainWindow& w) { w.openBook(QString(m_watch->trouble().nowAt)); });
    does(writeAgain, [](MainWindow& w) {
        const QString path = w.desk()->session().path();
        w.desk()->session().backUp(path);
        if (w.openBook(path)) w.say(tr("The book is back where it was, with all that this window had."));
    });
    does(overrule, [this](MainWindow& w) {
        m_watch->overruleNote();
        w.say(tr("The book can be changed here now."));
    });
}

void CopyCommands::begin() {
    m_kept = false;
    show->setEnabled(true);
    m_watch = new copies::FileWatch(*m_window->desk(), this);
    connect(m_watch, &copies::FileWatch::changed, this, &CopyCommands::settle);
    settle();
    if (m_byItself) look();
}

void CopyCommands::look() {
    const QString id = m_window->desk()->session().bookId();
    m_beside.start([this, id, book = m_window->desk()->session().path()](const std::function<bool()>& stopped) {
        const auto found = core::edit::copiesBeside(book, stopped);
        return [this, id, found] { m_notice->tell(copies::newsText(copies::news(id, found))); };
    });
}

void CopyCommands::open() {
    if (!m_window->page()) return;
    auto* shown = m_window->page()->findChild<copies::CopiesWindow*>();
    if (!shown) {
        shown = new copies::CopiesWindow(*m_window->desk(), *m_dialogs, m_window->page());
        shown->setAttribute(Qt::WA_DeleteOnClose);
        connect(
            shown, &copies::CopiesWindow::openAsked, this, [this](const QString& path) { m_window->openBook(path); },
            Qt::QueuedConnection);
        connect(shown, &copies::CopiesWindow::looked, m_notice, [this] { m_notice->tell({}); });
    }
    shown->show();
    shown->raise();
    shown->activateWindow();
}

/// What was open and lies nowhere else is kept beside the book, once; in words.
QString CopyCommands::whatIsKept() {
    if (const QString& now = m_watch->trouble().nowAt; !now.isEmpty())
        return tr("What is open here lies at %1 now.").arg(QDir::toNativeSeparators(now));
    if (m_kept) return {};
    QString words;
    guarded(*m_dialogs, [&] {
        const auto kept = core::edit::keepWhatIsOpen(m_window->desk()->session());
        m_kept = true;
        words = kept ? tr("What is open here has changes that the file there has not: it is kept beside it as “%1”.")
                           .arg(QFileInfo(*kept).fileName())
                     : tr("The file there has every change that was made here.");
    });
    return words;
}

void CopyCommands::settle() {
    const desk::FileTrouble trouble = m_watch->trouble();
    const QString now = QDir::toNativeSeparators(trouble.nowAt);
    QList<QAction*> offers;
    QString more;
    switch (trouble.kind) {
    case Kind::None:
    case Kind::Held:
        break;
    case Kind::Gone:
        offers << (now.isEmpty() ? writeAgain : openMoved);
        more = now.isEmpty() ? tr("This window still has all of it.") : tr("It lies at %1 now.").arg(now);
        break;
    case Kind::Other:
        offers << openThere;
        more = whatIsKept();
        break;
    case Kind::Rewritten:
        offers << openThere << m_window->commands()->backups()->show;
        more = tr("What was open here is no longer on the disk; the newest backup may have it.");
        break;
    case Kind::Noted:
        offers << overrule;
        break;
    }
    m_offers->offer(offers);
    if (!more.isEmpty()) m_window->desk()->setOnlyRead(trouble.sentence + u' ' + more);
}

void CopyCommands::finish() {
    m_beside.stop();
    if (!m_watch) return;
    m_notice->tell({});
    m_watch->look();
    if (m_watch->trouble().kind == Kind::Gone && m_watch->trouble().nowAt.isEmpty()) whatIsKept();
}

QPushButton* CopyCommands::buttonOf(const QAction* offered) const { return m_offers->buttonOf(offered); }

/// Whoever comes back to the window is told at once.
bool CopyCommands::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::WindowActivate && m_watch) m_watch->look();
    return QObject::eventFilter(watched, event);
}

CopyCommands* copiesOf(const MainWindow& window) { return window.findChild<CopyCommands*>(); }

} // namespace ui::window
