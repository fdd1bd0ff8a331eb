#pragma once

#include "ui/board/board_list.h"
#include "ui/board/merge_desk.h"
#include "ui/card/elevation.h"

#include <QList>
#include <QWidget>

#include <optional>

class QAction;
class QLabel;
class QVBoxLayout;

namespace ui::board {

class BoardActions;
class BoardHead;
class Notices;
class Questions;

/// Merge day of one yard: its day, the plan as a list with reasons and what can be asked of it, the chosen union from
/// the side, and the way to paper.
class Board : public QWidget {
    Q_OBJECT
public:
    Board(desk::Desk& desk, Dialogs& dialogs, QWidget* parent = nullptr);

    /// The reading must live until the next call.
    void show(const desk::Reading& reading, core::YardIx yard);
    void setChosen(std::optional<core::ColonyId> colony);
    const BoardModel& model() const { return m_list->rows(); }
    BoardList* list() const { return m_list; }
    MergeDesk& merge() const { return *m_merge; }
    BoardActions* commands() const { return m_actions; }
    /// What can be asked of the hives that are chosen, and why not.
    QList<QAction*> chosenActions() const;
    BoardHead* head() const { return m_head; }
    Notices* notices() const { return m_notices; }
    Questions* questions() const { return m_questions; }

signals:
    void dayAsked(core::Day day);
    void chosen(std::optional<core::ColonyId> colony);
    void opened(core::ColonyId colony);
    void previewAsked();
    void printAsked();
    void pdfAsked();

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void showSide();
    void connectList();
    void connectActions();
    void buildFoot(QVBoxLayout* all);
    void rowChosen(int row);
    void open(int row);
    void unfold(int row);
    void take(const Offer& offer);
    void showMenu(int row, const QPoint& globalAt);
    void showActions();
    std::vector<Offer> offersNow() const;

    desk::Desk& m_desk;
    Dialogs& m_dialogs;
    MergeDesk* m_merge;
    BoardActions* m_actions;
    BoardHead* m_head;
    Notices* m_notices;
    Questions* m_questions;
    BoardList* m_list;
    const desk::Reading* m_reading = nullptr;
    core::YardIx m_yard;
    QLabel* m_asUnited = nullptr;
    card::ElevationView* m_side = nullptr;
    bool m_united = false;  ///< the open row is a union: there is something to draw
    bool m_telling = false; ///< the list is being told; it does not tell back
};

} // namespace ui::board
