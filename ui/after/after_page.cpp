#include "ui/after/after_page.h"

#include "ui/after/after_forms.h"
#include "ui/after/due_delegate.h"
#include "ui/close/key_foot.h"
#include "ui/form/day_edit.h"
#include "ui/form/typed.h"
#include "ui/look/type.h"
#include "ui/look/words.h"
#include "ui/records/result_form.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QListView>
#include <QPushButton>
#include <QVBoxLayout>

namespace ui::after {

namespace edit = core::edit;
using core::rules::DueKind;

AfterPage::AfterPage(desk::Desk& desk, Dialogs& dialogs, QWidget* parent)
    : QWidget(parent),
      m_desk(desk),
      m_dialogs(dialogs),
      m_model(new DueModel(this)),
      m_delegate(new DueDelegate(*m_model, this)),
      m_list(new QListView(this)),
      m_panel(new form::FormPanel(this)),
      m_foot(new close::KeyFoot(this)) {
    build();
    connect(m_foot, &close::KeyFoot::asked, this, &AfterPage::pressed);
    connect(&m_desk, &desk::Desk::read, this, &AfterPage::follow);
    connect(&m_desk, &desk::Desk::yardChanged, this, &AfterPage::follow);
    connect(&m_desk, &desk::Desk::chosenChanged, this, &AfterPage::showChosen);
    connect(m_list->selectionModel(), &QItemSelectionModel::currentChanged, this, &AfterPage::moved);
    connect(m_panel, &form::FormPanel::said, &m_desk, &desk::Desk::said);
    connect(m_panel, &form::FormPanel::valuesChanged, m_panel, [this] { m_panel->updateGeometry(); });
    connect(m_panel, &form::FormPanel::closed, this, [this] {
        m_panel->hide();
        m_foot->show();
        m_list->setFocus(Qt::OtherFocusReason);
    });
    setFocusProxy(m_list);
}

QLabel* AfterPage::label(const char* property, const QString& name) {
    auto* made = new QLabel(this);
    made->setProperty(property, true);
    made->setObjectName(name);
    made->setWordWrap(true);
    made->setContentsMargins(20, 0, 20, 0);
    return made;
}

void AfterPage::build() {
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 14, 0, 14);
    all->setSpacing(6);
    buildHead();
    buildList();
    all->addWidget(m_list, 1);
    all->addWidget(m_panel);
    m_panel->hide();
    buildFoot();
    all->addWidget(m_foot);
    addActions(m_foot->actions());
}

void AfterPage::buildHead() {
    auto* all = static_cast<QVBoxLayout*>(layout());
    auto* title = label("heading", {});
    title->setText(tr("Afterwards"));
    title->setFont(look::headingFont(font()));
    m_where = label("quiet", QStringLiteral("afterWhere"));
    auto* line = new QHBoxLayout;
    line->setContentsMargins(20, 0, 20, 0);
    auto* seen = new QLabel(tr("Seen on"), this);
    m_seen = new form::DayEdit(m_desk.today(), this);
    m_seen->setAccessibleName(tr("Day on which it was seen"));
    m_seen->setObjectName(QStringLiteral("afterSeen"));
    m_seen->setText(form::typedDay(m_desk.today()));
    m_seen->setMaximumWidth(fontMetrics().horizontalAdvance(QStringLiteral("30 September 2026")) + 20);
    seen->setBuddy(m_seen);
    m_here = new QPushButton(tr("Only this yard"), this);
    m_here->setCheckable(true);
    m_here->setProperty("plain", true);
    m_here->setToolTip(tr("Of all yards, or of the one shown (Y)"));
    connect(m_here, &QPushButton::toggled, m_here,
            [this](bool here) { m_here->setText(here ? tr("All yards") : tr("Only this yard")); });
    connect(m_here, &QPushButton::toggled, this, &AfterPage::follow);
    line->addWidget(seen);
    line->addWidget(m_seen);
    line->addStretch(1);
    line->addWidget(m_here);
    all->addWidget(title);
    all->addWidget(m_where);
    all->addLayout(line);
}

void AfterPage::buildList() {
    m_list->setModel(m_model);
    m_list->setItemDelegate(m_delegate);
    m_list->setAccessibleName(tr("Checks that are due"));
    m_list->setObjectName(QStringLiteral("afterDue"));
    m_list->setFrameShape(QFrame::NoFrame);
    m_list->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setResizeMode(QListView::Adjust);
    m_list->viewport()->setAutoFillBackground(false);
    m_list->viewport()->installEventFilter(this);
    m_list->installEventFilter(this);
}

void AfterPage::buildFoot() {
    const auto add = [&](size_t row, const QString& text, const QString& tip, char key, DueKind kind) {
        m_forKind.emplace_back(m_foot->add(row, text, tip, key), kind);
    };
    add(0, tr("Paper"), tr("Gone, not gone, not looked at"), 'P', DueKind::UnionCheck);
    add(0, tr("Queen"), tr("One seen, none seen, not looked for"), 'Q', DueKind::UnionCheck);
    add(0, tr("Eggs"), tr("Eggs, no eggs, not looked for"), 'E', DueKind::UnionCheck);
    add(0, tr("Failed…"), tr("Queenless, fought, absconded or dead"), 'X', DueKind::UnionCheck);
    add(1, tr("Taken out"), tr("The treatment is out of the hive"), 'T', DueKind::TakeOut);
    add(1, tr("Result…"), tr("What the laboratory or the inspector found"), 'R', DueKind::ResultAwaited);
    m_foot->add(2, tr("Dead colony…"), tr("One found without bees, and why"), 'L');
    auto* write = m_foot->addLast(2, tr("Write"), tr("What was seen, as a visit"), 'W');
    write->setObjectName(QStringLiteral("afterWrite"));
    m_forKind.emplace_back(write, DueKind::UnionCheck);
    m_foot->setKeys(tr("P, Q, E: once yes, twice no · Enter writes it as a visit · X failed · T taken out · R result · "
                       "L dead colony · Y this yard or all"));
}

void AfterPage::follow() {
    m_stale = true;
    if (isVisible()) settle();
}

/// What is due is asked of today, whatever day the yard is shown on.
void AfterPage::settle() {
    if (!m_stale) return;
    m_stale = false;
    guarded(m_dialogs, [this] {
        const core::Day today = m_desk.today();
        const auto only = m_here->isChecked() ? m_desk.yard() : std::nullopt;
        const auto was = current() ? std::optional(current()->colony) : std::nullopt;
        const int at = row();
        std::vector<DueRow> rows;
        if (m_desk.day() == today) {
            rows = dueRows(m_desk.reading().snapshot, m_desk.reading().plan.due, only, m_answers);
        } else {
            const core::Snapshot s = m_desk.session().snapshot(today);
            rows = dueRows(s, dueOn(s), only, m_answers);
        }
        m_telling = true;
        m_model->setRows(std::move(rows), today);
        const int same = was ? m_model->rowAbout(*was) : -1;
        const int count = m_model->rowCount();
        goTo(same >= 0                                                    ? same
             : at >= 0 && at < count && m_model->at(at).heading.isEmpty() ? at
                                                                          : m_model->firstCheck());
        m_telling = false;
        const auto yard = only ? m_desk.session().yard(*only) : std::nullopt;
        const QString where = yard ? yard->name : tr("all yards");
        m_where->setText(count == 0 ? tr("Nothing is due in %1 on %2.").arg(where, look::dayText(today))
                                    : tr("Due in %1, %2").arg(where, look::dayText(today)));
        showCurrent();
    });
}

void AfterPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    settle();
}

void AfterPage::showChosen() {
    if (!isVisible() || m_telling || !m_desk.chosen()) return;
    if (current() && current()->colony == *m_desk.chosen()) return;
    m_telling = true;
    goTo(m_model->rowAbout(*m_desk.chosen()));
    m_telling = false;
    showCurrent();
}

int AfterPage::row() const {
    const QModelIndex now = m_list->currentIndex();
    return now.isValid() ? now.row() : -1;
}

const DueRow* AfterPage::current() const {
    return row() >= 0 && m_model->at(row()).heading.isEmpty() ? &m_model->at(row()) : nullptr;
}

void AfterPage::goTo(int row) {
    if (row < 0 || row >= m_model->rowCount()) return;
    m_list->setCurrentIndex(m_model->index(row));
    m_list->scrollTo(m_model->index(row));
}

void AfterPage::showCurrent() {
    for (const auto& [button, kind] : m_forKind) button->setEnabled(current() && current()->what == kind);
}

/// The plan shows the hive that the keys go to.
void AfterPage::moved() {
    const DueRow* now = current();
    if (m_telling) return;
    showCurrent();
    if (!now || m_asked != now->colony) m_asked.reset();
    if (!now || !m_list->hasFocus()) return;
    m_telling = true;
    if (m_desk.reading().find(now->colony)) m_desk.choose(now->colony);
    m_telling = false;
}

bool AfterPage::mayWrite() {
    if (m_desk.onlyRead().isEmpty()) return true;
    emit m_desk.said(m_desk.onlyRead());
    return false;
}

std::optional<core::Day> AfterPage::seenOn() {
    const auto day = form::parseDay(m_seen->text(), m_desk.today());
    if (day && *day <= m_desk.today()) return day;
    emit m_desk.said(tr("“Seen on” is no day up to today: expected one like 15 Sep or yesterday."));
    m_seen->setFocus(Qt::OtherFocusReason);
    return std::nullopt;
}

/// Once yes, twice no, three times not looked at.
void AfterPage::answer(std::optional<bool> Answers::*what) {
    const DueRow* now = current();
    if (!now || now->what != DueKind::UnionCheck || !mayWrite()) return;
    Answers answers = now->answers;
    auto& value = answers.*what;
    if (!value)
        value = true;
    else if (*value)
        value = false;
    else
        value.reset();
    m_answers[now->colony] = answers;
    m_asked.reset();
    m_model->setAnswers(row(), answers);
    emit m_desk.said(tr("%1: %2").arg(now->name, answers.text()));
}

void AfterPage::writeDown() {
    const DueRow* now = current();
    if (!now || !mayWrite()) return;
    if (now->what == DueKind::TakeOut) return takenOut();
    if (now->what == DueKind::ResultAwaited) return result();
    const auto day = seenOn();
    if (!day) return;
    const bool nothingFound = now->answers.oneQueen == false && now->answers.eggs == false;
    if (nothingFound && m_asked != now->colony) { // the one question
        m_asked = now->colony;
        return emit m_desk.said(
            tr("%1: no queen and no eggs. Is it queenless? Z says so; Enter writes only what was seen.")
                .arg(now->name));
    }
    writeAnswers(*now, *day);
}

void AfterPage::writeAnswers(const DueRow& row, core::Day day) {
    const Answers a = row.answers;
    const edit::UnionSeen seen{row.colony, day, a.paperGone, a.oneQueen, a.eggs, m_desk.author(), {}};
    const QString also = a.paperGone == false ? tr("Paper is left: look again in a few days") : QString();
    guarded(m_dialogs, [&] {
        const core::ColonyId colony = row.colony; // the row goes with the reading
        if (m_desk.save(
                tr("Check of the union of %1").arg(row.name),
                [seen](const edit::EditContext& c) { return edit::logUnionCheck(c, seen); }, also))
            m_answers.erase(colony);
    });
}

/// Only as the answer to the question.
void AfterPage::queenless() {
    const DueRow* now = current();
    if (!now || m_asked != now->colony) return;
    const auto day = seenOn();
    if (!day) return;
    edit::Failure f;
    f.loss.colony = now->colony;
    f.loss.day = *day;
    f.loss.by = m_desk.author();
    f.loss.note = now->answers.known();
    guarded(m_dialogs, [&] {
        if (m_desk.save(tr("Union of %1").arg(now->name),
                        [f](const edit::EditContext& c) { return edit::recordFailure(c, f); }))
            m_answers.erase(f.loss.colony);
    });
}

void AfterPage::open(std::unique_ptr<records::RecordForm> form) {
    m_panel->open(std::move(form), m_desk.today(), [this](const form::Form& typed, const form::Values& values) {
        const auto* loss = dynamic_cast<const LossAsked*>(&typed);
        const auto brood = loss ? loss->brood(values) : std::nullopt;
        return m_desk.save(typed.what(), typed.edit(values), brood ? afterLoss(*brood) : QString());
    });
    m_foot->hide();
    m_panel->show();
    m_list->scrollTo(m_list->currentIndex()); // it has less room now
}

void AfterPage::failed() {
    const DueRow* now = current();
    if (!now || now->what != DueKind::UnionCheck || !mayWrite()) return;
    const auto day = seenOn();
    if (!day) return;
    open(failureForm(m_desk.session(), now->colony, *day, m_desk.author(), now->answers.known()));
}

void AfterPage::lost() {
    if (!mayWrite()) return;
    const DueRow* now = current();
    if (const auto day = seenOn())
        open(lossForm(m_desk.session(), now && !now->ended ? std::optional(now->colony) : std::nullopt, *day,
                      m_desk.author()));
}

void AfterPage::result() {
    const DueRow* now = current();
    if (!now || now->what != DueKind::ResultAwaited || !mayWrite()) return;
    if (const auto day = seenOn())
        open(std::make_unique<records::ResultForm>(m_desk.session(), records::Subject{now->colony, {}}, *day));
}

void AfterPage::takenOut() {
    const DueRow* now = current();
    if (!now || now->what != DueKind::TakeOut || !mayWrite()) return;
    const auto day = seenOn();
    if (!day) return;
    guarded(m_dialogs, [&] {
        const DueRow row = *now;
        const QString by = m_desk.author();
        m_desk.save(tr("Taken out of %1").arg(row.name), [row, day, by](const edit::EditContext& c) {
            return edit::logTakenOut(c, row.colony, *day, row.product, by);
        });
    });
}

void AfterPage::onlyHere() { m_here->toggle(); }

bool AfterPage::pressed(int key) {
    switch (key) {
    case Qt::Key_P:
        return answer(&Answers::paperGone), true;
    case Qt::Key_Q:
        return answer(&Answers::oneQueen), true;
    case Qt::Key_E:
        return answer(&Answers::eggs), true;
    case Qt::Key_W:
    case Qt::Key_Return:
    case Qt::Key_Enter:
        return writeDown(), true;
    case Qt::Key_Z:
        return queenless(), true;
    case Qt::Key_X:
        return failed(), true;
    case Qt::Key_L:
        return lost(), true;
    case Qt::Key_R:
        return result(), true;
    case Qt::Key_T:
        return takenOut(), true;
    case Qt::Key_Y:
        return onlyHere(), true;
    default:
        return false;
    }
}

void AfterPage::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    m_delegate->setWidth(m_list->viewport()->width());
    m_list->doItemsLayout();
}

bool AfterPage::eventFilter(QObject* watched, QEvent* event) {
    if (watched == m_list->viewport() && event->type() == QEvent::Resize)
        m_delegate->setWidth(m_list->viewport()->width()); // before the list lays its rows out again
    if (watched == m_list && event->type() == QEvent::KeyPress) {
        const auto* key = static_cast<QKeyEvent*>(event);
        const auto with = key->modifiers() & ~Qt::KeypadModifier;
        if ((with == Qt::NoModifier || with == Qt::ShiftModifier) && pressed(key->key())) return true;
    }
    return QWidget::eventFilter(watched, event);
}

} // namespace ui::after
