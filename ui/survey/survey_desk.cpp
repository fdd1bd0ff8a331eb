#include "ui/survey/survey_desk.h"

#include <QKeyEvent>
#include <QLineEdit>

namespace ui::survey {

SurveyDesk::SurveyDesk(desk::Desk& desk, plan::PlanView& plan, Dialogs& dialogs, QObject* parent)
    : QObject(parent),
      m_desk(desk),
      m_plan(plan),
      m_site(desk, plan, dialogs),
      m_move(m_site),
      m_turn(m_site),
      m_arrange(m_site),
      m_measure(m_site),
      m_gate(m_site),
      m_draw(m_site),
      m_band(new SurveyBand(&plan)) {
    m_site.pickedChanged = [this] { pickedChanged(); };
    m_arrange.over = [this] { takeQuietly(ToolKind::Move); };
    m_arrange.givenUp = [this] {
        QMetaObject::invokeMethod(
            this,
            [this] {
                if (m_on && m_tool == ToolKind::Arrange && !m_arrange.busy()) takeQuietly(ToolKind::Move);
            },
            Qt::QueuedConnection);
    };
    connect(&m_desk, &desk::Desk::read, this, &SurveyDesk::bookRead);
    connect(&m_desk, &desk::Desk::yardChanged, this, [this] { setOn(false); });
    connect(m_band, &SurveyBand::toolAsked, this, &SurveyDesk::take);
    connect(m_band, &SurveyBand::arrangeAsked, this, &SurveyDesk::arrange);
    connect(m_band, &SurveyBand::drawAsked, this, &SurveyDesk::draw);
    connect(m_band, &SurveyBand::named, this, [this](const QString& name) {
        m_move.nameThing(name);
        m_plan.setFocus(Qt::OtherFocusReason);
    });
    connect(m_band, &SurveyBand::takeBackAsked, this, [this] { m_move.takeBackThing(); });
    connect(m_band, &SurveyBand::doneAsked, this, [this] { setOn(false); });
    m_plan.installEventFilter(this);
}

void SurveyDesk::setOn(bool on) {
    if (on == m_on) return;
    if (on) {
        const QString barred = m_desk.carryBarred();
        if (!barred.isEmpty() || !m_desk.yard() || m_plan.aim().on()) {
            m_site.say(!barred.isEmpty()   ? barred
                       : m_plan.aim().on() ? tr("Something is being set down on the drawing: finish it first.")
                                           : tr("There is no yard to survey."));
            emit onChanged(false);
            return;
        }
    }
    m_on = on;
    m_band->setVisible(on);
    if (on) {
        take(ToolKind::Move);
    } else {
        m_plan.setTool(nullptr);
        m_site.pickNothing();
        m_plan.setFocus(Qt::OtherFocusReason);
        m_site.say(tr("Survey ended: hives are carried again."));
    }
    emit onChanged(on);
}

SurveyTool* SurveyDesk::toolOf(ToolKind kind) {
    switch (kind) {
    case ToolKind::Move:
        return &m_move;
    case ToolKind::Turn:
        return &m_turn;
    case ToolKind::Arrange:
        return &m_arrange;
    case ToolKind::Measure:
        return &m_measure;
    case ToolKind::Gate:
        return &m_gate;
    case ToolKind::Draw:
        break;
    }
    return &m_draw;
}

void SurveyDesk::take(ToolKind kind) {
    if (!m_on) return;
    takeQuietly(kind);
    toolOf(kind)->begin();
}

void SurveyDesk::takeQuietly(ToolKind kind) {
    if (!m_on) return;
    m_tool = kind;
    m_plan.setTool(toolOf(kind));
    m_band->setTool(kind);
    m_plan.setFocus(Qt::OtherFocusReason);
    if (kind != ToolKind::Move) m_site.pickThing({});
}

void SurveyDesk::arrange(Arrangement way) {
    m_arrange.setWay(way);
    take(ToolKind::Arrange);
}

void SurveyDesk::draw(core::FixedKind kind) {
    m_draw.setKind(kind);
    take(ToolKind::Draw);
}

/// What is under way may rest on what is no longer so.
void SurveyDesk::bookRead() {
    if (!m_on) return;
    if (!m_desk.carryBarred().isEmpty()) return setOn(false);
    if (toolOf(m_tool)->busy() && m_tool != ToolKind::Measure && m_tool != ToolKind::Draw) toolOf(m_tool)->abort();
    // The scene follows the same signal: what is picked is looked up in it afterwards.
    QMetaObject::invokeMethod(
        this, [this] { pickedChanged(); }, Qt::QueuedConnection);
}

void SurveyDesk::pickedChanged() {
    const plan::FixedMark* mark = m_on ? m_site.thing() : nullptr;
    m_band->setThing(mark ? std::optional(mark->named ? mark->word : QString()) : std::nullopt,
                     mark ? plan::fixedWord(mark->kind) : QString());
    m_plan.update();
}

/// First what is picked, then the tool, then the survey.
void SurveyDesk::escape() {
    if (m_tool != ToolKind::Move) return take(ToolKind::Move);
    if (m_site.thing() || !m_site.picked().empty()) {
        m_site.pickNothing();
        m_desk.choose(std::nullopt);
        return;
    }
    setOn(false);
}

bool SurveyDesk::eventFilter(QObject* watched, QEvent* event) {
    const bool key = watched == &m_plan && event->type() == QEvent::KeyPress;
    if (!m_on || !key || static_cast<QKeyEvent*>(event)->key() != Qt::Key_Escape)
        return QObject::eventFilter(watched, event);
    if (!toolOf(m_tool)->busy())
        escape();
    else
        toolOf(m_tool)->abort();
    if (m_tool == ToolKind::Arrange) takeQuietly(ToolKind::Move);
    return true;
}

} // namespace ui::survey
