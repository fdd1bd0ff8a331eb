#pragma once

#include "ui/board/row_column.h"

#include <QFont>
#include <QStyledItemDelegate>

#include <optional>

namespace ui::board {

class BoardModel;

/// Paints the board's rows: cards for holds and unions, plain lines for the rest. A chosen card opens.
class BoardDelegate : public QStyledItemDelegate {
    Q_OBJECT
public:
    explicit BoardDelegate(const BoardModel& model, QObject* parent = nullptr);

    /// The row that is open; its height changes.
    void setOpen(int row) { m_open = row; }
    void setWidth(int width);
    /// The rows are others: what was measured of them is forgotten.
    void forget() { m_heights.clear(); }
    /// Where the offers of a row are in the list's view, whose item has that rectangle.
    std::vector<Chip> chipsOf(int row, const QRect& item, const QFont& font, const QWidget& view) const;

    void paint(QPainter* p, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

private:
    const BoardModel& m_model;
    int m_open = -1;
    int m_width = 340;
    mutable std::vector<int> m_heights; ///< by row, of rows that are not open; 0: not measured yet
    mutable QFont m_font;               ///< in which they were measured
};

} // namespace ui::board
