#pragma once

#include "ui/after/due_model.h"
#include "ui/close/step_page.h"

#include <map>

class QPushButton;

namespace ui::form {
class DayEdit;
}
namespace ui::records {
class RecordForm;
}

namespace ui::after {

class DueDelegate;

/// Afterwards: the checks that are due today, overdue ones first, worked by single keys; what is seen is written as a
/// visit, a union that failed and a colony that is lost as the records that this makes.
class AfterPage : public close::StepPage {
    Q_OBJECT
public:
    AfterPage(desk::Desk& desk, Dialogs& dialogs, QWidget* parent = nullptr);

    const DueModel& model() const { return *m_model; }

signals:
    void sheetAsked(); ///< what is due in the yard shown, on paper

protected:
    void readAgain() override;
    bool pressed(int key) override;
    void showCurrent() override;
    void chooseCurrent() override;
    void keysCame() override;
    int rowAbout(core::ColonyId colony) const override;

private:
    AfterPage(desk::Desk& desk, Dialogs& dialogs, close::KeyFoot* foot, QWidget* parent);
    void buildHead();
    void buildFoot(close::KeyFoot& foot);
    std::vector<DueRow> rows() const;
    const DueRow* current() const;
    bool mayWrite();
    /// The day on which it was seen; nullopt: what is typed there is none.
    std::optional<core::Day> seenOn();

    void answer(std::optional<bool> Answers::*what);
    void writeDown();
    void writeAnswers(const DueRow& row, core::Day day);
    void queenless();
    void failed();
    void lost();
    void result();
    void takenOut();
    void onlyHere();
    void open(std::unique_ptr<records::RecordForm> form);

    DueModel* m_model;
    DueDelegate* m_delegate;
    QLabel* m_where = nullptr;
    form::DayEdit* m_seen = nullptr;
    QPushButton* m_here = nullptr;
    std::vector<std::pair<QPushButton*, core::rules::DueKind>> m_forKind;
    std::map<core::ColonyId, Answers> m_answers; ///< not written yet
    std::optional<core::ColonyId> m_asked;       ///< about which it was asked whether it is queenless
};

} // namespace ui::after
