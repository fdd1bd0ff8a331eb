#pragma once

#include "ui/after/due_rows.h"
#include "ui/look/colours.h"

#include <QStyledItemDelegate>

namespace ui::after {

class DueModel;

/// Paints a check: which colony and what, when, why, and for a union the three questions as boxes.
class DueDelegate : public QStyledItemDelegate {
    Q_OBJECT
public:
    explicit DueDelegate(const DueModel& model, QObject* parent = nullptr);

    void setWidth(int width) { m_width = width; }
    void paint(QPainter* p, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

private:
    /// Draws (or, without a painter, only measures) a row in `area`; the height it takes.
    double lay(QPainter* p, const DueRow& row, const QRectF& area, const QFont& font, const look::Colours& c) const;

    const DueModel& m_model;
    int m_width = 340;
};

} // namespace ui::after
