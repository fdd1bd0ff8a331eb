#pragma once

#include "ui/board/board_model.h"

#include <QListView>

#include <optional>

namespace ui::board {

class BoardDelegate;

/// The plan of the merge day as a list. What can be asked of a row stands on it as small buttons, in its menu (right
/// click, Menu key), and on single keys: P pin, N not this pair, L leave out, H host, B boxes, Delete takes back, ? why
/// not.
class BoardList : public QListView {
    Q_OBJECT
public:
    explicit BoardList(QWidget* parent = nullptr);

    const BoardModel& rows() const { return *m_model; }
    BoardModel& rows() { return *m_model; }
    /// The one row that shows all of itself; −1: none.
    void open(int row);
    std::optional<int> current() const;
    /// Where the offer is pressed, in the viewport; null where it is not shown.
    QRect chipOf(int row, core::MergeAsk ask) const;

signals:
    void chosenByHand(int row);
    void entered(int row); ///< Enter or a double click
    void offerTaken(const ui::board::Offer& offer);
    void whyNotAsked();
    void menuAsked(int row, const QPoint& globalAt); ///< −1: of no row

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    bool viewportEvent(QEvent* event) override;

private:
    const Offer* offerAt(const QPoint& at) const;
    bool takeByKey(const QKeyEvent& event);

    BoardModel* m_model;
    BoardDelegate* m_delegate;
    std::optional<Offer> m_pressed;
};

} // namespace ui::board
