#pragma once

#include "ui/board/board_model.h"
#include "ui/card/elevation.h"

#include <QWidget>

#include <optional>

class QDateEdit;
class QLabel;
class QListView;
class QPushButton;

namespace ui::board {

class BoardDelegate;

/// Merge day of one yard: its day, the plan as a list with reasons, the chosen union from the side, and the way to
/// paper.
class Board : public QWidget {
    Q_OBJECT
public:
    explicit Board(QWidget* parent = nullptr);

    /// The reading must live until the next call.
    void show(const desk::Reading& reading, core::YardIx yard);
    void setChosen(std::optional<core::ColonyId> colony);
    const BoardModel& model() const { return *m_model; }
    QListView* list() const { return m_list; }

signals:
    void dayAsked(core::Day day);
    void chosen(std::optional<core::ColonyId> colony);
    void opened(core::ColonyId colony);
    void previewAsked();
    void printAsked();
    void pdfAsked();

protected:
    void resizeEvent(QResizeEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void buildHead();
    void buildFoot();
    void rowChosen(const QModelIndex& index);
    void open(int row);
    void unfold(int row);

    const desk::Reading* m_reading = nullptr;
    core::YardIx m_yard;
    BoardModel* m_model;
    BoardDelegate* m_delegate;
    QListView* m_list;
    QLabel* m_where = nullptr;
    QLabel* m_expected = nullptr;
    QDateEdit* m_day = nullptr;
    QLabel* m_asUnited = nullptr;
    card::ElevationView* m_side = nullptr;
    QPushButton* m_print = nullptr;
    bool m_telling = false; ///< the list is being told; it does not tell back
};

} // namespace ui::board
