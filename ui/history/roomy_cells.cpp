#include "ui/history/roomy_cells.h"

#include <QApplication>
#include <QWidget>

namespace ui::history {

namespace {
constexpr int kAside = 5;
constexpr int kAbove = 3;
} // namespace

void RoomyCells::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
    QStyleOptionViewItem cell = option;
    initStyleOption(&cell, index);
    const QStyle* style = option.widget ? option.widget->style() : QApplication::style();
    style->drawPrimitive(QStyle::PE_PanelItemViewItem, &cell, painter, option.widget);
    QStyleOptionViewItem inner = option;
    inner.rect.adjust(kAside, 0, -kAside, 0);
    QStyledItemDelegate::paint(painter, inner, index);
}

QSize RoomyCells::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    return QStyledItemDelegate::sizeHint(option, index) + QSize(2 * kAside, 2 * kAbove);
}

} // namespace ui::history
