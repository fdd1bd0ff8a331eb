#include "ui/salvage/salvage_window.h"

#include "ui/backup/compared_text.h"
#include "ui/backup/where.h"
#include "ui/busy/panel.h"
#include "ui/look/sheet.h"
#include "ui/look/type.h"
#include "ui/look/wrapped_label.h"

#include <QDir>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace ui::salvage {

namespace {

QPushButton* buttonOf(const QString& text, const QString& tip, QWidget* parent) {
    auto* button = new QPushButton(text, parent);
    button->setToolTip(tip);
    button->setAccessibleDescription(tip);
    return button;
}

bool backupLacks(const core::edit::SalvageAccount& account) {
    return account.sinceBackup > 0 || account.linesEndUnknown;
}

} // namespace

SalvageWindow::SalvageWindow(const QString& damaged, const QString& wrong, const core::Clock& clock, Dialogs& dialogs,
                             QWidget* parent)
    : QWidget(parent, Qt::Window),
      m_damaged(damaged),
      m_clock(clock),
      m_dialogs(dialogs),
      m_wrong(new look::WrappedLabel(QStringLiteral("salvageWrong"), this)),
      m_backupText(new look::WrappedLabel(QStringLiteral("salvageBackup"), this)),
      m_summary(new look::WrappedLabel(QStringLiteral("salvageSummary"), this)),
      m_account(new QPlainTextEdit(this)),
      m_place(buttonOf(tr("Put the &backup in its place"), tr("The damaged book is kept beside it under another name"),
                       this)),
      m_make(buttonOf(tr("&Make a new book of it…"), tr("Asks where; the damaged book stays as it is"), this)),
      m_again(buttonOf(tr("&Read it again"), tr("Reads the damaged book from its beginning"), this)),
      m_said(new look::WrappedLabel(QStringLiteral("salvageSaid"), this)) {
    setObjectName(QStringLiteral("salvageWindow"));
    setWindowTitle(tr("Damaged book – %1").arg(QFileInfo(damaged).completeBaseName()));
    resize(860, 760);
    look::keepDressed(*this);
    build(wrong);
    connect(m_place, &QPushButton::clicked, this, &SalvageWindow::place);
    connect(m_make, &QPushButton::clicked, this, &SalvageWindow::make);
    connect(m_again, &QPushButton::clicked, this, &SalvageWindow::read);
    settle();
}

SalvageWindow::~SalvageWindow() = default;

void SalvageWindow::build(const QString& wrong) {
    auto* down = new QVBoxLayout(this);
    auto* title = new QLabel(tr("“%1” is damaged").arg(QFileInfo(m_damaged).completeBaseName()), this);
    title->setFont(look::headingFont(font()));
    title->setTextFormat(Qt::PlainText);
    down->addWidget(title);
    down->addWidget(m_wrong);
    m_wrong->tell(wrong.isEmpty() ? tr("It is read as far as it can be.") : wrong);
    auto* stays = new look::WrappedLabel(QStringLiteral("salvageStays"), this);
    stays->setProperty("quiet", true);
    stays->tell(tr("Whatever you choose here, the damaged file stays as it is."));
    down->addWidget(stays);
    addWay(down, tr("The newest backup that is in order"), m_backupText, m_place);
    addWay(down, tr("What can be read, in a new book"), m_summary, m_make);
    m_account->setObjectName(QStringLiteral("salvageAccount"));
    m_account->setAccessibleName(tr("What could be read of the damaged book, and what is missing"));
    m_account->setReadOnly(true);
    m_account->setTabChangesFocus(true);
    down->addWidget(m_account, 1);
    down->addWidget(m_again, 0, Qt::AlignLeft);
    down->addWidget(m_said);
}

void SalvageWindow::addWay(QVBoxLayout* down, const QString& title, look::WrappedLabel* text, QPushButton* button) {
    auto* head = new QLabel(title, this);
    QFont bold = head->font();
    bold.setBold(true);
    head->setFont(bold);
    down->addSpacing(8);
    down->addWidget(head);
    auto* across = new QHBoxLayout;
    across->setSpacing(14);
    across->addWidget(text, 1);
    across->addWidget(button, 0, Qt::AlignTop);
    down->addLayout(across);
}

QString SalvageWindow::account() const { return m_account->toPlainText(); }

QString SalvageWindow::backupText() const { return m_backupText->text(); }

QString SalvageWindow::said() const { return m_said->text(); }

/// Long work that can be stopped: then that is said.
void SalvageWindow::watched(const QString& sentence, const std::function<void(const core::Progress&)>& work) {
    guarded(m_dialogs, [&] {
        busy::Panel panel(sentence, *this);
        try {
            work(panel.busy().progress());
        } catch (const core::Stopped&) {
            m_said->tell(tr("Stopped: nothing was written."));
        }
    });
}

void SalvageWindow::read() {
    m_salvage.reset();
    m_said->tell({});
    watched(tr("The damaged book is read…"), [&](const core::Progress& progress) {
        m_salvage = core::edit::Salvage::read({m_damaged, {}, backup::folder()}, m_clock, progress);
    });
    settle();
    // Never the backup: holds may go with the damaged book, and none goes by the first key pressed.
    (m_make->isEnabled() ? m_make : m_again)->setFocus(Qt::OtherFocusReason);
}

void SalvageWindow::settle() {
    const bool read = m_salvage != nullptr;
    m_place->setEnabled(read && m_salvage->account().backup.has_value());
    m_make->setEnabled(read);
    m_again->setVisible(!read);
    m_backupText->tell(read ? backupSentence(m_salvage->account()) : tr("Not looked for yet."));
    m_summary->tell(read ? summary() : tr("Not read yet."));
    m_account->setPlainText(read ? core::edit::accountText(m_salvage->account()) : QString());
}

QString SalvageWindow::summary() const {
    const core::edit::SalvageAccount& account = m_salvage->account();
    qint64 kept = 0;
    qint64 lost = 0;
    bool more = account.linesEndUnknown;
    for (const core::edit::SalvagedTable& t : account.tables) {
        kept += t.kept - t.added;
        lost += t.lost;
        more = more || t.mayLack;
    }
    if (account.nothingLost()) return tr("Nothing is lost: all %1 records can be read.").arg(kept);
    QString text = tr("%1 records can be read; known to be lost: %2%3.")
                       .arg(kept)
                       .arg(lost)
                       .arg(more ? tr(", and there may have been more") : QString());
    if (account.held > 0)
        text += u' ' + tr("No hold is lost by it: each of the %1 living hives will be held until a brood check or a "
                          "finding lifts that.")
                           .arg(account.held);
    return text;
}

void SalvageWindow::make() {
    const auto to = m_dialogs.bookToMake();
    if (!to || !m_salvage) return;
    std::optional<QString> text;
    watched(tr("The new book is written and checked…"),
            [&](const core::Progress& progress) { text = m_salvage->write(*to, progress); });
    if (text) emit bookMade(*to, *text);
}

void SalvageWindow::place() {
    if (!m_salvage || !m_salvage->account().backup) return;
    const core::edit::Backup backup = *m_salvage->account().backup;
    if (!backupLacks(m_salvage->account())) return emit placeAsked(m_damaged, backup, {});
    const auto why = m_dialogs.correction(
        tr("Put the backup in the place of the damaged book"),
        tr("Holds put up after %1 are not in the backup and would be gone; the damaged book cannot "
           "tell which. Enter such records again. This is a correction of the record: give a reason "
           "and a name.")
            .arg(backup::stampText(backup.at)));
    if (!why || why->by.trimmed().isEmpty() || why->reason.trimmed().isEmpty())
        return m_said->tell(tr("The book stays: a correction needs a reason and a name."));
    emit placeAsked(m_damaged, backup, core::edit::PutBack{why->by, why->reason, {}, m_clock.nowUtc()});
}

QString backupSentence(const core::edit::SalvageAccount& account) {
    if (!account.backup) {
        if (!account.backupRefused.isEmpty()) return account.backupRefused;
        return SalvageWindow::tr("There is none in %1.").arg(QDir::toNativeSeparators(backup::folder()));
    }
    QString text = SalvageWindow::tr("Made %1.").arg(backup::stampText(account.backup->at)) + u' ';
    const bool more = account.linesEndUnknown;
    if (!backupLacks(account)) return text + SalvageWindow::tr("It has every change that the book had.");
    text += SalvageWindow::tr("Changes made since, which it has not: %1%2.")
                .arg(account.sinceBackup)
                .arg(more ? SalvageWindow::tr(", and perhaps others that cannot be read") : QString());
    if (!account.sinceBackupLines.isEmpty())
        text +=
            u' ' + SalvageWindow::tr("The last: %1").arg(account.sinceBackupLines.join(QStringLiteral("; "))) + u'.';
    return text + u' ' +
           SalvageWindow::tr(
               "Holds put up since then would be gone, and the damaged book cannot tell which: enter such "
               "records again.");
}

} // namespace ui::salvage
