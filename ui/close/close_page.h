#pragma once

#include "ui/close/close_foot.h"
#include "ui/close/close_model.h"
#include "ui/close/close_work.h"
#include "ui/close/step_page.h"

class QPushButton;

namespace ui::close {

class CloseDelegate;
class StripForm;

/// Write back: what came of each strip of the merge day shown, a line a strip, worked by single keys; written to the
/// book all at once.
class ClosePage : public StepPage {
    Q_OBJECT
public:
    ClosePage(desk::Desk& desk, Dialogs& dialogs, QWidget* parent = nullptr);

    const CloseWork& work() const { return m_work; }
    QPushButton* writeButton() const { return m_foot->writeButton(); }

protected:
    void readAgain() override;
    bool pressed(int key) override;
    void showCurrent() override;
    void chooseCurrent() override;
    int rowAbout(core::ColonyId colony) const override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    ClosePage(desk::Desk& desk, Dialogs& dialogs, CloseFoot* foot, QWidget* parent);
    void showLines();
    void tellWhere();
    int sameAs(int row) const;
    bool mayNote(bool needsRow = true);
    void goOn();
    void noted(const Drafted& drafted);
    void open(std::unique_ptr<StripForm> form);

    void done();
    void notDone();
    void changedInstead();
    void addOffSheet();
    void asFact();
    void clear();
    void takeBack();
    void write();

    CloseWork m_work;
    CloseModel* m_model;
    CloseDelegate* m_delegate;
    CloseFoot* m_foot;
    QLabel* m_where;
    QLabel* m_barred;
};

} // namespace ui::close
