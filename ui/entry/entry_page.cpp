#include "ui/entry/entry_page.h"

#include "ui/entry/entry_columns.h"
#include "ui/entry/phrase_key.h"
#include "ui/form/day_edit.h"
#include "ui/look/words.h"
#include "ui/records/record_words.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QPushButton>
#include <QShortcut>
#include <QVBoxLayout>

#include <algorithm>

namespace ui::entry {

using core::TallyColumn;
using Kind = EntryWork::Answer::Kind;

namespace {
constexpr int kUsedDays = 400; // a column that was typed into since then is shown
} // namespace

EntryPage::EntryPage(desk::Desk& desk, EntryDesk& entry, Dialogs& dialogs, std::function<void()> openForm,
                     std::function<bool()> formOpen, QWidget* parent)
    : QWidget(parent),
      m_desk(desk),
      m_entry(entry),
      m_dialogs(dialogs),
      m_openForm(std::move(openForm)),
      m_formOpen(std::move(formOpen)),
      m_work(desk, entry, this),
      m_model(m_work, desk, this),
      m_head(new EntryHead(desk, this)),
      m_grid(new EntryGrid(m_work, m_model, this)),
      m_last(new QLabel(this)),
      m_answer(new QLabel(this)),
      m_count(new QLabel(this)),
      m_saveAll(new QPushButton(tr("Save all typed"), this)), // until it is told how many
      m_deskDay(desk.day()) {
    build();
    connectAll();
}

void EntryPage::build() {
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(0, 0, 0, 0);
    down->setSpacing(0);
    down->addWidget(m_head);
    down->addWidget(m_grid, 1);
    auto* foot = new QVBoxLayout;
    foot->setContentsMargins(12, 6, 12, 8);
    foot->setSpacing(3);
    m_last->setWordWrap(true);
    m_last->setObjectName(QStringLiteral("entryLast"));
    m_answer->setWordWrap(true);
    m_answer->setProperty("warns", true);
    m_answer->setObjectName(QStringLiteral("entryAnswer"));
    m_answer->hide();
    auto* hint =
        new QLabel(tr("Tab or Enter goes on; Enter in the last field or Ctrl + Enter saves. Escape: up to the day. "
                      "F9: to a label. F4: columns. F2 in a note: quick sentences. Frames: 3, 3.25, 3¼, 3 1/4."),
                   this);
    hint->setWordWrap(true);
    hint->setProperty("quiet", true);
    auto* across = new QHBoxLayout;
    m_count->setWordWrap(true);
    m_count->setObjectName(QStringLiteral("entryCount"));
    m_saveAll->setToolTip(tr("Ctrl + Shift + Enter"));
    across->addWidget(m_count, 1);
    across->addWidget(m_saveAll);
    for (QLabel* l : {m_last, m_answer}) foot->addWidget(l);
    foot->addLayout(across);
    foot->addWidget(hint);
    down->addLayout(foot);
}

void EntryPage::connectAll() {
    connect(&m_desk, &desk::Desk::read, this, &EntryPage::readAgain);
    connect(&m_desk, &desk::Desk::yardChanged, this, &EntryPage::readAgain);
    connect(&m_desk, &desk::Desk::authorChanged, this, [this] {
        Carried now = m_work.carried();
        now.by = m_desk.author();
        m_work.setCarried(now);
        m_head->show(now);
    });
    connect(&m_desk, &desk::Desk::chosenChanged, this, &EntryPage::followChosen);
    connect(&m_entry, &EntryDesk::visitSaved, this, &EntryPage::formSaved);
    connect(&m_work, &EntryWork::rowChanged, this, [this] {
        say({});
        showFoot();
    });
    connect(&m_work, &EntryWork::rowsRead, this, &EntryPage::showFoot);
    connect(m_head, &EntryHead::carriedChanged, this,
            [this](const Carried& now) { guarded(m_dialogs, [&] { m_work.setCarried(now); }); });
    connect(m_head, &EntryHead::done, this, [this] { m_grid->setFocus(Qt::TabFocusReason); });
    connect(m_head, &EntryHead::labelTyped, this, &EntryPage::goToLabel);
    connect(m_grid, &EntryGrid::rowMoved, this, &EntryPage::showRow);
    connect(m_grid, &EntryGrid::saveAsked, this, &EntryPage::save);
    connect(m_grid, &EntryGrid::saveAllAsked, this, &EntryPage::saveAll);
    connect(m_grid, &EntryGrid::leaveAsked, this, &EntryPage::leave);
    connect(m_grid, &EntryGrid::keyTyped, this, [this] { say({}); });
    connect(m_grid, &EntryGrid::phraseAsked, this,
            [this](QLineEdit& line) { guarded(m_dialogs, [&] { offerPhrases(line, m_desk); }); });
    connect(m_grid->selectionModel(), &QItemSelectionModel::currentChanged, this, [this] { say({}); });
    connect(m_saveAll, &QPushButton::clicked, this, &EntryPage::saveAll);
    connect(m_head->columns(), &QMenu::aboutToShow, this, &EntryPage::fillColumns);
    for (const auto& [key, work] :
         {std::pair(Qt::Key_F9, &EntryHead::goToLabel), {Qt::Key_F4, &EntryHead::openColumns}}) {
        auto* shortcut = new QShortcut(QKeySequence(key), this);
        shortcut->setContext(Qt::WidgetWithChildrenShortcut);
        connect(shortcut, &QShortcut::activated, m_head, work);
    }
}

QString EntryPage::answer() const { return m_answer->isHidden() ? QString() : m_answer->text(); }

void EntryPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    m_shown = true;
    takeDay();
    m_entry.carry(m_work.carried());
    readAgain();
    followChosen();
}

void EntryPage::hideEvent(QHideEvent* event) {
    QWidget::hideEvent(event);
    m_shown = false;
    m_entry.carry({});
}

/// Another day is looked at in the window: that one is written down.
void EntryPage::takeDay() {
    if (m_desk.day() != m_deskDay) {
        m_deskDay = m_desk.day();
        Carried now = m_work.carried();
        now.day = std::min(m_deskDay, m_desk.today());
        m_work.setCarried(now);
    }
    m_head->show(m_work.carried());
}

void EntryPage::readAgain() {
    if (!m_shown) return;
    guarded(m_dialogs, [&] {
        takeDay();
        m_work.read();
        if (m_yard != m_desk.yard()) {
            m_yard = m_desk.yard();
            auto columns = chosenColumns(m_desk.session().bookId());
            if (columns.empty() && m_yard)
                columns =
                    columnsToBegin(m_desk.session().visitsBetween(m_desk.today() - kUsedDays, m_desk.today(), *m_yard),
                                   std::ranges::any_of(m_work.rows(), [](const EntryRow& r) { return r.boxes == 2; }));
            m_model.setColumns(columns);
        }
        const auto row = m_at ? m_work.rowOf(*m_at) : std::nullopt;
        if (m_grid->row() < 0 && m_model.rowCount() > 0) m_grid->goTo(row.value_or(0));
        showFoot();
    });
}

void EntryPage::fillColumns() {
    QMenu* menu = m_head->columns();
    menu->clear();
    const core::WeightUnit unit = m_desk.reading().snapshot.settings.showWeight;
    for (const TallyColumn column : core::kTallyOrder) {
        QAction* action = menu->addAction(tr("%1 · %2").arg(headOf(column, unit), spokenOf(column, unit)));
        action->setCheckable(true);
        action->setChecked(std::ranges::count(m_model.columns(), column) > 0);
        connect(action, &QAction::toggled, this, [this, column](bool on) {
            std::vector<TallyColumn> now;
            for (const TallyColumn c : core::kTallyOrder)
                if (c == column ? on : std::ranges::count(m_model.columns(), c) > 0) now.push_back(c);
            if (!now.empty()) setColumns(std::move(now));
        });
    }
    menu->addSeparator();
    connect(menu->addAction(tr("Those that were typed into before")), &QAction::triggered, this, [this] {
        forgetColumns(m_desk.session().bookId());
        m_yard.reset();
        readAgain();
    });
}

void EntryPage::setColumns(std::vector<TallyColumn> columns) {
    rememberColumns(m_desk.session().bookId(), columns);
    m_model.setColumns(columns);
    const auto row = m_at ? m_work.rowOf(*m_at) : std::nullopt;
    m_grid->goTo(row.value_or(0), {}, true);
}

/// The hive whose row has the keys is the chosen one; an open form turns to it.
void EntryPage::showRow() {
    m_leaving = false;
    say({});
    const int row = m_grid->row();
    if (row < 0 || row >= static_cast<int>(m_work.rows().size())) return;
    const core::ColonyId colony = m_work.rows()[static_cast<size_t>(row)].colony;
    m_at = colony;
    showFoot();
    if (m_desk.chosen() == colony || !m_desk.reading().find(colony)) return;
    m_desk.choose(colony);
    if (!m_formOpen()) return;
    m_openForm();
    m_grid->setFocus(Qt::OtherFocusReason);
}

void EntryPage::followChosen() {
    if (!m_shown || !m_desk.chosen() || m_at == m_desk.chosen()) return;
    if (const auto row = m_work.rowOf(*m_desk.chosen())) m_grid->goTo(*row);
}

/// What stood there before, and how far the day is.
void EntryPage::showFoot() {
    const auto row = m_at ? m_work.rowOf(*m_at) : std::nullopt;
    if (row) {
        const EntryRow& r = m_work.rows()[static_cast<size_t>(*row)];
        m_last->setText(r.last ? tr("%1 · before, %2: %3")
                                     .arg(r.label, look::dayTextFrom(r.last->day, m_work.carried().day),
                                          records::visitText(*r.last, m_desk.reading().snapshot.settings.showWeight))
                               : tr("%1 · no visit before").arg(r.label));
    } else {
        m_last->setText(m_desk.yard() ? tr("No hive stands in this yard on that day.") : tr("There is no yard yet."));
    }
    const int typed = m_work.count(RowState::Typed), wrong = m_work.count(RowState::Wrong);
    QStringList parts{tr("%1 of %2 saved").arg(m_work.count(RowState::Saved)).arg(m_work.rows().size())};
    if (typed + wrong > 0) parts << tr("%1 typed and not saved").arg(typed + wrong);
    if (wrong > 0) parts << tr("%1 with something wrong").arg(wrong);
    constexpr qsizetype kNamed = 4;
    if (const QStringList others = m_work.elsewhere(); !others.isEmpty()) {
        const QString named = others.mid(0, kNamed).join(QStringLiteral(", "));
        parts << (others.size() > kNamed
                      ? tr("half typed elsewhere: %1 and %2 more").arg(named, QString::number(others.size() - kNamed))
                      : tr("half typed elsewhere: %1").arg(named));
    }
    if (const QString barred = m_desk.writeBarred(); !barred.isEmpty()) parts = QStringList{barred};
    m_count->setText(parts.join(QStringLiteral(" · ")));
    m_saveAll->setVisible(typed > 0);
    m_saveAll->setText(typed == 1 ? tr("Save the one typed") : tr("Save the %1 typed").arg(typed));
}

/// With nothing to say: what is wrong in the field that has the keys.
void EntryPage::say(const QString& text) {
    const QString shown = text.isEmpty() ? m_grid->currentIndex().data(EntryModel::ProblemRole).toString() : text;
    m_answer->setText(shown);
    m_answer->setVisible(!shown.isEmpty());
    if (!text.isEmpty()) emit m_desk.said(text);
}

void EntryPage::save(bool byTab) {
    const int row = m_grid->row();
    if (row < 0) return;
    if (const QString barred = m_desk.writeBarred(); !barred.isEmpty()) return say(barred);
    const auto answer = m_work.save(row);
    if (answer.kind == Kind::Refused || answer.kind == Kind::Asked) return refuse(answer, row);
    goOnFrom(row, byTab);
}

void EntryPage::refuse(const EntryWork::Answer& answer, int row) {
    if (answer.field)
        if (const auto section = m_model.sectionOf(*answer.field)) {
            m_grid->goTo(row, *section, true);
            if (QLineEdit* line = m_grid->line()) line->selectAll(); // what is typed next takes its place
        }
    say(answer.text);
}

/// Along the walk, or to the label that is typed next.
void EntryPage::goOnFrom(int row, bool byTab) {
    if (m_head->byLabel()) return m_head->goToLabel();
    if (row + 1 < m_model.rowCount()) return m_grid->goTo(row + 1, {}, true);
    if (byTab) return m_grid->leaveForward();
    const int open = m_work.count(RowState::Blank) + m_work.count(RowState::Typed) + m_work.count(RowState::Wrong);
    emit m_desk.said(open == 0 ? tr("All %1 hives of the yard have a visit of that day.").arg(m_model.rowCount())
                               : tr("The end of the walk: %1 of %2 hives have a visit of that day.")
                                     .arg(m_model.rowCount() - open)
                                     .arg(m_model.rowCount()));
}

/// Each one edit; those that are wrong or odd stay, the first of them has the keys.
void EntryPage::saveAll() {
    std::optional<std::pair<core::ColonyId, EntryWork::Answer>> stays;
    int saved = 0;
    std::vector<core::ColonyId> all;
    for (const EntryRow& r : m_work.rows()) all.push_back(r.colony);
    for (const core::ColonyId colony : all) {
        const auto row = m_work.rowOf(colony);
        if (!row || m_work.state(*row) == RowState::Blank || m_work.state(*row) == RowState::Saved) continue;
        const auto answer = m_work.save(*row, !stays); // one question at a time is seen
        saved += answer.kind == Kind::Saved;
        if (!stays && answer.kind != Kind::Saved && answer.kind != Kind::Nothing) stays.emplace(colony, answer);
    }
    emit m_desk.said(saved == 1 ? tr("1 visit saved.") : tr("%1 visits saved.").arg(saved));
    if (!stays) return;
    if (const auto row = m_work.rowOf(stays->first)) {
        m_grid->goTo(*row, {}, true);
        refuse(stays->second, *row);
    }
}

void EntryPage::leave() {
    const int row = m_grid->row();
    if (row < 0 || !m_work.typed(row)) {
        m_head->day()->setFocus(Qt::OtherFocusReason);
        return m_head->day()->selectAll();
    }
    if (!m_leaving) {
        m_leaving = true;
        const QString label = m_work.rows()[static_cast<size_t>(row)].label;
        return say(tr("%1 is not saved: Ctrl + Enter saves it, Escape again throws its typing away.").arg(label));
    }
    m_leaving = false;
    say({});
    m_work.throwAway(row);
}

void EntryPage::goToLabel(const QString& label) {
    const auto row = m_work.rowNamed(label);
    if (!row) {
        say(label.trimmed().isEmpty() ? tr("Type a label.")
                                      : tr("No hive %1 stands in this yard on that day.").arg(label.trimmed()));
        return m_head->goTo()->selectAll();
    }
    say({});
    m_head->goTo()->clear();
    m_grid->goTo(*row, {}, true);
}

/// By the form: it goes on with the next hive on the walk.
void EntryPage::formSaved(core::ColonyId colony) {
    if (!m_shown) return;
    const auto row = m_work.rowOf(colony);
    if (!row || *row + 1 >= m_model.rowCount()) return;
    m_grid->goTo(*row + 1, {}, true);
    m_openForm();
}

} // namespace ui::entry
