#include "ui/print/pages_view.h"

#include "ui/look/colours.h"
#include "ui/print/paint_page.h"

#include <QKeyEvent>
#include <QPaintEvent>
#include <QPainter>
#include <QScrollBar>

#include <algorithm>

namespace ui::print {

namespace {

constexpr int kGap = 14;           // pixels around a page
constexpr int kMostDescribed = 50; // pages: of more a spoken description is of no use, and takes long to gather
constexpr double kMostDots = 4.4;  // of a millimetre: a page is no wider than it is easy to read

} // namespace

/// The pages themselves; only those that show are painted.
class PagesView::Sheets : public QWidget {
public:
    using QWidget::QWidget;

    void setPages(std::shared_ptr<const std::vector<core::report::Page>> pages) {
        m_pages = std::move(pages);
        update();
    }
    const std::vector<core::report::Page>& pages() const { return *m_pages; }
    int heightAt(int width) const {
        double height = kGap;
        for (const auto& page : *m_pages) height += page.height * dots(width) + kGap;
        return static_cast<int>(height);
    }

protected:
    void paintEvent(QPaintEvent* event) override {
        QPainter p(this);
        const look::Colours c = look::coloursOf(*this);
        const double d = dots(width());
        double y = kGap;
        for (const auto& page : *m_pages) {
            const QRectF sheet((width() - page.width * d) / 2, y, page.width * d, page.height * d);
            y += sheet.height() + kGap;
            if (!sheet.intersects(QRectF(event->rect()))) continue;
            p.fillRect(sheet, c.paper);
            p.setPen(c.rule);
            p.drawRect(sheet);
            p.save();
            p.translate(sheet.topLeft());
            paintPage(p, page, d, nullptr, {c.ink, c.quiet, c.rule, c.paper});
            p.restore();
        }
    }

private:
    double dots(int width) const {
        return m_pages->empty() ? 1 : std::min(kMostDots, (width - 2 * kGap) / m_pages->front().width);
    }
    std::shared_ptr<const std::vector<core::report::Page>> m_pages =
        std::make_shared<const std::vector<core::report::Page>>();
};

PagesView::PagesView(const QString& name, QWidget* parent)
    : QScrollArea(parent), m_name(name), m_sheets(new Sheets(this)) {
    setWidget(m_sheets);
    setFrameShape(QFrame::NoFrame);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(name);
}

void PagesView::show(std::vector<core::report::Page> pages) {
    show(std::make_shared<const std::vector<core::report::Page>>(std::move(pages)));
}

void PagesView::show(std::shared_ptr<const std::vector<core::report::Page>> pages) {
    m_sheets->setPages(std::move(pages));
    setAccessibleName(tr("%1, %2 pages").arg(m_name).arg(pageCount()));
    setAccessibleDescription(textOf(kMostDescribed));
    fit();
}

int PagesView::pageCount() const { return static_cast<int>(m_sheets->pages().size()); }

QString PagesView::text() const { return textOf(pageCount()); }

QString PagesView::textOf(int pages) const {
    QStringList lines;
    for (int i = 0; i < std::min(pages, pageCount()); ++i)
        for (const auto& mark : m_sheets->pages()[static_cast<size_t>(i)].marks)
            if (const auto* written = std::get_if<core::report::TextMark>(&mark)) lines << written->text;
    return lines.join(u'\n');
}

void PagesView::fit() {
    const int width = viewport()->width();
    m_sheets->resize(width, std::max(m_sheets->heightAt(width), 1));
}

void PagesView::resizeEvent(QResizeEvent* event) {
    QScrollArea::resizeEvent(event);
    fit();
}

void PagesView::keyPressEvent(QKeyEvent* event) {
    QScrollBar* bar = verticalScrollBar();
    switch (event->key()) {
    case Qt::Key_PageDown:
    case Qt::Key_Space:
        return bar->setValue(bar->value() + bar->pageStep());
    case Qt::Key_PageUp:
        return bar->setValue(bar->value() - bar->pageStep());
    case Qt::Key_Home:
        return bar->setValue(0);
    case Qt::Key_End:
        return bar->setValue(bar->maximum());
    default:
        QScrollArea::keyPressEvent(event);
    }
}

} // namespace ui::print
