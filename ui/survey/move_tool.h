#pragma once

#include "ui/survey/survey_tool.h"

#include <QObject>
#include <QTimer>

namespace ui::survey {

/// Moves what is picked: stands, with or without hives, several together; a fixed thing, or one of its points. By
/// dragging, or by arrow keys, a burst of which is one edit.
class MoveTool : public QObject, public SurveyTool {
    Q_OBJECT
public:
    explicit MoveTool(Site& site, QObject* parent = nullptr);

    void begin() override;
    bool busy() const override { return m_what != What::Nothing; }
    bool press(const plan::Touch& at) override;
    void drag(const plan::Touch& at) override;
    void release(const plan::Touch& at) override;
    bool key(QKeyEvent& event) override;
    void abort() override;
    QCursor cursor(const plan::Touch& at) const override;
    void paint(QPainter& p, const plan::Camera& camera, const look::Colours& c) const override;

    /// Takes the picked thing back.
    void takeBackThing();
    void nameThing(const QString& name);

private:
    enum class What { Nothing, Stands, Thing };

    bool pressThing(const plan::Touch& at);
    void take(std::vector<Spot> spots, size_t gripped);
    void takeThing();
    void go(core::MmPoint by);
    void finish();
    void drop();
    void saveStands();
    void saveThing();
    /// The thing as it would be.
    plan::FixedMark moved() const;

    What m_what = What::Nothing;
    std::vector<Spot> m_spots;
    size_t m_gripped = 0;
    plan::FixedMark m_thing; ///< as it is
    core::MmPoint m_from;    ///< of the pointer
    core::MmPoint m_by;
    QPointF m_pressed;
    bool m_far = false;   ///< dragged, not only clicked
    bool m_alone = false; ///< a click on one of several: that one alone
    bool m_keys = false;
    QTimer m_done;
};

} // namespace ui::survey
