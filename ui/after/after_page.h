#pragma once

#include "ui/after/due_model.h"
#include "ui/desk/desk.h"
#include "ui/form/form_panel.h"

#include <QWidget>

class QLabel;
class QListView;
class QPushButton;

namespace ui::close {
class KeyFoot;
}
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
class AfterPage : public QWidget {
    Q_OBJECT
public:
    AfterPage(desk::Desk& desk, Dialogs& dialogs, QWidget* parent = nullptr);

    const DueModel& model() const { return *m_model; }
    QListView* list() const { return m_list; }
    form::FormPanel* panel() const { return m_panel; }

protected:
    void showEvent(QShowEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void build();
    void buildHead();
    void buildList();
    void buildFoot();
    QLabel* label(const char* property, const QString& name);
    void follow();
    void settle();
    void showChosen();
    void showCurrent();
    void moved();
    void goTo(int row);
    int row() const;
    const DueRow* current() const;
    bool pressed(int key);
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

    desk::Desk& m_desk;
    Dialogs& m_dialogs;
    DueModel* m_model;
    DueDelegate* m_delegate;
    QListView* m_list;
    form::FormPanel* m_panel;
    close::KeyFoot* m_foot;
    QLabel* m_where = nullptr;
    form::DayEdit* m_seen = nullptr;
    QPushButton* m_here = nullptr;
    std::vector<std::pair<QPushButton*, core::rules::DueKind>> m_forKind;
    std::map<core::ColonyId, Answers> m_answers; ///< not written yet
    std::optional<core::ColonyId> m_asked;       ///< about which it was asked whether it is queenless
    bool m_stale = true;                         ///< the book changed while this was not shown
    bool m_telling = false;                      ///< the list is being told; it does not tell back
};

} // namespace ui::after
