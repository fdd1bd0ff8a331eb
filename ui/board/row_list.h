#pragma once

#include "ui/board/board_model.h"
#include "ui/desk/desk.h"

#include <QListView>

#include <functional>

namespace ui::board {

class BoardDelegate;

/// Rows as the board has them, in a list of their own: the row about the hive chosen at the desk is the current one,
/// and going to a row chooses its hive.
class RowList : public QListView {
    Q_OBJECT
public:
    explicit RowList(desk::Desk& desk, QWidget* parent = nullptr);

    /// The desk's reading must be that of the rows.
    void setRows(std::vector<BoardRow> rows);
    const BoardModel& rows() const { return *m_model; }
    /// True where the key (without Ctrl, Alt, Shift) did something.
    void setKeys(std::function<bool(int key)> keys) { m_keys = std::move(keys); }
    std::optional<core::ColonyId> current() const;

signals:
    void opened(core::ColonyId colony); ///< by Enter or a double click
    void rowOpened(int row);            ///< likewise, whatever it is about

protected:
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;

private:
    void layAgain();
    void showChosen();
    void open();

    desk::Desk& m_desk;
    BoardModel* m_model;
    BoardDelegate* m_delegate;
    std::function<bool(int)> m_keys;
    bool m_telling = false; ///< it is being told; it does not tell back
};

} // namespace ui::board
