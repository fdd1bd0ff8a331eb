#pragma once

#include "ui/survey/arrange.h"
#include "ui/survey/survey_tool.h"

#include <QCoreApplication>

namespace ui::survey {

enum class Arrangement { WestEast, NorthSouth, TheirLine, Evenly, Rows };

/// Shows where the picked stands would go; Enter does it, Escape does not.
class ArrangeTool : public SurveyTool {
    Q_DECLARE_TR_FUNCTIONS(ArrangeTool)
public:
    using SurveyTool::SurveyTool;
    void setWay(Arrangement way) { m_way = way; }

    /// Where there is nothing to do it says so, and is over.
    void begin() override;
    bool busy() const override { return !m_spots.empty(); }
    bool press(const plan::Touch& at) override;
    bool key(QKeyEvent& event) override;
    void abort() override;
    void paint(QPainter& p, const plan::Camera& camera, const look::Colours& c) const override;

    std::function<void()> over = [] {};    ///< done, or not: another tool goes into the hand
    std::function<void()> givenUp = [] {}; ///< from outside: another tool shall go into the hand later

private:
    QString wordOf(qsizetype moved, double farthest) const;
    void finish();

    Arrangement m_way = Arrangement::WestEast;
    std::vector<Spot> m_spots;
    Places m_to;
};

} // namespace ui::survey
