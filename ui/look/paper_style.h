#pragma once

#include <QProxyStyle>

namespace ui::look {

/// Fusion with fields, tick boxes and radio buttons as thin ink on paper, seen in the dark too.
class PaperStyle : public QProxyStyle {
    Q_OBJECT
public:
    PaperStyle();
    void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* p,
                       const QWidget* widget) const override;
    using QProxyStyle::polish;
    void polish(QWidget* widget) override; ///< text keeps off its field's edge; words are words
};

} // namespace ui::look
