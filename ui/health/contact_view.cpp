#include "ui/health/contact_view.h"

#include "ui/look/colours.h"
#include "ui/print/font_measure.h"
#include "ui/print/paint_page.h"

#include <QFontInfo>
#include <QMouseEvent>
#include <QPainter>

#include <cmath>

namespace ui::health {

namespace report = core::report;

ContactView::ContactView(QWidget* parent) : QWidget(parent) {
    setObjectName(QStringLiteral("contactDrawing"));
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

/// The drawing's type is of 11 points on paper; here it is as large as the window's.
double ContactView::dotsPerMm() const {
    return QFontInfo(font()).pixelSize() / (report::kText.pointSize * report::kMmPerPoint);
}

void ContactView::show(const report::ContactDrawing& drawing) {
    m_drawing = drawing;
    updateGeometry();
    update();
}

void ContactView::setMarked(std::optional<core::ColonyIx> colony) {
    m_marked = colony;
    update();
}

std::optional<size_t> ContactView::markedRow() const {
    for (size_t i = 0; m_marked && i < m_drawing.rows.size(); ++i)
        if (m_drawing.rows[i].colony == *m_marked) return i;
    return std::nullopt;
}

int ContactView::heightForWidth(int) const {
    return static_cast<int>(std::ceil(report::contactHeight(m_drawing) * dotsPerMm()));
}

QSize ContactView::sizeHint() const { return {400, heightForWidth(400)}; }

void ContactView::paintEvent(QPaintEvent*) {
    if (m_drawing.rows.empty()) return;
    QPainter p(this);
    const look::Colours c = look::coloursOf(*this);
    const double dots = dotsPerMm();
    if (const auto row = markedRow()) {
        const report::Rect at = report::contactRow(*row);
        p.fillRect(QRectF(0, at.y * dots, width(), at.height * dots), c.chosen);
    }
    const report::Block block = report::contactBlock(m_drawing, print::FontMeasure(), width() / dots);
    report::Page page;
    page.marks = block.marks;
    print::paintPage(p, page, dots, nullptr, {c.ink, c.quiet, c.pale, c.paper});
}

void ContactView::mousePressEvent(QMouseEvent* event) {
    const double y = event->position().y() / dotsPerMm();
    for (size_t i = 0; i < m_drawing.rows.size(); ++i) {
        const report::Rect at = report::contactRow(i);
        if (y >= at.y && y < at.y + at.height) emit pressed(m_drawing.rows[i].colony);
    }
}

} // namespace ui::health
