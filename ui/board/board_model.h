#pragma once

#include "ui/board/board_rows.h"

#include <QAbstractListModel>

namespace ui::board {

/// The rows of the board as a list; the delegate reads BoardRow by row number, screen readers the spoken text.
class BoardModel : public QAbstractListModel {
    Q_OBJECT
public:
    using QAbstractListModel::QAbstractListModel;

    void setRows(std::vector<BoardRow> rows);
    const BoardRow& at(int row) const { return m_rows[static_cast<size_t>(row)]; }
    /// The first row about this colony, unions before others.
    int rowAbout(core::ColonyId colony) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;

private:
    std::vector<BoardRow> m_rows;
};

} // namespace ui::board
