#include "ui/look/page_tabs.h"

#include "ui/look/colours.h"

#include <QPainter>

namespace ui::look {

namespace {
constexpr int kBeside = 14, kAbove = 9, kUnderline = 3;
} // namespace

PageTabs::PageTabs(QWidget* parent) : QTabBar(parent) {
    setDrawBase(false);
    setExpanding(false);
}

QFont PageTabs::bold() const {
    QFont f = font();
    f.setBold(true);
    return f;
}

QSize PageTabs::tabSizeHint(int index) const {
    const QFontMetrics text(bold());
    return {text.horizontalAdvance(tabText(index)) + 2 * kBeside, text.height() + 2 * kAbove};
}

void PageTabs::paintEvent(QPaintEvent*) {
    QPainter p(this);
    const Colours c = coloursOf(*this);
    p.setPen(c.rule);
    p.drawLine(0, height() - 1, width(), height() - 1);
    for (int i = 0; i < count(); ++i) {
        const QRect tab = tabRect(i);
        const bool shown = i == currentIndex();
        const QRect under(tab.left() + kBeside / 2, tab.bottom() - kUnderline + 1, tab.width() - kBeside, kUnderline);
        if (shown) p.fillRect(under, c.planned);
        p.setFont(shown ? bold() : font());
        p.setPen(shown ? c.ink : c.quiet);
        p.drawText(tab, Qt::AlignCenter, tabText(i));
        if (!shown || !hasFocus()) continue;
        p.setPen(QPen(c.ink, 2));
        p.drawRect(tab.adjusted(2, 2, -2, -kUnderline - 1));
    }
}

} // namespace ui::look
