#pragma once

#include "ui/board/board_rows.h"

#include <QAbstractListModel>

namespace ui::board {

/// The rows of the board as a list; the delegate reads BoardRow by row number, screen readers the spoken text.
class BoardModel : public QAbstractListModel {
    Q_OBJECT
public:
    using QAbstractListModel::QAbstractListModel;

    /// The snapshot must live until the next call.
    void setRows(std::vector<BoardRow> rows, const core::Snapshot* snapshot = nullptr);
    const BoardRow& at(int row) const { return m_rows[static_cast<size_t>(row)]; }
    /// What is worked out of a row when it is opened; it stays.
    void unfold(int row, const QString& rules, const QString& line);
    /// The first row about this colony: unions first, then where it was left out; what was asked last.
    int rowAbout(core::ColonyId colony) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;

private:
    QString tipOf(const BoardRow& row) const;

    const core::Snapshot* m_snapshot = nullptr;
    std::vector<BoardRow> m_rows;
};

} // namespace ui::board
