#pragma once

#include <QStyledItemDelegate>

namespace ui::history {

/// Cells whose text stands under that of the header, with room above and below.
class RoomyCells : public QStyledItemDelegate {
    Q_OBJECT
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
};

} // namespace ui::history
