#include "core/report/block.h"

namespace core::report {

double BlockPen::width(const QString& text, const Type& type) const {
    return m_measure.widthMm(text, type.pointSize, type.bold);
}

double BlockPen::line(double x, double y, const QString& text, const Type& type, Align align) {
    add(TextMark{{x, y + baseline(type.pointSize)}, text, type.pointSize, type.bold, align, type.ink});
    return y + lineHeight(type.pointSize);
}

double BlockPen::paragraph(double x, double y, double width_, const QString& text, const Type& type,
                           const QString& lead, double hang) {
    double indent = 0;
    if (!lead.isEmpty()) {
        const Type bold{type.pointSize, true, type.ink};
        const QStringList leads = wrapped(m_measure, lead, bold, width_, width_);
        for (qsizetype i = 0; i + 1 < leads.size(); ++i) y = line(x, y, leads[i], bold);
        line(x, y, leads.isEmpty() ? lead : leads.last(), bold);
        indent = width(leads.isEmpty() ? lead : leads.last(), bold) + width(QStringLiteral(" "), type);
        if (text.isEmpty()) return y + lineHeight(type.pointSize);
    }
    double at = x + indent;
    for (const QString& part : wrapped(m_measure, text, type, width_ - hang, width_ - indent)) {
        if (!part.isEmpty()) line(at, y, part, type);
        y += lineHeight(type.pointSize);
        at = x + hang;
    }
    return y;
}

void BlockPen::stroke(Point from, Point to, double lineWidth, std::vector<double> dash) {
    PathMark mark;
    mark.points = {from, to};
    mark.lineWidth = lineWidth;
    mark.dash = std::move(dash);
    add(mark);
}

namespace {
PathMark rectangle(const Rect& r) {
    PathMark mark;
    mark.points = {{r.x, r.y}, {r.x + r.width, r.y}, {r.x + r.width, r.y + r.height}, {r.x, r.y + r.height}};
    mark.closed = true;
    return mark;
}
} // namespace

void BlockPen::frame(const Rect& rect, double lineWidth) {
    PathMark mark = rectangle(rect);
    mark.lineWidth = lineWidth;
    add(mark);
}

void BlockPen::fill(const Rect& rect, Ink ink) {
    PathMark mark = rectangle(rect);
    mark.lineWidth = 0;
    mark.filled = true;
    mark.fill = ink;
    add(mark);
}

double BlockPen::tick(double x, double y, const QString& text, const Type& type) {
    frame({x, y, kTickSide, kTickSide}, 0.45);
    if (text.isEmpty()) return x + kTickSide;
    line(x + kTickSide + 2, y + (kTickSide - lineHeight(type.pointSize)) / 2 + 0.3, text, type);
    return x + kTickSide + 2 + width(text, type);
}

} // namespace core::report
