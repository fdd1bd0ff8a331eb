#include "ui/exchange/import_window.h"

#include "ui/busy/busy.h"
#include "ui/exchange/columns_panel.h"
#include "ui/exchange/findings.h"
#include "ui/exchange/forms_bar.h"
#include "ui/exchange/kept_bar.h"
#include "ui/look/sheet.h"

#include <QCheckBox>
#include <QDir>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QProgressBar>
#include <QPushButton>
#include <QShortcut>
#include <QSplitter>
#include <QStyle>
#include <QTableView>
#include <QVBoxLayout>

namespace ui::exchange {

namespace ex = core::exchange;

namespace {

constexpr int kSoonMs = 150; // after the last key of a word

QLabel* wrapped(QWidget* parent, const QString& name) {
    auto* label = new QLabel(parent);
    label->setObjectName(name);
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    return label;
}

} // namespace

ImportWindow::ImportWindow(desk::Desk& desk, Dialogs& dialogs, QWidget* parent)
    : QWidget(parent, Qt::Window),
      m_desk(desk),
      m_dialogs(dialogs),
      m_file(wrapped(this, QStringLiteral("importFile"))),
      m_forms(new FormsBar(m_draft, this)),
      m_kept(new KeptBar(desk, dialogs, m_draft, this)),
      m_columns(new ColumnsPanel(m_draft, this)),
      m_findings(new Findings(this)),
      m_leaveOut(new QCheckBox(tr("Leave &out the rows that say otherwise: the book stays as it is"), this)),
      m_counts(wrapped(this, QStringLiteral("importCounts"))),
      m_saying(wrapped(this, QStringLiteral("importSaying"))),
      m_bar(new QProgressBar(this)),
      m_choose(button(tr("Another &file…"), tr("Choose a file (Ctrl+O)"), &ImportWindow::choose)),
      m_check(button(tr("&Check all rows"), tr("Read every row and check it against the book; nothing is written (F5)"),
                     &ImportWindow::check)),
      m_import(button(tr("&Bring in"), tr("All rows come into the book as one edit, or none (Ctrl+Return)"),
                      &ImportWindow::bringIn)),
      m_stop(button(tr("Sto&p"), tr("Nothing is written then (Esc)"), nullptr)) {
    setWindowTitle(tr("Read a file – %1").arg(desk.session().bookTitle()));
    m_soon.setSingleShot(true);
    m_soon.setInterval(kSoonMs);
    build();
    look::keepDressed(*this, [this] { m_findings->dress(); });
    connect(&m_soon, &QTimer::timeout, this, &ImportWindow::look);
    connect(m_forms, &FormsBar::changed, this, &ImportWindow::showDraft);
    connect(m_forms, &FormsBar::refused, this, [this](const QString& why) { say(why, true); });
    connect(m_kept, &KeptBar::changed, this, &ImportWindow::showDraft);
    connect(m_kept, &KeptBar::said, this, &ImportWindow::say);
    connect(m_columns, &ColumnsPanel::changed, this, [this] {
        m_draft.setKeptName({});
        m_kept->settle();
        changed();
    });
    connect(m_findings, &Findings::columnAsked, m_columns, &ColumnsPanel::focusColumn);
    connect(m_leaveOut, &QCheckBox::clicked, this, &ImportWindow::changed);
    connect(&m_desk, &desk::Desk::read, this, &ImportWindow::follow);
    connect(&m_desk, &desk::Desk::notSaved, this, [this](const QString& why) { say(why, true); });
    const auto key = [this](const QKeySequence& keys, auto act) {
        connect(new QShortcut(keys, this), &QShortcut::activated, this, act);
    };
    key(QKeySequence(Qt::CTRL | Qt::Key_O), [this] { choose(); });
    key(QKeySequence(Qt::Key_F5), [this] { check(); });
    key(QKeySequence(Qt::CTRL | Qt::Key_Return), [this] { bringIn(); });
    key(QKeySequence(Qt::CTRL | Qt::Key_Enter), [this] { bringIn(); });
    key(QKeySequence::Undo, [this] { guarded(m_dialogs, [this] { m_desk.undo(); }); });
    key(QKeySequence::Redo, [this] { guarded(m_dialogs, [this] { m_desk.redo(); }); });
    m_kept->read();
    showDraft();
}

QPushButton* ImportWindow::button(const QString& text, const QString& tip, void (ImportWindow::*act)()) {
    auto* made = new QPushButton(text, this);
    made->setToolTip(tip);
    made->setAutoDefault(false);
    if (act) connect(made, &QPushButton::clicked, this, act);
    return made;
}

QWidget* ImportWindow::head() {
    auto* part = new QWidget(this);
    auto* across = new QHBoxLayout(part);
    across->setContentsMargins(0, 0, 0, 0);
    across->addWidget(m_file, 1);
    across->addWidget(m_choose);
    return part;
}

void ImportWindow::foot(QVBoxLayout& down) {
    m_bar->setAccessibleName(tr("How much of the file is done"));
    m_bar->setTextVisible(false);
    m_bar->hide();
    m_stop->hide();
    m_import->setProperty("primary", true);
    m_saying->setProperty("quiet", true);
    auto* across = new QHBoxLayout;
    across->addWidget(m_counts, 1);
    across->addWidget(m_bar, 1);
    across->addWidget(m_stop);
    across->addWidget(m_check);
    across->addWidget(m_import);
    down.addWidget(m_leaveOut);
    down.addLayout(across);
    down.addWidget(m_saying);
}

void ImportWindow::build() {
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(16, 12, 16, 12);
    down->setSpacing(8);
    auto* middle = new QSplitter(Qt::Horizontal, this);
    middle->setChildrenCollapsible(false);
    middle->addWidget(m_columns);
    middle->addWidget(m_findings);
    middle->setStretchFactor(1, 1);
    for (QWidget* w : std::initializer_list<QWidget*>{head(), m_forms, m_kept}) down->addWidget(w);
    down->addWidget(middle, 1);
    foot(*down);
    const QFontMetrics metrics(font());
    resize(metrics.averageCharWidth() * 160, metrics.height() * 38);
}

QString ImportWindow::counted() const { return m_counts->text(); }

QString ImportWindow::said() const { return m_saying->text(); }

void ImportWindow::say(const QString& sentence, bool warns) {
    m_saying->setProperty("warns", warns);
    m_saying->setProperty("quiet", !warns);
    m_saying->style()->polish(m_saying);
    m_saying->setText(sentence);
}

void ImportWindow::openFile(const QString& path) {
    m_report = {};
    m_done = false;
    const ex::KeptMapping last{{}, m_draft.keptName(), m_draft.header(), m_draft.mapping()};
    const QString trouble = m_draft.open(path, ex::keptMappings(m_desk.session()));
    m_leaveOut->setChecked(false);
    if (trouble.isEmpty() && m_draft.keptName().isEmpty() && m_draft.header() == last.header)
        m_draft.setMapping(last); // as it was just chosen
    say(trouble, true);
    m_kept->read();
    if (trouble.isEmpty() && !m_draft.keptName().isEmpty()) {
        m_kept->name()->setText(m_draft.keptName());
        say(tr("Such a file came before: it is read as “%1”.").arg(m_draft.keptName()));
    } else {
        m_kept->name()->clear();
    }
    showDraft();
    m_forms->kinds()->setFocus(Qt::OtherFocusReason);
}

void ImportWindow::choose() {
    if (const auto path = m_dialogs.csvToRead()) guarded(m_dialogs, [&] { openFile(*path); });
}

/// The whole of it anew: another file, kind, separator or kept mapping.
void ImportWindow::showDraft() {
    const QString name = QFileInfo(m_draft.path()).fileName();
    m_file->setText(m_draft.isOpen()
                        ? tr("%1 · %2").arg(name, QLocale().formattedDataSize(m_draft.bytes(), 0))
                        : tr("Choose a file with a row of names and rows below it: CSV of whatever program."));
    m_file->setToolTip(QDir::toNativeSeparators(m_draft.path()));
    m_forms->setEnabled(m_draft.isOpen());
    m_forms->showDraft(m_draft);
    m_kept->settle();
    m_columns->showDraft();
    changed();
}

void ImportWindow::changed() {
    m_checked = m_done = false;
    if (!m_draft.isOpen()) {
        m_findings->clear();
        return settle();
    }
    m_soon.start();
    settle();
}

ex::ImportFiles ImportWindow::files() const {
    ex::ImportFiles files;
    files.files.push_back({m_draft.kind(), m_draft.path(), m_draft.mapping()});
    files.leaveOutOtherwise = m_leaveOut->isChecked();
    return files;
}

/// What the choices come to: of a file that is not large all of it.
void ImportWindow::look() {
    m_soon.stop();
    if (!m_draft.isOpen() || m_done) return;
    guarded(m_dialogs, [this] {
        m_report = {};
        m_checked = m_draft.bytes() <= kAtOnceBytes;
        if (m_checked) m_report = ex::importFiles(m_desk.session(), files(), true);
        showReport();
    });
}

void ImportWindow::check() {
    if (!m_check->isEnabled()) return;
    m_soon.stop();
    guarded(m_dialogs, [this] {
        ex::ImportFiles all = files();
        {
            busy::Busy busy(*this, *m_bar, *m_stop);
            m_counts->hide();
            all.progress = busy.progress();
            m_report = ex::importFiles(m_desk.session(), all, true);
        }
        m_checked = !m_report.stopped;
        say(m_report.stopped ? tr("Stopped; not all rows were looked at.") : QString());
        showReport();
    });
    m_counts->show();
}

void ImportWindow::bringIn() {
    if (!m_import->isEnabled()) return;
    m_soon.stop();
    guarded(m_dialogs, [this] {
        ex::ImportFiles all = files();
        {
            busy::Busy busy(*this, *m_bar, *m_stop);
            m_counts->hide();
            m_import->setEnabled(false);
            all.progress = busy.progress();
            m_report = ex::importFiles(m_desk.session(), all, false);
        }
        m_checked = !m_report.stopped;
        m_done = m_report.good();
        if (m_report.stopped) say(tr("Stopped: nothing was written."));
        if (!m_report.faults.none()) say(tr("Nothing was written: the rows in the list need a look first."), true);
        if (m_report.line) emit m_desk.did(m_report.line->text);
        if (m_done)
            say(m_report.line ? tr("%1 · saved. Ctrl+Z takes it back.").arg(m_report.line->text)
                              : tr("The book has all of it already; nothing was changed."));
        showReport();
    });
    m_counts->show();
    settle();
}

void ImportWindow::showReport() {
    m_findings->showReport(m_draft, m_report);
    if (m_findings->page() != Findings::kFaults && !m_report.faults.none() && m_report.otherwise == 0 && m_checked &&
        m_findings->rows()->hasFocus())
        m_findings->showPage(Findings::kFaults);
    settle();
}

void ImportWindow::settle() {
    const bool may = m_draft.isOpen() && !m_done;
    const qint64 faults = m_report.faults.count();
    m_check->setEnabled(may);
    m_import->setEnabled(may && !m_desk.session().readOnly() && m_desk.onlyRead().isEmpty() &&
                         !(m_checked && faults > 0));
    m_leaveOut->setVisible(m_checked && (m_report.otherwise > 0 || m_leaveOut->isChecked()));
    if (!m_draft.isOpen()) return m_counts->clear();
    if (!m_checked)
        return m_counts->setText(m_draft.bytes() > kAtOnceBytes
                                     ? tr("A large file: the first rows are shown; check all rows before it comes in, "
                                          "or bring it in: it is checked then too.")
                                     : QString());
    QStringList parts = m_report.summary();
    if (m_report.otherwise > 0) parts << tr("%1 say otherwise than the book").arg(m_report.otherwise);
    if (parts.isEmpty() && faults == 0) parts << tr("no rows");
    const QString rows = parts.join(QStringLiteral(" · "));
    if (faults == 0) return m_counts->setText((m_done ? tr("Came in: %1") : tr("Would come in: %1")).arg(rows));
    const QString wrong =
        faults == 1 ? tr("Nothing comes in yet: 1 fault") : tr("Nothing comes in yet: %1 faults").arg(faults);
    m_counts->setText(rows.isEmpty() ? wrong : tr("%1 · %2").arg(wrong, rows));
}

/// The book is another: what the file would bring is too.
void ImportWindow::follow() {
    guarded(m_dialogs, [this] { m_kept->read(); });
    if (m_draft.isOpen() && !m_done) m_soon.start();
}

void ImportWindow::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        close();
        return;
    }
    QWidget::keyPressEvent(event);
}

ImportWindow* showImport(desk::Desk& desk, Dialogs& dialogs, QWidget* page) {
    const auto path = dialogs.csvToRead();
    if (!path) return nullptr;
    auto* window = page->findChild<ImportWindow*>(QString(), Qt::FindDirectChildrenOnly);
    if (!window) window = new ImportWindow(desk, dialogs, page);
    window->show();
    window->raise();
    window->activateWindow();
    window->openFile(*path);
    return window;
}

} // namespace ui::exchange
