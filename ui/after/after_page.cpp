#include "ui/after/after_page.h"

#include "ui/after/after_forms.h"
#include "ui/after/due_delegate.h"
#include "ui/form/day_edit.h"
#include "ui/form/typed.h"
#include "ui/look/words.h"
#include "ui/records/result_form.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace ui::after {

namespace edit = core::edit;
using core::rules::DueKind;

AfterPage::AfterPage(desk::Desk& desk, Dialogs& dialogs, QWidget* parent)
    : AfterPage(desk, dialogs, new close::KeyFoot, parent) {}

AfterPage::AfterPage(desk::Desk& desk, Dialogs& dialogs, close::KeyFoot* foot, QWidget* parent)
    : StepPage(desk, dialogs, foot, tr("Afterwards"), tr("Checks that are due"), parent),
      m_model(new DueModel(this)),
      m_delegate(new DueDelegate(*m_model, this)) {
    list()->setObjectName(QStringLiteral("afterDue"));
    list()->setModel(m_model);
    list()->setItemDelegate(m_delegate);
    list()->setWidthListener([this](int width) { m_delegate->setWidth(width); });
    buildHead();
    buildFoot(*foot);
    addActions(foot->actions());
}

void AfterPage::buildHead() {
    m_where = label("quiet", QStringLiteral("afterWhere"));
    auto* line = new QHBoxLayout;
    line->setContentsMargins(0, 0, 0, 0);
    auto* seen = new QLabel(tr("Seen on"), this);
    m_seen = new form::DayEdit(m_desk.today(), this);
    m_seen->setAccessibleName(tr("Day on which it was seen"));
    m_seen->setObjectName(QStringLiteral("afterSeen"));
    m_seen->setText(QStringLiteral("today")); // whenever that is: the window may stay open over night
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
    head()->addLayout(line);
}

void AfterPage::buildFoot(close::KeyFoot& foot) {
    const auto add = [&](size_t row, const QString& text, const QString& tip, char key, DueKind kind) {
        m_forKind.emplace_back(foot.add(row, text, tip, key), kind);
    };
    add(0, tr("Paper"), tr("Gone, not gone, not looked at"), 'P', DueKind::UnionCheck);
    add(0, tr("Queen"), tr("One seen, none seen, not looked for"), 'Q', DueKind::UnionCheck);
    add(0, tr("Eggs"), tr("Eggs, no eggs, not looked for"), 'E', DueKind::UnionCheck);
    add(0, tr("Failed…"), tr("Queenless, fought, absconded or dead"), 'X', DueKind::UnionCheck);
    add(1, tr("Taken out"), tr("The treatment is out of the hive"), 'T', DueKind::TakeOut);
    add(1, tr("Result…"), tr("What the laboratory or the inspector found"), 'R', DueKind::ResultAwaited);
    foot.add(2, tr("Sheet…"), tr("What is due in the yard shown, on paper"), 'S');
    foot.add(2, tr("Dead colony…"), tr("One found without bees, and why"), 'L');
    auto* write = foot.addLast(2, tr("Write"), tr("What was seen, as a visit"), 'W');
    write->setObjectName(QStringLiteral("afterWrite"));
    m_forKind.emplace_back(write, DueKind::UnionCheck);
    foot.setKeys(tr("P, Q, E: once yes, twice no · Enter writes it as a visit · X failed · T taken out · R result · "
                    "L dead colony · S the sheet · Y this yard or all"));
}

/// What is due is asked of today, whatever day the yard is shown on.
std::vector<DueRow> AfterPage::rows() const {
    const auto only = m_here->isChecked() ? m_desk.yard() : std::nullopt;
    if (m_desk.present()) return dueRows(m_desk.reading().snapshot, m_desk.reading().plan.due, only, m_answers);
    const core::Snapshot s = m_desk.session().snapshot(m_desk.today());
    return dueRows(s, dueOn(s), only, m_answers);
}

void AfterPage::readAgain() {
    const auto was = current() ? std::optional(current()->colony) : std::nullopt;
    const int at = row();
    const auto shown = m_desk.yard() ? m_desk.session().yard(*m_desk.yard()) : std::nullopt;
    quietly([&] {
        m_model->setRows(rows(), m_desk.today());
        const int same = was ? m_model->rowAbout(*was) : -1;
        const bool there = at >= 0 && at < m_model->rowCount() && m_model->at(at).heading.isEmpty();
        list()->goTo(same >= 0 ? same : there ? at : m_model->firstCheck(shown ? shown->name : QString()));
    });
    const QString where = m_here->isChecked() && shown ? shown->name : tr("all yards");
    const QString today = look::dayText(m_desk.today());
    m_where->setText(m_model->rowCount() == 0 ? tr("Nothing is due in %1 on %2.").arg(where, today)
                                              : tr("Due in %1, %2").arg(where, today));
    showCurrent();
}

const DueRow* AfterPage::current() const {
    return row() >= 0 && m_model->at(row()).heading.isEmpty() ? &m_model->at(row()) : nullptr;
}

int AfterPage::rowAbout(core::ColonyId colony) const {
    return current() && current()->colony == colony ? row() : m_model->rowAbout(colony);
}

void AfterPage::showCurrent() {
    if (!current() || m_asked != current()->colony) m_asked.reset();
    for (const auto& [button, kind] : m_forKind) button->setEnabled(current() && current()->what == kind);
}

void AfterPage::chooseCurrent() {
    if (current() && m_desk.reading().find(current()->colony)) m_desk.choose(current()->colony);
}

/// A hive of another yard is chosen once the keys go to it: the yard shown does not change by itself.
void AfterPage::keysCame() {
    const auto shown = m_desk.yard() ? m_desk.session().yard(*m_desk.yard()) : std::nullopt;
    if (current() && shown && current()->yard == shown->name) chooseCurrent();
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
    openForm(std::move(form), [this](const form::Form& typed, const form::Values& values) {
        const auto* loss = dynamic_cast<const LossAsked*>(&typed);
        const auto brood = loss ? loss->brood(values) : std::nullopt;
        return m_desk.save(typed.what(), typed.edit(values), brood ? afterLoss(*brood) : QString());
    });
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
    case Qt::Key_S:
        emit sheetAsked();
        return true;
    case Qt::Key_Y:
        return onlyHere(), true;
    default:
        return false;
    }
}

} // namespace ui::after
