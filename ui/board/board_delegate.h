#pragma once

#include "ui/board/board_rows.h"
#include "ui/look/colours.h"

#include <QStyledItemDelegate>

namespace ui::board {

class BoardModel;

/// Paints the board's rows: cards for holds and unions, plain lines for the rest. A chosen card opens.
class BoardDelegate : public QStyledItemDelegate {
    Q_OBJECT
public:
    explicit BoardDelegate(const BoardModel& model, QObject* parent = nullptr);

    /// The row that is open; its height changes.
    void setOpen(int row) { m_open = row; }
    void setWidth(int width) { m_width = width; }

    void paint(QPainter* p, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

private:
    /// Draws (or, without a painter, only measures) a row in `area`; the height it takes.
    double lay(QPainter* p, const BoardRow& row, bool open, bool chosen, const QRectF& area, const QFont& font,
               const look::Colours& c) const;

    const BoardModel& m_model;
    int m_open = -1;
    int m_width = 340;
};

} // namespace ui::board
