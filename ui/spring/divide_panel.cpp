#include "ui/spring/divide_panel.h"

#include "ui/look/words.h"
#include "ui/spring/divide_close_form.h"
#include "ui/spring/spring_words.h"

#include <QAction>
#include <QBoxLayout>
#include <QComboBox>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>

#include <algorithm>

namespace ui::spring {

namespace edit = core::edit;
namespace rules = core::rules;

namespace {

constexpr int kRowsShown = 4;
constexpr int kNotChosen = -1;

QLabel* quietLabel(QWidget* parent, const QString& name) {
    auto* label = new QLabel(parent);
    label->setObjectName(name);
    label->setProperty("quiet", true);
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    return label;
}

} // namespace

DividePanel::DividePanel(desk::Desk& desk, Dialogs& dialogs, OpenForm openForm, Use use, QWidget* parent)
    : QWidget(parent),
      m_desk(desk),
      m_dialogs(dialogs),
      m_openForm(std::move(openForm)),
      m_use(use),
      m_queens(new QComboBox(this)),
      m_list(new QListWidget(this)),
      m_looks(quietLabel(this, QStringLiteral("divideLooks"))) {
    build();
    connect(&m_desk, &desk::Desk::read, this, &DividePanel::follow);
    connect(&m_desk, &desk::Desk::yardChanged, this, &DividePanel::follow);
    connect(&m_desk, &desk::Desk::chosenChanged, this, &DividePanel::showChosen);
    follow();
}

void DividePanel::build() {
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(20, 6, 20, 0);
    down->setSpacing(4);
    auto* head = new QHBoxLayout;
    auto* title = new QLabel(tr("Divides"), this);
    QFont bold = font();
    bold.setBold(true);
    title->setFont(bold);
    title->setToolTip(tr("What a part needs is an assumption (rule 4.13). Held colonies are never divided."));
    head->addWidget(title, 1);
    m_queens->setObjectName(QStringLiteral("divideQueens"));
    m_queens->setAccessibleName(tr("How the new colonies come to queens"));
    m_queens->addItem(tr("queens: not chosen"), kNotChosen);
    for (const auto queens : {core::DivideQueens::Cells, core::DivideQueens::Bought, core::DivideQueens::Own})
        m_queens->addItem(queensText(queens), static_cast<int>(queens));
    m_queens->setVisible(m_use == Use::Plan);
    head->addWidget(m_queens);
    down->addLayout(head);
    m_list->setObjectName(QStringLiteral("divides"));
    m_list->setAccessibleName(tr("Divides of the merge day"));
    m_list->setWordWrap(true);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    down->addWidget(m_list);
    down->addWidget(m_looks);
    auto* buttons = new QHBoxLayout;
    if (m_use == Use::Plan) {
        m_whole = button(tr("Whole"), tr("Leave whole"), QStringLiteral("divideWhole"), QStringLiteral("Ctrl+Alt+W"),
                         tr("This colony is not divided on that day; again: it is"));
        m_fewer = button(tr("Fewer"), tr("Fewer parts"), QStringLiteral("divideFewer"), QStringLiteral("Ctrl+Alt+-"),
                         tr("One new colony less"));
        m_more = button(tr("More"), tr("More parts"), QStringLiteral("divideMore"), QStringLiteral("Ctrl+Alt++"),
                        tr("One new colony more, up to what the rule allows"));
        for (QPushButton* b : {m_whole, m_fewer, m_more}) buttons->addWidget(b);
        connect(m_whole, &QPushButton::clicked, this, &DividePanel::leaveWhole);
        connect(m_fewer, &QPushButton::clicked, this, [this] { askParts(-1); });
        connect(m_more, &QPushButton::clicked, this, [this] { askParts(1); });
    }
    buttons->addStretch(1);
    m_write = button(tr("Write…"), tr("Write divide back…"), QStringLiteral("divideWrite"),
                     m_use == Use::Plan ? QStringLiteral("Ctrl+Alt+D") : QStringLiteral("Ctrl+Alt+B"),
                     tr("What came of it: the new colonies, their labels and stands"));
    buttons->addWidget(m_write);
    down->addLayout(buttons);
    connect(m_write, &QPushButton::clicked, this, &DividePanel::writeBack);
    connect(m_list, &QListWidget::currentRowChanged, this, &DividePanel::rowChosen);
    connect(m_list, &QListWidget::itemActivated, this, [this](QListWidgetItem*) { writeBack(); });
    connect(m_queens, &QComboBox::activated, this, [this](int) {
        const int chosen = m_queens->currentData().toInt();
        ask(withQueens(m_desk, m_day,
                       chosen == kNotChosen ? std::nullopt : std::optional(static_cast<core::DivideQueens>(chosen))));
    });
}

/// A button, and the same as an action of this panel, with keys.
QPushButton* DividePanel::button(const QString& text, const QString& spoken, const QString& name, const QString& keys,
                                 const QString& tip) {
    auto* made = new QPushButton(text, this);
    made->setObjectName(name);
    made->setAccessibleName(spoken);
    made->setToolTip(tr("%1: %2 (%3)").arg(spoken, tip, keys));
    auto* action = new QAction(spoken, this);
    action->setShortcut(QKeySequence(keys));
    action->setShortcutContext(Qt::WindowShortcut);
    action->setStatusTip(tip);
    connect(action, &QAction::triggered, made, &QPushButton::click);
    addAction(action);
    m_keys.emplace_back(made, action);
    return made;
}

void DividePanel::follow() {
    guarded(m_dialogs, [this] {
        m_day = divideDay(m_desk);
        showLines();
    });
}

void DividePanel::showLines() {
    m_telling = true;
    m_list->clear();
    for (const DivideLine& line : m_day.lines) {
        auto* item = new QListWidgetItem(tr("%1  %2").arg(line.label, line.text), m_list);
        item->setData(Qt::AccessibleTextRole, tr("%1: %2").arg(line.label, line.text));
        QFont font = m_list->font();
        font.setItalic(line.leftWhole() || line.outcome.has_value());
        item->setFont(font);
    }
    const int wanted = m_day.queens ? static_cast<int>(*m_day.queens) : kNotChosen;
    m_queens->setCurrentIndex(m_queens->findData(wanted));
    m_queens->setEnabled(!m_day.closed);
    fitList();
    m_looks->setVisible(m_use == Use::Plan);
    m_looks->setText(looksText());
    fitLooks();
    setVisible(!m_day.lines.empty());
    m_telling = false;
    showChosen();
}

QString DividePanel::looksText() const {
    const auto queens = m_day.queens.value_or(core::DivideQueens::Own);
    QStringList looks;
    QString sources;
    for (const rules::DivideDate& date : rules::divideDates(queens, m_desk.day())) {
        if (date.what == rules::DivideCheckKind::Mated) continue;
        looks << tr("%1 %2").arg(look::shortDayText(date.look), checkText(date.what));
        sources += look::shortDayText(date.look) + QStringLiteral(": ") +
                   rules::filled(QString::fromUtf8(sentenceOf(date).pattern), sentenceOf(date).args) + u'\n';
    }
    m_looks->setToolTip(sources + rules::textOf(rules::divideDriftWords()));
    return tr("Look: %1. Bees that have flown go back to the old stand: shake in more (common practice, no source).")
        .arg(looks.join(QStringLiteral(", ")));
}

void DividePanel::showChosen() {
    m_telling = true;
    const auto chosen = m_desk.chosen();
    const auto at = std::ranges::find_if(m_day.lines, [&](const DivideLine& x) { return chosen == x.colony; });
    if (at != m_day.lines.end()) m_list->setCurrentRow(static_cast<int>(at - m_day.lines.begin()));
    if (m_list->currentRow() < 0 && !m_day.lines.empty()) m_list->setCurrentRow(0);
    m_telling = false;
    showButtons();
}

void DividePanel::rowChosen(int) {
    showButtons();
    if (m_telling) return;
    if (const DivideLine* chosen = line(); chosen && m_desk.reading().find(chosen->colony))
        m_desk.choose(chosen->colony);
}

const DivideLine* DividePanel::line() const {
    const int row = m_list->currentRow();
    return row >= 0 && static_cast<size_t>(row) < m_day.lines.size() ? &m_day.lines[static_cast<size_t>(row)] : nullptr;
}

void DividePanel::showButtons() {
    const DivideLine* chosen = line();
    const bool open = chosen && !chosen->outcome;
    m_write->setEnabled(open && !chosen->leftWhole() && m_desk.day() <= m_desk.today());
    m_write->setToolTip(m_desk.day() > m_desk.today()
                            ? tr("That day is still to come")
                            : tr("What came of it: the new colonies, their labels and stands"));
    if (m_use == Use::Plan) {
        m_whole->setEnabled(open && !m_day.closed);
        m_whole->setText(chosen && chosen->leftWhole() ? tr("Divide") : tr("Whole"));
        m_whole->setAccessibleName(chosen && chosen->leftWhole() ? tr("Divide it") : tr("Leave whole"));
        m_fewer->setEnabled(open && !m_day.closed && chosen->parts > 2);
        m_more->setEnabled(open && !m_day.closed && !chosen->leftWhole() && chosen->parts < chosen->most);
    }
    for (const auto& [b, action] : m_keys) action->setEnabled(b->isEnabled());
}

void DividePanel::ask(const edit::DividesAsked& asked) {
    guarded(m_dialogs, [&] {
        if (const QString barred = m_desk.writeBarred(); !barred.isEmpty()) {
            emit m_desk.said(barred);
            return showLines();
        }
        m_desk.save(tr("Divides"), [asked](const edit::EditContext& c) { return edit::askDivides(c, asked); });
    });
}

void DividePanel::askParts(int by) {
    if (const DivideLine* chosen = line()) ask(withParts(m_desk, m_day, *chosen, chosen->parts + by));
}

void DividePanel::leaveWhole() {
    if (const DivideLine* chosen = line())
        ask(withParts(m_desk, m_day, *chosen, chosen->leftWhole() ? std::max(2, chosen->most) : 1));
}

void DividePanel::writeBack() {
    const DivideLine* chosen = line();
    if (!chosen || !m_write->isEnabled() || !m_desk.yard()) return;
    guarded(m_dialogs, [&] {
        if (const QString barred = m_desk.writeBarred(); !barred.isEmpty()) return emit m_desk.said(barred);
        const auto ix = m_desk.reading().find(chosen->colony);
        const bool held = ix && !m_desk.reading().holdsOf(*ix).empty();
        m_openForm(std::make_unique<DivideCloseForm>(
            m_desk.session(),
            DivideCloseForm::Of{*m_desk.yard(), m_desk.day(), m_day.queens, *chosen, held, m_desk.author()}));
    });
}

/// As high as its first rows are.
void DividePanel::fitList() {
    int height = 0;
    for (int row = 0; row < std::min(m_list->count(), kRowsShown); ++row) height += m_list->sizeHintForRow(row);
    m_list->setFixedHeight(std::max(height, fontMetrics().lineSpacing()) + 2 * m_list->frameWidth() + 2);
}

/// A wrapped label is not asked for its height where the page is short of room.
void DividePanel::fitLooks() {
    m_looks->setMinimumHeight(std::max(0, m_looks->heightForWidth(std::max(m_list->width(), 200))));
}

void DividePanel::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    fitList();
    fitLooks();
}

DividePanel* addDivides(QWidget* page, desk::Desk& desk, Dialogs& dialogs, DividePanel::OpenForm openForm,
                        DividePanel::Use use) {
    auto* panel = new DividePanel(desk, dialogs, std::move(openForm), use, page);
    if (auto* down = qobject_cast<QBoxLayout*>(page->layout())) down->addWidget(panel);
    page->addActions(panel->actions());
    return panel;
}

} // namespace ui::spring
