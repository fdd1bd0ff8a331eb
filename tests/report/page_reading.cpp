#include "tests/report/page_reading.h"

#include <algorithm>

namespace tests::report {

using namespace core::report;

namespace {
constexpr double kMmPerPoint = 25.4 / 72;
constexpr double kPaperEdge = 10; // mm that no printer needs

QString number(double mm) { return QString::number(mm, 'f', 1); }
QString placed(const Rect& r) {
    return QStringLiteral("%1 %2 %3 %4").arg(number(r.x), number(r.y), number(r.width), number(r.height));
}
} // namespace

double EvenMeasure::widthMm(const QString& text, double pointSize, bool bold) const {
    return static_cast<double>(text.size()) * pointSize * kMmPerPoint * (bold ? 0.6 : 0.55);
}

Rect inkOf(const TextMark& mark, const TextMeasure& measure) {
    const double em = mark.pointSize * kMmPerPoint;
    const double width = measure.widthMm(mark.text, mark.pointSize, mark.bold);
    const double left = mark.align == Align::Left     ? mark.at.x
                        : mark.align == Align::Centre ? mark.at.x - width / 2
                                                      : mark.at.x - width;
    return {left, mark.at.y - 0.78 * em, width, 1.0 * em};
}

std::vector<TextMark> textsOf(const Page& page) {
    std::vector<TextMark> out;
    for (const Mark& mark : page.marks)
        if (const auto* text = std::get_if<TextMark>(&mark)) out.push_back(*text);
    return out;
}

QString textOf(const Page& page) {
    QStringList lines;
    for (const TextMark& mark : textsOf(page)) lines << mark.text;
    return lines.join(u'\n');
}

bool within(const Rect& inner, const Rect& outer) {
    return inner.x >= outer.x && inner.y >= outer.y && inner.x + inner.width <= outer.x + outer.width &&
           inner.y + inner.height <= outer.y + outer.height;
}

bool overlap(const Rect& a, const Rect& b, double by) {
    return std::min(a.x + a.width, b.x + b.width) - std::max(a.x, b.x) > by &&
           std::min(a.y + a.height, b.y + b.height) - std::max(a.y, b.y) > by;
}

QString dumpOf(const std::vector<Page>& pages) {
    QStringList out;
    for (size_t i = 0; i < pages.size(); ++i) {
        out << QStringLiteral("== page %1, %2 × %3").arg(i + 1).arg(pages[i].width).arg(pages[i].height);
        for (const Zone& zone : pages[i].zones) out << QStringLiteral("[%1] %2").arg(zone.name, placed(zone.rect));
        for (const TextMark& mark : textsOf(pages[i]))
            out << QStringLiteral("%1 %2 %3%4 %5")
                       .arg(number(mark.at.x), number(mark.at.y), QString::number(mark.pointSize),
                            mark.bold ? QStringLiteral("b") : QString(), mark.text);
    }
    return out.join(u'\n') + u'\n';
}

namespace {

/// Texts that begin in a box end in it; no box reaches the two lines of the foot.
void addBoxFaults(const Page& page, const QString& where, const TextMeasure& measure, QStringList& faults) {
    constexpr double kFoot = 20; // mm of the page's end, by eye
    for (const Zone& zone : page.zones) {
        const Rect& box = zone.rect;
        if (box.y + box.height > page.height - kFoot)
            faults << where + zone.name + QStringLiteral(" runs into the foot");
        for (const TextMark& text : textsOf(page)) {
            const Rect ink = inkOf(text, measure);
            const bool begins = within({ink.x, ink.y, 0, 0}, box);
            if (begins && !within(ink, box)) faults << where + zone.name + QStringLiteral(" is left by: ") + text.text;
        }
    }
}

} // namespace

QStringList faultsOf(const std::vector<Page>& pages, const TextMeasure& measure, double least) {
    QStringList faults;
    for (size_t i = 0; i < pages.size(); ++i) {
        const QString page = QStringLiteral("page %1: ").arg(i + 1);
        const std::vector<TextMark> texts = textsOf(pages[i]);
        const Rect paper{kPaperEdge, kPaperEdge, pages[i].width - 2 * kPaperEdge, pages[i].height - 2 * kPaperEdge};
        for (size_t a = 0; a < texts.size(); ++a) {
            const Rect ink = inkOf(texts[a], measure);
            if (texts[a].pointSize < least - 1e-6) faults << page + QStringLiteral("too small: ") + texts[a].text;
            if (!within(ink, paper)) faults << page + QStringLiteral("off the page: ") + texts[a].text;
            for (size_t b = a + 1; b < texts.size(); ++b)
                if (overlap(ink, inkOf(texts[b], measure), 0.3))
                    faults << page + texts[a].text + QStringLiteral(" lies over ") + texts[b].text;
        }
        addBoxFaults(pages[i], page, measure, faults);
    }
    return faults;
}

} // namespace tests::report
