#pragma once

#include "ui/desk/desk.h"
#include "ui/hand/hand_guide.h"
#include "ui/plan/plan_view.h"

#include <QObject>

namespace ui::form {
class Form;
}

namespace ui::hand {

/// What becomes of hives that the hand sets down on the plan or on a yard of the list: carried, swapped, proposed for a
/// union, or refused. Each is one edit; what the foragers are likely to do is said and drawn after it.
class HandDesk : public QObject {
    Q_OBJECT
public:
    /// False: another form holds typing; it has said so.
    using Open = std::function<bool(std::unique_ptr<form::Form>)>;

    HandDesk(desk::Desk& desk, plan::PlanView& plan, Dialogs& dialogs, HandGuide::Yards yards, Open open,
             QObject* parent);

    /// The two hives that are selected change places. Throws Error as Session::apply.
    void swapSelected();
    HandGuide& guide() { return *m_guide; }

private:
    void setDown(const plan::Carry& carry);
    void carry(const plan::Carry& carry);
    void swap(core::ColonyId one, core::ColonyId other);
    void propose(core::ColonyId carried, core::ColonyId onto);
    void toYard(const plan::Carry& carry);
    bool barred();
    QString lineOf(const plan::Carry& carry);
    /// Writes, and says what was done and `also`; a refusal is said where the eye is. False: nothing was written.
    bool done(const QString& what, const core::edit::Edit& edit, const QString& also);

    desk::Desk& m_desk;
    plan::PlanView& m_plan;
    Dialogs& m_dialogs;
    Open m_open;
    HandGuide* m_guide;
};

} // namespace ui::hand
