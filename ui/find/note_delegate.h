#pragma once

#include <QStyledItemDelegate>

namespace ui::find {

/// A note found: of what it is with the day at the right, the words around those found beneath; these are bold and
/// underlined.
class NoteDelegate : public QStyledItemDelegate {
    Q_OBJECT
public:
    using QStyledItemDelegate::QStyledItemDelegate;
    void paint(QPainter* p, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
};

} // namespace ui::find
