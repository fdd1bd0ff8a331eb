#pragma once

#include "ui/close/close_foot.h"
#include "ui/close/close_model.h"
#include "ui/close/close_work.h"
#include "ui/form/form_panel.h"

#include <QWidget>

class QLabel;
class QListView;

namespace ui::close {

class CloseDelegate;
class StripForm;

/// Write back: what came of each strip of the merge day shown, a line a strip, worked by single keys; written to the
/// book all at once.
class ClosePage : public QWidget {
    Q_OBJECT
public:
    ClosePage(desk::Desk& desk, Dialogs& dialogs, QWidget* parent = nullptr);

    const CloseWork& work() const { return m_work; }
    QListView* list() const { return m_list; }
    form::FormPanel* panel() const { return m_panel; }
    QPushButton* writeButton() const { return m_foot->writeButton(); }

protected:
    void showEvent(QShowEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void build();
    void buildList();
    QLabel* label(const char* property, const QString& name);
    void follow();
    void showLines();
    void showChosen();
    void settle();
    bool pressed(int key);
    void showCurrent();
    void moved();
    void choose();
    int row() const;
    bool mayNote(bool needsRow = true);
    void goTo(int row);
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

    desk::Desk& m_desk;
    Dialogs& m_dialogs;
    CloseWork m_work;
    CloseModel* m_model;
    CloseDelegate* m_delegate;
    QListView* m_list;
    form::FormPanel* m_panel;
    QLabel* m_where = nullptr;
    QLabel* m_barred = nullptr;
    CloseFoot* m_foot;
    bool m_stale = true;    ///< the book changed while this was not shown
    bool m_telling = false; ///< the list is being told; it does not tell back
};

} // namespace ui::close
