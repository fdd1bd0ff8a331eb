#include "ui/find/colonies_page.h"

#include "core/edit/question.h"
#include "core/rules/question.h"
#include "ui/find/colony_table.h"
#include "ui/find/filter_row.h"
#include "ui/find/question_form.h"
#include "ui/find/question_words.h"
#include "ui/look/rule_words.h"
#include "ui/look/words.h"

#include <QBoxLayout>
#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QScopedValueRollback>
#include <QSettings>
#include <QSignalBlocker>
#include <QToolButton>

namespace ui::find {

namespace rules = core::rules;

namespace {

const QString kColumnsKey = QStringLiteral("find/colonies");
constexpr int kAnyHold = 100;
constexpr int kNoHold = 101;

} // namespace

ColoniesPage::ColoniesPage(desk::Desk& desk, Dialogs& dialogs, QWidget* parent)
    : QWidget(parent),
      m_desk(desk),
      m_dialogs(dialogs),
      m_text(filterLine(this, tr("Colony or yard"), tr("Part of a colony's label or its yard's name"))),
      m_yard(filterList(this, tr("Yards shown"))),
      m_class(filterList(this, tr("Strength"))),
      m_queen(filterList(this, tr("Queen"))),
      m_held(filterList(this, tr("Held or not"))),
      m_ended(new QCheckBox(tr("En&ded too"), this)),
      m_question(filterList(this, tr("Question"))),
      m_questionMenu(menuButton(this, tr("&Question"), tr("Keep, change, mark or take back a question"))),
      m_columns(menuButton(this, tr("Col&umns"), tr("Which columns are shown, and sorting"))),
      m_model(new ColonyModel(this)),
      m_foot(new QLabel(this)) {
    m_table = new ColonyTable(m_model, this);
    m_table->putBackColumns(QSettings().value(kColumnsKey).toByteArray());
    m_foot->setObjectName(QStringLiteral("colonyTotals"));
    m_foot->setWordWrap(true);
    m_foot->setTextFormat(Qt::PlainText);
    buildFilters();
    buildQuestions();
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(14, 10, 14, 10);
    down->setSpacing(8);
    down->addLayout(rowOf({m_text, m_yard, m_ended}, m_text));
    down->addLayout(rowOf({m_class, m_queen, m_held, m_columns}, nullptr));
    down->addLayout(rowOf({m_question, m_questionMenu}, m_question));
    down->addWidget(m_table, 1);
    down->addWidget(m_foot);
    setFocusProxy(m_table);
    connect(m_table->selectionModel(), &QItemSelectionModel::currentRowChanged, this, &ColoniesPage::chosen);
    connect(m_table->selectionModel(), &QItemSelectionModel::selectionChanged, this, &ColoniesPage::chosen);
    connect(m_table, &QTableView::activated, this, [this](const QModelIndex& at) {
        if (at.isValid()) emit cardAsked(m_model->colonyAt(at.row()));
    });
    connect(&m_desk, &desk::Desk::read, this, &ColoniesPage::follow);
    connect(&m_desk, &desk::Desk::yardChanged, this, [this] {
        m_stale = m_stale || !isVisible();
        if (!m_stale) offer(), refilter();
    });
    connect(&m_desk, &desk::Desk::chosenChanged, this, &ColoniesPage::showChosen);
}

ColoniesPage::~ColoniesPage() { keepColumns(); }

void ColoniesPage::buildFilters() {
    m_class->addItem(tr("Any strength"), -1);
    for (int i = 3; i >= 0; --i) m_class->addItem(look::classText(static_cast<rules::StrengthClass>(i)), i);
    m_queen->addItem(tr("Any queen"), -1);
    for (int i = 0; i < 7; ++i) m_queen->addItem(look::queenText(static_cast<core::QueenSeen>(i)), i);
    m_held->addItem(tr("Held or not"), -1);
    m_held->addItem(tr("Held"), kAnyHold);
    m_held->addItem(tr("Not held"), kNoHold);
    for (int i = 0; i < rules::kHoldKindCount; ++i) {
        const auto kind = static_cast<rules::HoldKind>(i);
        m_held->addItem(rules::holdLetter(kind) + QStringLiteral(" ") + look::holdWithin(kind), i);
    }
    m_ended->setAccessibleName(tr("Ended colonies too"));
    connect(m_text, &QLineEdit::textChanged, this, &ColoniesPage::refilter);
    for (QComboBox* list : {m_yard, m_class, m_queen, m_held, m_question})
        connect(list, &QComboBox::currentIndexChanged, this, &ColoniesPage::refilter);
    connect(m_ended, &QCheckBox::toggled, this, &ColoniesPage::refilter);
    auto* columns = new QMenu(m_columns);
    m_columns->setMenu(columns);
    connect(columns, &QMenu::aboutToShow, this, [this, columns] { m_table->fill(*columns); });
}

void ColoniesPage::buildQuestions() {
    auto* menu = new QMenu(m_questionMenu);
    m_questionMenu->setMenu(menu);
    connect(menu, &QMenu::aboutToShow, this, &ColoniesPage::fillQuestionMenu);
}

core::Question ColoniesPage::askedQuestion() const {
    const int at = m_question->currentData().toInt();
    return at >= 0 && static_cast<size_t>(at) < m_questions.size() ? m_questions[static_cast<size_t>(at)]
                                                                   : core::Question{};
}

void ColoniesPage::fillQuestionMenu() {
    QMenu& menu = *m_questionMenu->menu();
    menu.clear();
    const core::Question now = askedQuestion();
    const bool kept = now.id.value != 0;
    const bool writable = m_desk.writeBarred().isEmpty();
    const auto form = [this](const core::Question& q) {
        emit formAsked(
            [this, q]() -> std::unique_ptr<form::Form> { return std::make_unique<QuestionForm>(m_desk.session(), q); });
    };
    const auto add = [&](const QString& text, bool possible, const std::function<void()>& work) {
        QAction* action = menu.addAction(text);
        action->setEnabled(possible && writable);
        connect(action, &QAction::triggered, this, work);
        return action;
    };
    add(tr("&New question…"), true, [form] { form(core::Question{}); });
    if (kept || now.name.isEmpty())
        add(tr("&Change this question…"), kept, [form, now] { form(now); });
    else
        add(tr("&Keep this question…"), true, [form, now] { form(now); });
    QAction* mark = add(tr("&Mark on the plan"), !now.name.isEmpty(), [this, now, kept] {
        core::Question marked = now;
        marked.onPlan = !now.onPlan;
        write(tr("The question %1").arg(now.name), [marked, kept](const core::edit::EditContext& c) {
            return kept ? core::edit::changeQuestion(c, marked) : core::edit::keepQuestion(c, marked);
        });
    });
    mark->setCheckable(true);
    mark->setChecked(now.onPlan);
    add(tr("&Take back this question"), kept, [this, now] {
        write(tr("The question %1").arg(now.name),
              [id = now.id](const core::edit::EditContext& c) { return core::edit::takeBackQuestion(c, id); });
    });
}

void ColoniesPage::write(const QString& what, const core::edit::Edit& edit) {
    guarded(m_dialogs, [&] {
        try {
            m_desk.save(what, edit);
        } catch (const core::Error& e) {
            if (e.kind() != core::Error::Kind::BadData) throw;
            emit m_desk.said(e.userMessage());
        }
    });
}

void ColoniesPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (m_stale) follow();
}

void ColoniesPage::hideEvent(QHideEvent* event) {
    keepColumns();
    QWidget::hideEvent(event);
}

void ColoniesPage::keepColumns() const {
    if (const QByteArray columns = m_table->columns(); !columns.isEmpty()) QSettings().setValue(kColumnsKey, columns);
}

void ColoniesPage::follow() {
    m_stale = !isVisible();
    if (m_stale) return m_model->clear(); // the reading that it showed is no more
    guarded(m_dialogs, [this] {
        const QScopedValueRollback telling(m_telling, true);
        offer();
        m_model->show(m_desk.reading());
        refilter();
        m_table->fitColumnsOnce();
    });
    showChosen();
}

/// What there is to choose among; what was chosen stays where it is still there.
void ColoniesPage::offer() {
    const QSignalBlocker quietYard(m_yard), quietQuestion(m_question);
    const desk::Reading& r = m_desk.reading();
    const int yard = m_yard->currentIndex();
    m_yard->clear();
    m_yard->addItem(tr("All yards"));
    const auto shown = m_desk.yard() ? r.find(*m_desk.yard()) : std::nullopt;
    m_yard->addItem(shown ? tr("The yard shown: %1").arg(r.snapshot.yard(*shown).name) : tr("The yard shown"));
    m_yard->setCurrentIndex(std::max(0, yard));
    const QString asked = askedQuestion().name;
    m_questions = m_desk.session().questions();
    std::erase_if(m_questions, [](const core::Question& q) { return q.about != QLatin1String("colonies"); });
    const size_t kept = m_questions.size();
    for (int i = 0; i < rules::kReadyAskCount; ++i) {
        const core::Question ready = readyQuestion(static_cast<rules::ReadyAsk>(i));
        const auto same = [&ready](const core::Question& q) { return q.name == ready.name; };
        if (std::ranges::none_of(m_questions, same)) m_questions.push_back(ready);
    }
    m_question->clear();
    m_question->addItem(tr("No question"), -1);
    for (size_t i = 0; i < m_questions.size(); ++i) {
        const core::Question& q = m_questions[i];
        QString text = q.name;
        if (i >= kept) text = tr("%1 (offered)").arg(q.name);
        if (q.onPlan) text = tr("%1 (on the plan)").arg(q.name);
        m_question->addItem(text, static_cast<int>(i));
        m_question->setItemData(m_question->count() - 1, askText(rules::readAsk(q.ask).value_or(rules::Ask{})),
                                Qt::ToolTipRole);
        if (q.name == asked) m_question->setCurrentIndex(m_question->count() - 1);
    }
}

void ColoniesPage::refilter() {
    if (m_stale) return;
    guarded(m_dialogs, [this] {
        const desk::Reading& r = m_desk.reading();
        ColonyFilter f;
        f.text = m_text->text();
        if (m_yard->currentIndex() == 1 && m_desk.yard()) f.yard = r.find(*m_desk.yard());
        if (const int c = m_class->currentData().toInt(); c >= 0)
            f.strengthClass = static_cast<rules::StrengthClass>(c);
        if (const int q = m_queen->currentData().toInt(); q >= 0) f.queen = static_cast<core::QueenSeen>(q);
        const int held = m_held->currentData().toInt();
        if (held == kAnyHold || held == kNoHold)
            f.held = held == kAnyHold;
        else if (held >= 0)
            f.heldAs = static_cast<rules::HoldKind>(held);
        f.ended = m_ended->isChecked();
        m_noFigure = 0;
        if (const auto ask = rules::readAsk(askedQuestion().ask)) {
            rules::Answer found = rules::answer(r.snapshot, m_model->figures(), *ask);
            f.among = std::move(found.found);
            m_noFigure = found.noFigure;
        }
        const QScopedValueRollback telling(m_telling, true);
        m_model->setFilter(std::move(f));
        tellFoot();
    });
    showChosen();
}

void ColoniesPage::tellFoot() {
    const ColonyTotals t = m_model->totals();
    QStringList parts{tr("%1 of %2 colonies").arg(t.shown).arg(t.of)};
    if (t.counted > 0)
        parts << tr("%1 frames of bees in the %2 counted").arg(core::framesText(t.frames)).arg(t.counted);
    if (t.weighed > 0)
        parts << tr("mean weight %1 of the %2 weighed")
                     .arg(look::weightOf(core::Decagrams{static_cast<qint32>((t.gross + t.weighed / 2) / t.weighed)},
                                         m_desk.reading().snapshot.settings.showWeight))
                     .arg(t.weighed);
    if (t.held > 0) parts << tr("%1 held").arg(t.held);
    QString text = parts.join(QStringLiteral(" · ")) + u'.';
    if (const core::Question q = askedQuestion(); !q.name.isEmpty()) {
        text += u' ' + tr("Asked: %1.").arg(askText(rules::readAsk(q.ask).value_or(rules::Ask{})));
        if (m_noFigure > 0)
            text += u' ' + (m_noFigure == 1 ? tr("Of 1 more the figure asked for is not recorded.")
                                            : tr("Of %1 more a figure asked for is not recorded.").arg(m_noFigure));
        if (q.id.value == 0) text += u' ' + tr("Its figures are an assumption: keep it and make it your own.");
    }
    m_foot->setText(text);
}

void ColoniesPage::chosen() {
    if (m_telling || !m_table->currentIndex().isValid()) return;
    const int row = m_table->currentIndex().row();
    if (!m_table->selectionModel()->isRowSelected(row, {})) return; // the keys came, no more
    if (!m_model->livingAt(row)) return;                            // its card comes with Enter
    const QScopedValueRollback telling(m_telling, true);
    guarded(m_dialogs, [&] { m_desk.choose(m_model->colonyAt(row)); });
}

void ColoniesPage::showChosen() {
    if (m_telling || m_stale) return;
    const QScopedValueRollback telling(m_telling, true);
    const auto row = m_desk.chosen() ? m_model->rowOf(*m_desk.chosen()) : std::nullopt;
    if (!row) return m_table->clearSelection();
    const int column = m_table->currentIndex().isValid() ? m_table->currentIndex().column() : 0;
    if (m_table->currentIndex().row() == *row && m_table->selectionModel()->isRowSelected(*row, {})) return;
    m_table->setCurrentIndex(m_model->index(*row, column));
    m_table->selectRow(*row);
}

std::vector<core::ColonyId> ColoniesPage::selectedColonies() const {
    std::vector<core::ColonyId> colonies;
    for (const QModelIndex& row : m_table->selectionModel()->selectedRows())
        colonies.push_back(m_model->colonyAt(row.row()));
    return colonies;
}

} // namespace ui::find
