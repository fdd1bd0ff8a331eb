#include "ui/backup/backups_window.h"

#include "ui/backup/compared_text.h"
#include "ui/backup/keeping.h"
#include "ui/backup/where.h"
#include "ui/busy/run.h"
#include "ui/look/sheet.h"
#include "ui/look/wrapped_label.h"

#include <QDir>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QPlainTextEdit>
#include <QProgressBar>
#include <QPushButton>
#include <QTreeWidget>
#include <QVBoxLayout>

namespace ui::backup {

namespace {

QTreeWidget* listOf(QWidget* parent) {
    auto* list = new QTreeWidget(parent);
    list->setObjectName(QStringLiteral("backups"));
    list->setAccessibleName(BackupsWindow::tr("Backups of this book, newest first"));
    list->setRootIsDecorated(false);
    list->setUniformRowHeights(true);
    list->setHeaderLabels({BackupsWindow::tr("Made"), BackupsWindow::tr("Changes in it"), BackupsWindow::tr("Size"),
                           BackupsWindow::tr("Book")});
    const int letter = list->fontMetrics().averageCharWidth();
    list->header()->resizeSection(0, letter * 26);
    list->header()->resizeSection(1, letter * 18);
    list->header()->resizeSection(2, letter * 14);
    return list;
}

QPushButton* button(const QString& text, const QString& tip, QWidget* parent) {
    auto* made = new QPushButton(text, parent);
    made->setToolTip(tip);
    return made;
}

} // namespace

BackupsWindow::BackupsWindow(desk::Desk& desk, Keeping& keeping, Dialogs& dialogs, QWidget* parent)
    : QWidget(parent, Qt::Window),
      m_desk(desk),
      m_keeping(keeping),
      m_dialogs(dialogs),
      m_folder(new QLineEdit(this)),
      m_list(listOf(this)),
      m_differences(new QPlainTextEdit(this)),
      m_make(button(tr("&Back up now"), tr("A copy of the book as it is now, checked"), this)),
      m_compare(button(tr("What &differs"), tr("What the chosen backup has not, or has otherwise"), this)),
      m_place(button(tr("&Put it in the book's place"), tr("After what differs was looked at"), this)),
      m_bar(new QProgressBar(this)),
      m_said(new look::WrappedLabel(QStringLiteral("backupsSaid"), this)) {
    setObjectName(QStringLiteral("backupsWindow"));
    setWindowTitle(tr("Backups – %1").arg(desk.session().bookTitle()));
    resize(820, 640);
    look::keepDressed(*this);
    build();
    connect(m_list, &QTreeWidget::currentItemChanged, this, &BackupsWindow::settle);
    connect(m_list, &QTreeWidget::itemActivated, this, &BackupsWindow::compare);
    connect(m_folder, &QLineEdit::returnPressed, this, &BackupsWindow::takeFolder);
    connect(m_compare, &QPushButton::clicked, this, &BackupsWindow::compare);
    connect(m_make, &QPushButton::clicked, this,
            [this] { m_keeping.running() ? m_keeping.stop() : m_keeping.begin(); });
    connect(m_place, &QPushButton::clicked, this, &BackupsWindow::place);
    connect(&desk.session(), &core::edit::Session::changed, this, [this] {
        if (m_compared.isEmpty()) return;
        forgetCompared(); // what differs is no longer what was shown
        settle();
    });
    connect(&m_keeping, &Keeping::moved, this, &BackupsWindow::settle);
    connect(&m_keeping, &Keeping::failed, m_said, &look::WrappedLabel::tell);
    connect(&m_keeping, &Keeping::made, this, [this](const core::edit::Backup& backup) {
        read();
        m_said->tell(tr("Backed up and checked: %1.").arg(QDir::toNativeSeparators(backup.path)));
    });
    read();
}

void BackupsWindow::build() {
    auto* down = new QVBoxLayout(this);
    auto* how = new look::WrappedLabel(QStringLiteral("backupsHow"), this);
    how->tell(
        tr("A backup is made soon after the book is opened, ten minutes after a change, and when the book is left; "
           "each is opened and checked before an old one goes. Kept are the last ten, one a day for 30 days and "
           "one a month for a year. A folder on another disk is safer: a lost laptop takes both."));
    m_differences->setObjectName(QStringLiteral("backupDifferences"));
    m_differences->setAccessibleName(tr("What differs between the book and the chosen backup"));
    m_differences->setReadOnly(true);
    m_differences->setTabChangesFocus(true);
    m_differences->setPlaceholderText(tr("Choose a backup and ask what differs."));
    down->addWidget(how);
    down->addWidget(folderPart());
    down->addWidget(m_list, 2);
    down->addWidget(buttonPart());
    down->addWidget(m_differences, 3);
    down->addWidget(m_said);
}

QWidget* BackupsWindow::folderPart() {
    auto* part = new QWidget(this);
    auto* across = new QHBoxLayout(part);
    across->setContentsMargins(0, 0, 0, 0);
    auto* label = new QLabel(tr("&Folder"), part);
    label->setBuddy(m_folder);
    m_folder->setObjectName(QStringLiteral("backupFolder"));
    m_folder->setAccessibleName(tr("Folder of the backups"));
    m_folder->setToolTip(tr("Where backups lie on this machine; empty: the usual folder. Enter takes it."));
    across->addWidget(label);
    across->addWidget(m_folder, 1);
    return part;
}

QWidget* BackupsWindow::buttonPart() {
    auto* part = new QWidget(this);
    auto* across = new QHBoxLayout(part);
    across->setContentsMargins(0, 0, 0, 0);
    m_bar->setAccessibleName(tr("How much is copied"));
    m_bar->setRange(0, 100);
    m_bar->setMaximumWidth(160);
    for (QWidget* w : {static_cast<QWidget*>(m_make), static_cast<QWidget*>(m_bar), static_cast<QWidget*>(m_compare)})
        across->addWidget(w);
    across->addStretch(1);
    across->addWidget(m_place);
    return part;
}

QString BackupsWindow::differences() const { return m_differences->toPlainText(); }

QString BackupsWindow::said() const { return m_said->text(); }

std::optional<core::edit::Backup> BackupsWindow::chosen() const {
    const int row = m_list->indexOfTopLevelItem(m_list->currentItem());
    if (row < 0) return {};
    return m_backups[static_cast<size_t>(row)];
}

void BackupsWindow::read() {
    m_backups = core::edit::backupsIn(folder(), m_desk.session().bookId());
    m_folder->setText(QDir::toNativeSeparators(folder()));
    m_list->clear();
    for (const core::edit::Backup& b : m_backups)
        m_list->addTopLevelItem(new QTreeWidgetItem(
            QStringList{stampText(b.at), QString::number(b.seq), QLocale::c().formattedDataSize(b.bytes), b.title}));
    if (!m_backups.empty()) m_list->setCurrentItem(m_list->topLevelItem(0));
    settle();
}

void BackupsWindow::settle() {
    const auto backup = chosen();
    const bool running = m_keeping.running();
    m_bar->setVisible(running);
    m_bar->setValue(static_cast<int>(m_keeping.share() * 100));
    m_make->setText(running ? tr("&Stop") : tr("&Back up now"));
    m_compare->setEnabled(backup.has_value());
    m_place->setEnabled(backup && backup->path == m_compared && !running && !m_desk.session().readOnly());
}

void BackupsWindow::takeFolder() {
    if (QDir::cleanPath(m_folder->text().trimmed()) == QDir::cleanPath(folder())) return;
    setFolder(m_folder->text());
    forgetCompared();
    read();
    m_said->tell(tr("Backups lie in %1 from now on. Those made before stay where they are.")
                     .arg(QDir::toNativeSeparators(folder())));
}

void BackupsWindow::compare() {
    const auto backup = chosen();
    if (!backup) return;
    forgetCompared();
    guarded(m_dialogs, [&] {
        core::edit::BackupCompared compared;
        const auto work = [&compared, with = backup->path, book = m_desk.session().path(),
                           &clock = m_desk.session().clock()](const core::Progress& progress) {
            const auto own = core::edit::Session::open(book, clock, core::edit::Session::Access::ReadOnly);
            compared = core::edit::compareWith(*own, with, progress);
        };
        if (!busy::run(*this, tr("The backup is checked and compared…"), work))
            return m_said->tell(tr("Stopped: what differs is not known."));
        m_differences->setPlainText(comparedText(compared));
        m_holds = compared.holds;
        if (compared.sameBook && compared.problems.isEmpty()) m_compared = backup->path;
    });
    settle();
}

void BackupsWindow::forgetCompared() {
    m_compared.clear();
    m_holds.clear();
    m_differences->clear();
}

void BackupsWindow::place() {
    const auto backup = chosen();
    if (!backup || backup->path != m_compared) return;
    if (m_holds.isEmpty()) return emit placeAsked(*backup, {});
    const QStringList holds = m_holds;
    const auto why = m_dialogs.correction(tr("Put the backup in the book's place"), holdsQuestion(holds));
    if (!why || why->by.trimmed().isEmpty() || why->reason.trimmed().isEmpty())
        return m_said->tell(tr("The book stays: a correction needs a reason and a name."));
    emit placeAsked(*backup, core::edit::PutBack{why->by, why->reason, holds, m_desk.session().clock().nowUtc()});
}

} // namespace ui::backup
