#pragma once

#include "core/report/sheet.h"
#include "ui/board/board_model.h"
#include "ui/desk/desk.h"
#include "ui/ready/ready_rows.h"

#include <QWidget>

class QLabel;
class QListView;
class QPushButton;

namespace ui::board {
class BoardDelegate;
}

namespace ui::ready {

/// Get ready: what is missing for a good plan, gone through hive by hive; what comes down to one box some days ahead;
/// what to load.
class ReadyPage : public QWidget {
    Q_OBJECT
public:
    ReadyPage(desk::Desk& desk, Dialogs& dialogs, QWidget* parent = nullptr);

    QListView* list() const { return m_list; }
    const board::BoardModel& model() const { return *m_model; }
    const std::vector<core::rules::ColonyMissing>& missing() const { return m_rows.missing; }
    QPushButton* walkButton() const { return m_walk; }
    QPushButton* sheetButton() const { return m_sheet; }
    QPushButton* kitButton() const { return m_kit; }
    QString summary() const;

signals:
    void visitAsked(core::ColonyId colony);
    void walkAsked();  ///< through those selected at the desk
    void sheetAsked(); ///< of the walk, on paper
    void kitAsked();

protected:
    void showEvent(QShowEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void build();
    QWidget* foot();
    QPushButton* button(const QString& text, const QString& tip, void (ReadyPage::*act)());
    void follow();
    void settle();
    void read();
    void showChosen();
    void moved();
    bool pressed(int key);
    void visit();
    void walk();
    void sheet() { emit sheetAsked(); }
    void kit() { emit kitAsked(); }

    desk::Desk& m_desk;
    Dialogs& m_dialogs;
    ReadyRows m_rows;
    board::BoardModel* m_model;
    board::BoardDelegate* m_delegate;
    QListView* m_list;
    QLabel* m_where = nullptr;
    QPushButton* m_walk = nullptr;
    QPushButton* m_sheet = nullptr;
    QPushButton* m_kit = nullptr;
    bool m_stale = true;    ///< the book changed while this was not shown
    bool m_telling = false; ///< the list is being told; it does not tell back
};

} // namespace ui::ready
