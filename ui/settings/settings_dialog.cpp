#include "ui/settings/settings_dialog.h"

#include "ui/look/sheet.h"
#include "ui/settings/settings_page.h"

#include <QAction>
#include <QDialogButtonBox>
#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace ui::settings {

SettingsDialog::SettingsDialog(desk::Desk& desk, Dialogs& dialogs, QWidget* parent)
    : QDialog(parent),
      m_desk(desk),
      m_dialogs(dialogs),
      m_left(new QWidget(this)),
      m_search(new QLineEdit(this)),
      m_list(new QListWidget(this)),
      m_stack(new QStackedWidget(this)),
      m_settings(new SettingsPage(desk, m_stack)),
      m_saying(new QLabel(this)) {
    setWindowTitle(tr("Settings of %1").arg(desk.session().bookTitle()));
    look::keepDressed(*this, [this] { fitLeft(); });
    m_stack->addWidget(m_settings);
    auto* down = new QVBoxLayout(this);
    auto* across = new QHBoxLayout;
    across->setSpacing(18);
    across->addWidget(buildLeft());
    across->addWidget(m_stack, 1);
    down->addLayout(across, 1);
    auto* foot = new QHBoxLayout;
    m_saying->setWordWrap(true);
    m_saying->setProperty("quiet", true);
    auto* close = new QPushButton(tr("&Close"), this);
    close->setAutoDefault(false);
    connect(close, &QPushButton::clicked, this, &QDialog::close);
    foot->addWidget(m_saying, 1);
    foot->addWidget(close);
    down->addLayout(foot);
    addUndo();
    connect(&m_desk, &desk::Desk::read, this, &SettingsDialog::settle);
    connect(&m_desk, &desk::Desk::did, this,
            [this](const QString& what) { m_saying->setText(tr("%1 · saved").arg(what)); });
    connect(&m_desk, &desk::Desk::said, m_saying, &QLabel::setText);
    connect(&m_desk, &desk::Desk::notSaved, m_saying, &QLabel::setText);
    settle();
    m_list->setCurrentRow(0);
    m_search->setFocus();
    const QFontMetrics metrics(font());
    resize(metrics.averageCharWidth() * 130, metrics.height() * 42);
}

QWidget* SettingsDialog::buildLeft() {
    auto* down = new QVBoxLayout(m_left);
    down->setContentsMargins(0, 0, 0, 0);
    m_search->setPlaceholderText(tr("Find a setting"));
    m_search->setAccessibleName(tr("Find a setting by words of its name or meaning"));
    m_search->setClearButtonEnabled(true);
    m_list->setAccessibleName(tr("Groups of settings"));
    for (const SettingGroup& group : m_settings->groups()) m_list->addItem(group.title);
    down->addWidget(m_search);
    down->addWidget(m_list, 1);
    fitLeft();
    connect(m_search, &QLineEdit::textChanged, this, &SettingsDialog::find);
    connect(m_list, &QListWidget::currentRowChanged, this, &SettingsDialog::goTo);
    return m_left;
}

void SettingsDialog::fitLeft() { m_left->setFixedWidth(QFontMetrics(font()).averageCharWidth() * 34); }

/// The window's keys do not reach in here.
void SettingsDialog::addUndo() {
    auto* undo = new QAction(tr("Undo"), this);
    undo->setShortcut(QKeySequence(QStringLiteral("Ctrl+Z")));
    auto* redo = new QAction(tr("Redo"), this);
    redo->setShortcut(QKeySequence(QStringLiteral("Ctrl+Shift+Z")));
    connect(undo, &QAction::triggered, this, [this] { guarded(m_dialogs, [this] { m_desk.undo(); }); });
    connect(redo, &QAction::triggered, this, [this] { guarded(m_dialogs, [this] { m_desk.redo(); }); });
    addActions({undo, redo});
}

void SettingsDialog::addPage(const QString& title, QWidget* page) {
    m_stack->addWidget(page);
    m_list->addItem(title);
}

void SettingsDialog::showPage(const QWidget* page) {
    const int at = m_stack->indexOf(page);
    if (at > 0) m_list->setCurrentRow(static_cast<int>(m_settings->groups().size()) + at - 1);
}

void SettingsDialog::goTo(int row) {
    if (row < 0) return;
    m_search->clear();
    const int groups = static_cast<int>(m_settings->groups().size());
    m_stack->setCurrentIndex(row < groups ? 0 : row - groups + 1);
    if (row < groups) m_settings->showGroup(static_cast<size_t>(row));
}

void SettingsDialog::find(const QString& words) {
    if (words.simplified().isEmpty()) return goTo(std::max(m_list->currentRow(), 0));
    m_stack->setCurrentWidget(m_settings);
    m_settings->find(words);
}

/// How many of each group are changed, and whether anything can be.
void SettingsDialog::settle() {
    const auto& groups = m_settings->groups();
    for (size_t i = 0; i < groups.size(); ++i) {
        const int changed = m_settings->changedIn(i);
        m_list->item(static_cast<int>(i))
            ->setText(changed == 0 ? groups[i].title : tr("%1 · %2 changed").arg(groups[i].title).arg(changed));
    }
    m_saying->setText(m_desk.session().readOnly() ? tr("This book is open in another window: here it can only be read.")
                                                  : tr("Each change is saved when it is made. Ctrl+Z takes it back."));
}

/// Follows the system when it turns dark or its text larger.

} // namespace ui::settings
