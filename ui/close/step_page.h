#pragma once

#include "ui/close/key_foot.h"
#include "ui/close/key_list.h"
#include "ui/desk/desk.h"
#include "ui/form/form_panel.h"

#include <QWidget>

class QLabel;
class QVBoxLayout;

namespace ui::close {

/// A step that is a list worked by single keys, with a foot of the same as buttons, and a form in its place while
/// something is typed. Follows the desk while it is shown.
class StepPage : public QWidget {
    Q_OBJECT
public:
    KeyList* list() const { return m_list; }
    form::FormPanel* panel() const { return m_panel; }

protected:
    /// `foot` becomes this one's.
    StepPage(desk::Desk& desk, Dialogs& dialogs, KeyFoot* foot, const QString& title, const QString& listName,
             QWidget* parent);

    virtual void readAgain() = 0;      ///< the book, the yard or the day is another, and this is shown
    virtual bool pressed(int key) = 0; ///< true: it was meant for the step
    virtual void showCurrent() = 0;    ///< the list is on another row, or the row says something else
    virtual void chooseCurrent() = 0;  ///< the plan is to show the hive of the row
    virtual int rowAbout(core::ColonyId colony) const = 0; ///< −1: none
    virtual void keysCame() { chooseCurrent(); }           ///< the list has the keys

    void follow(); ///< reads again, now or when it is shown
    int row() const { return m_list->row(); }
    /// While the list is told what to show, it does not tell the plan.
    void quietly(const std::function<void()>& work);
    void openForm(std::unique_ptr<form::Form> form, form::FormPanel::Save save);
    QLabel* label(const char* property, const QString& name); ///< below the title, above the list
    QVBoxLayout* head() const { return m_head; }

    void showEvent(QShowEvent* event) override;

private:
    void moved();
    void showChosen();
    void settle();

protected:
    desk::Desk& m_desk;
    Dialogs& m_dialogs;

private:
    QVBoxLayout* m_head;
    KeyList* m_list;
    form::FormPanel* m_panel;
    KeyFoot* m_foot;
    bool m_stale = true;
    bool m_telling = false;
};

} // namespace ui::close
