#include "ui/health/notifiable_panel.h"

#include "core/edit/notifiables.h"
#include "ui/health/notifiable_form.h"
#include "ui/look/words.h"
#include "ui/look/wrapped_label.h"
#include "ui/people/keeper_form.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>

namespace ui::health {

namespace rules = core::rules;

NotifiablePanel::NotifiablePanel(desk::Desk& desk, Dialogs& dialogs, OpenForm open, QWidget* parent)
    : QWidget(parent),
      m_desk(desk),
      m_dialogs(dialogs),
      m_open(std::move(open)),
      m_said(new look::WrappedLabel(QStringLiteral("notifiableSaid"), this)),
      m_everywhere(new QCheckBox(tr("All &places"), this)),
      m_table(new QTableWidget(0, 5, this)),
      m_new(new QPushButton(tr("&New line…"), this)),
      m_change(new QPushButton(tr("C&hange…"), this)),
      m_takeBack(new QPushButton(tr("&Take back"), this)),
      m_keeper(new QPushButton(tr("&Keeper…"), this)) {
    build();
    connect(m_everywhere, &QCheckBox::toggled, this, [this] { guarded(m_dialogs, [this] { read(); }); });
    connect(m_table, &QTableWidget::currentCellChanged, this, &NotifiablePanel::settle);
    const auto form = [this](QPushButton* button, std::function<std::unique_ptr<form::Form>()> made) {
        connect(button, &QPushButton::clicked, this,
                [this, made = std::move(made)] { guarded(m_dialogs, [&] { m_open(made()); }); });
    };
    form(m_new, [this] { return std::make_unique<NotifiableForm>(m_desk.session(), std::nullopt); });
    form(m_change, [this] { return std::make_unique<NotifiableForm>(m_desk.session(), chosen()); });
    form(m_keeper, [this] { return std::make_unique<people::KeeperForm>(m_desk.session()); });
    connect(m_takeBack, &QPushButton::clicked, this, [this] { guarded(m_dialogs, [this] { takeBack(); }); });
}

void NotifiablePanel::build() {
    m_table->setObjectName(QStringLiteral("notifiableTable"));
    m_table->setAccessibleName(tr("What must be reported, a row a place and disease"));
    m_table->setHorizontalHeaderLabels(
        {tr("Place"), tr("Disease or pest"), tr("Reported"), tr("Whom to tell"), tr("Source")});
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setSelectionMode(QAbstractItemView::SingleSelection);
    m_table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_table->setTabKeyNavigation(false);
    m_table->setShowGrid(false);
    m_table->setWordWrap(true);
    m_table->verticalHeader()->hide();
    m_table->horizontalHeader()->setHighlightSections(false);
    m_table->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    for (int column = 0; column < 3; ++column)
        m_table->horizontalHeader()->setSectionResizeMode(column, QHeaderView::ResizeToContents);
    for (int column = 3; column < 5; ++column)
        m_table->horizontalHeader()->setSectionResizeMode(column, QHeaderView::Stretch);
    m_table->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    m_everywhere->setToolTip(tr("The lines of all places, not only of the keeper's"));
    auto* keys = new QHBoxLayout;
    for (QPushButton* b : {m_new, m_change, m_takeBack, m_keeper}) {
        b->setAutoDefault(false);
        keys->addWidget(b);
    }
    keys->addStretch(1);
    keys->addWidget(m_everywhere);
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->setSpacing(10);
    all->addWidget(m_said);
    all->addWidget(m_table, 1);
    all->addLayout(keys);
}

void NotifiablePanel::read() {
    const auto before = chosen();
    const auto own = m_desk.session().notifiables();
    const auto keeper = m_desk.session().keeper();
    const QString place = keeper ? keeper->place : QString();
    m_said->tell(rules::reportText(place, core::Reportable::Afb, own));
    m_lines = m_everywhere->isChecked() || rules::notifiableLines(place, own).empty()
                  ? rules::notifiableLines(own)
                  : rules::notifiableLines(place, own);
    const QSignalBlocker quiet(m_table);
    m_table->setRowCount(static_cast<int>(m_lines.size()));
    for (int row = 0; row < m_table->rowCount(); ++row) {
        const auto& [line, ours] = m_lines[static_cast<size_t>(row)];
        const auto text = [](const QString& recorded) { return recorded.isEmpty() ? look::dash() : recorded; };
        const QString cells[] = {line.place, rules::reportableText(line.disease), line.must ? tr("yes") : tr("no"),
                                 text(line.tell),
                                 ours ? tr("this book's own line: %1").arg(text(line.source)) : line.source};
        for (int column = 0; column < m_table->columnCount(); ++column)
            m_table->setItem(row, column, new QTableWidgetItem(cells[column]));
        if (before && before->row.place == line.place && before->row.disease == line.disease)
            m_table->setCurrentCell(row, 0);
    }
    if (m_table->currentRow() < 0 && m_table->rowCount() > 0) m_table->setCurrentCell(0, 0);
    settle();
}

std::optional<rules::NotifiableLine> NotifiablePanel::chosen() const {
    const int row = m_table->currentRow();
    if (row < 0 || row >= static_cast<int>(m_lines.size())) return std::nullopt;
    return m_lines[static_cast<size_t>(row)];
}

void NotifiablePanel::settle() {
    const bool writable = !m_desk.session().readOnly();
    const auto line = chosen();
    for (QPushButton* b : {m_new, m_keeper}) b->setEnabled(writable);
    m_change->setEnabled(writable && line);
    m_takeBack->setEnabled(writable && line && line->own);
    m_takeBack->setToolTip(line && !line->own ? tr("Only this book's own lines are taken back") : QString());
}

void NotifiablePanel::takeBack() {
    const auto line = chosen();
    if (!line || !line->own) return;
    m_desk.save(tr("Take back a line of what must be reported"), [id = line->row.id](const core::edit::EditContext& c) {
        return core::edit::takeBackNotifiable(c, id);
    });
}

QString NotifiablePanel::said() const { return m_said->text(); }

} // namespace ui::health
