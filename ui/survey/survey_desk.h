#pragma once

#include "ui/survey/arrange_tool.h"
#include "ui/survey/move_tool.h"
#include "ui/survey/point_tool.h"
#include "ui/survey/survey_band.h"
#include "ui/survey/turn_tool.h"

#include <QObject>

namespace ui::survey {

/// Survey of the yard that is shown: while it is on, the drawing is put right and no hive is carried. It has its tools
/// in the plan's hand and its band at the plan's top. In the present alone.
class SurveyDesk : public QObject {
    Q_OBJECT
public:
    /// `plan` and `desk` outlive it; its parent is to be the page that has them.
    SurveyDesk(desk::Desk& desk, plan::PlanView& plan, Dialogs& dialogs, QObject* parent);

    /// Says why where it cannot be.
    void setOn(bool on);
    bool on() const { return m_on; }
    void take(ToolKind tool);
    /// Without saying what it does: something else was said.
    void takeQuietly(ToolKind tool);
    void arrange(Arrangement way);
    void draw(core::FixedKind kind);
    SurveyBand* band() const { return m_band; }

signals:
    void onChanged(bool on);

private:
    void bookRead();
    void pickedChanged();
    void escape();
    bool eventFilter(QObject* watched, QEvent* event) override;
    SurveyTool* toolOf(ToolKind kind);

    desk::Desk& m_desk;
    plan::PlanView& m_plan;
    Site m_site;
    MoveTool m_move;
    TurnTool m_turn;
    ArrangeTool m_arrange;
    MeasureTool m_measure;
    GateTool m_gate;
    DrawTool m_draw;
    SurveyBand* m_band;
    ToolKind m_tool = ToolKind::Move;
    bool m_on = false;
};

} // namespace ui::survey
