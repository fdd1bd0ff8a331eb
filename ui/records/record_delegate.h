#pragma once

#include <QStyledItemDelegate>

namespace ui::records {

/// A record as two parts: its title with the day at the right, its words beneath, wrapped.
class RecordDelegate : public QStyledItemDelegate {
    Q_OBJECT
public:
    using QStyledItemDelegate::QStyledItemDelegate;
    void paint(QPainter* p, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
};

} // namespace ui::records
