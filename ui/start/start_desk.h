#pragma once

#include "ui/desk/desk.h"
#include "ui/form/form_panel.h"
#include "ui/plan/plan_view.h"
#include "ui/start/new_hives.h"

#include <QObject>

namespace ui::start {

/// Makes yards and sets hives up: opens their forms beside the plan, draws on it what is typed, and types what is
/// pointed at on it.
class StartDesk : public QObject {
    Q_OBJECT
public:
    /// False: another form holds typing; it has said so.
    using Open = std::function<bool(std::unique_ptr<form::Form>)>;

    StartDesk(desk::Desk& desk, plan::PlanView& plan, form::FormPanel& panel, Open open, QObject* parent);

    // Each throws Error(Book).
    void newYard();
    void changeYard();
    void hiveRow();
    /// Hive after hive, by clicks or keys, until Escape. `at`: where the first would stand.
    void placeHives(std::optional<core::MmPoint> at = {});
    /// The chosen hive to another yard, or on a past day.
    void carry();
    /// An empty stand was clicked: the next hive goes there.
    void pickStand(core::StandId stand);

    /// One of its forms is open.
    bool busy() const;
    /// A yard that is not made yet is on the plan.
    bool onBlankGround() const { return m_what == What::NewYard; }

signals:
    void busyChanged();

private:
    enum class What { None, NewYard, Yard, Row, Hives, Carry };

    bool mayBegin();
    bool begin(std::unique_ptr<form::Form> form, plan::Aim::Way way, core::MmPoint at);
    void show(const form::Values& values);
    What whatIs(const form::Form* form) const;
    plan::Sketch sketchOf(const form::Form& form);
    void followStand(const form::Values& values);
    void labelAnew();
    void typePlace(core::MmPoint at);
    void putDown(core::MmPoint at);
    void leaveByPlan();
    void closed();
    void nextHive();
    void stopDrawing();

    desk::Desk& m_desk;
    plan::PlanView& m_plan;
    form::FormPanel& m_panel;
    Open m_open;
    Kept m_kept;
    form::Values m_values; ///< of the form that is open
    What m_what = What::None;
    core::YardId m_yard;    ///< of the form that is open
    bool m_changed = false; ///< the book, since something was typed: the form was saved
    bool m_following = false;
    QString m_offered;                    ///< label, by the form
    std::optional<core::MmPoint> m_stand; ///< picked
    std::optional<core::MmPoint> m_lastPut;
};

} // namespace ui::start
