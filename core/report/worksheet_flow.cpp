#include "core/report/worksheet_flow.h"

#include <algorithm>

namespace core::report {

namespace {

constexpr double kHead = 9;  // running head, mm
constexpr double kFoot = 12; // two lines
constexpr double kAfterSection = 3;
constexpr Type kHeading{14, true, Ink::Black};

Mark moved(Mark mark, double dx, double dy) {
    const auto shift = [dx, dy](Point& p) {
        p.x += dx;
        p.y += dy;
    };
    if (auto* text = std::get_if<TextMark>(&mark)) shift(text->at);
    if (auto* path = std::get_if<PathMark>(&mark))
        for (Point& p : path->points) shift(p);
    if (auto* curve = std::get_if<CurveMark>(&mark))
        for (Point* p : {&curve->from, &curve->control1, &curve->control2, &curve->to}) shift(*p);
    if (auto* circle = std::get_if<CircleMark>(&mark)) shift(circle->centre);
    if (auto* hatch = std::get_if<HatchMark>(&mark))
        for (Point& p : hatch->polygon) shift(p);
    if (auto* yard = std::get_if<YardMark>(&mark)) {
        yard->area.x += dx;
        yard->area.y += dy;
    }
    return mark;
}

class Flow {
public:
    Flow(const PageTexts& texts, const PageSize& size, const TextMeasure& measure)
        : m_texts(texts), m_size(size), m_measure(measure) {
        newPage();
        writeTitle();
    }

    /// `next`: what follows, if anything does.
    void add(const Section& section, const Section* next) {
        if (section.ownPage && m_y > m_size.contentTop()) newPage();
        const Block heading = headingOf(section.heading, section.note);
        const double room = m_size.contentBottom() - m_y - heading.height - heading.gapAfter;
        const double head = section.head.height > 0 ? section.head.height + section.head.gapAfter : 0;
        const double wanted = section.blocks.front().height + head;
        const bool smaller = section.resized && room < wanted && room >= 0.75 * wanted;
        if (!smaller && room < wanted) newPage();
        // a heading never stands alone: without its note where the first block is as tall as that
        place(smaller || fits(heading.height + heading.gapAfter + wanted) ? heading : headingOf(section.heading, {}));
        placeHead(section);
        if (section.resized)
            place(section.resized(smaller ? room : wanted + spare(section, next)));
        else
            placeAll(section);
        m_y += kAfterSection;
    }

    std::vector<Page> take() {
        for (size_t i = 0; i < m_pages.size(); ++i) finish(i);
        return std::move(m_pages);
    }

private:
    void placeAll(const Section& section) {
        for (const Block& block : section.blocks) {
            if (!fits(block.height)) {
                newPage();
                if (!section.heading.isEmpty()) place(headingOf(section.heading + u' ' + m_texts.continued, {}));
                placeHead(section);
            }
            place(block);
        }
    }

    void placeHead(const Section& section) {
        if (section.head.height > 0) place(section.head);
    }

    bool fits(double height) const { return m_y + height <= m_size.contentBottom() + 1e-6; }

    /// What a section's only block may take of the rest of the page, which else stays empty.
    double spare(const Section& section, const Section* next) const {
        const Block& block = section.blocks.front();
        const double left = m_size.contentBottom() - m_y - block.height;
        const double beginning =
            next ? headingOf(next->heading, next->note).height + 2 + next->blocks.front().height : 0;
        if (next && beginning <= left - block.gapAfter - kAfterSection) return 0;
        return std::clamp(left, 0.0, section.stretch);
    }

    void newPage() {
        Page page;
        page.width = m_size.width;
        page.height = m_size.height;
        m_pages.push_back(std::move(page));
        m_y = m_size.contentTop();
    }

    Block headingOf(const QString& heading, const QString& note) const {
        Block block;
        block.gapAfter = 0;
        if (heading.isEmpty() && note.isEmpty()) return block;
        BlockPen pen(m_measure, block);
        double y = 0;
        if (!heading.isEmpty()) y = pen.paragraph(0, y, m_size.contentWidth(), heading, kHeading);
        if (!note.isEmpty()) y = pen.paragraph(0, y, m_size.contentWidth(), note, kText);
        block.height = y;
        block.gapAfter = 1.8;
        return block;
    }

    void place(const Block& block) {
        Page& page = m_pages.back();
        for (const Mark& mark : block.marks) page.marks.push_back(moved(mark, m_size.margin, m_y));
        if (!block.zone.isEmpty())
            page.zones.push_back({block.zone, {m_size.margin, m_y, block.zoneWidth, block.height}});
        for (Zone zone : block.parts) {
            zone.rect.x += m_size.margin;
            zone.rect.y += m_y;
            page.zones.push_back(std::move(zone));
        }
        m_y += block.height + block.gapAfter;
    }

    /// The title of the first page, where the others have their running head.
    void writeTitle() {
        Block block;
        BlockPen pen(m_measure, block);
        const double pageWide = pen.width(m_texts.page.arg(QStringLiteral("99"), QStringLiteral("99")), kText);
        double y = pen.paragraph(0, 0, m_size.contentWidth() - pageWide - 4, m_texts.title, kTitle);
        y = pen.paragraph(0, y, m_size.contentWidth(), m_texts.summary, kLarge);
        block.height = y;
        block.gapAfter = 4;
        m_y = m_size.margin;
        place(block);
    }

    void finish(size_t index) {
        Block block;
        BlockPen pen(m_measure, block);
        const double left = m_size.margin;
        const double right = m_size.width - m_size.margin;
        const QString number = m_texts.page.arg(index + 1).arg(m_pages.size());
        const double top = m_size.margin + (index == 0 ? 1.5 : 0);
        pen.line(right, top, number, kText, Align::Right);
        if (index > 0) {
            const double room = m_size.contentWidth() - pen.width(number, kText) - 4;
            pen.line(left, m_size.margin, elided(m_measure, m_texts.running, kStrong, room), kStrong);
            pen.stroke({left, m_size.margin + 6}, {right, m_size.margin + 6}, 0.2);
        }
        const double foot = m_size.height - m_size.margin - 2 * lineHeight(11) + m_size.footDrop;
        pen.stroke({left, foot - 1}, {right, foot - 1}, 0.2);
        pen.line(left, foot, elided(m_measure, m_texts.foot, kText, m_size.contentWidth()), kText);
        const double below = foot + lineHeight(kText.pointSize);
        const QString from = QStringLiteral(" · ") + m_texts.revision;
        const double room = m_size.contentWidth() - pen.width(m_texts.code, kStrong) - 5;
        const QString book = elided(m_measure, m_texts.book, kText, std::max(room - pen.width(from, kText), 8.0));
        pen.line(left, below, elided(m_measure, book + from, kText, room), kText);
        pen.line(right, below, m_texts.code, kStrong, Align::Right);
        for (Mark& mark : block.marks) m_pages[index].marks.push_back(std::move(mark));
    }

    const PageTexts& m_texts;
    const PageSize& m_size;
    const TextMeasure& m_measure;
    std::vector<Page> m_pages;
    double m_y = 0;
};

} // namespace

double PageSize::contentTop() const { return margin + kHead; }
double PageSize::contentBottom() const { return height - margin - kFoot + footDrop; }

PageSize pageSize(Paper paper) {
    if (paper == Paper::Letter) return {215.9, 279.4, 14};
    return {};
}

std::vector<Page> pagesOf(const std::vector<Section>& sections, const PageTexts& texts, const PageSize& size,
                          const TextMeasure& measure) {
    Flow flow(texts, size, measure);
    std::vector<const Section*> filled;
    for (const Section& section : sections)
        if (!section.blocks.empty()) filled.push_back(&section);
    for (size_t i = 0; i < filled.size(); ++i) flow.add(*filled[i], i + 1 < filled.size() ? filled[i + 1] : nullptr);
    return flow.take();
}

} // namespace core::report
