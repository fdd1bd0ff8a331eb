#pragma once

#include "ui/survey/survey_tool.h"

#include <QObject>
#include <QTimer>

#include <cmath>

namespace ui::survey {

/// Turns the selected hives where they stand: by dragging around one of them, or by [ and ], a burst of which is one
/// edit.
class TurnTool : public QObject, public SurveyTool {
    Q_OBJECT
public:
    explicit TurnTool(Site& site, QObject* parent = nullptr);

    void begin() override;
    bool busy() const override { return !m_spots.empty(); }
    bool press(const plan::Touch& at) override;
    void drag(const plan::Touch& at) override;
    void release(const plan::Touch& at) override;
    bool key(QKeyEvent& event) override;
    void abort() override;
    QCursor cursor(const plan::Touch& at) const override;
    void paint(QPainter& p, const plan::Camera& camera, const look::Colours& c) const override;

private:
    std::vector<Spot> hives() const;
    void go(int deg);
    void finish();
    void drop();

    std::vector<Spot> m_spots;
    size_t m_gripped = 0;
    int m_by = 0; ///< degrees clockwise
    bool m_keys = false;
    QTimer m_done;
};

} // namespace ui::survey
