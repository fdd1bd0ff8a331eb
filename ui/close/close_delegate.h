#pragma once

#include "ui/close/close_lines.h"
#include "ui/look/colours.h"

#include <QStyledItemDelegate>

namespace ui::close {

class CloseModel;

/// Paints a strip: its number, a box as on the paper (ticked, struck, changed, or still blank), which colonies, what
/// came of it, and what was noted.
class CloseDelegate : public QStyledItemDelegate {
    Q_OBJECT
public:
    explicit CloseDelegate(const CloseModel& model, QObject* parent = nullptr);

    void setWidth(int width) { m_width = width; }
    /// The row whose whole problem is shown; of the others the first sentence.
    void setOpen(int row) { m_open = row; }
    void paint(QPainter* p, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

private:
    /// Draws (or, without a painter, only measures) a line in `area`; the height it takes.
    double lay(QPainter* p, const Line& line, bool open, const QRectF& area, const QFont& font,
               const look::Colours& c) const;

    const CloseModel& m_model;
    int m_open = -1;
    int m_width = 340;
};

} // namespace ui::close
