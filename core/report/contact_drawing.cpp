#include "core/report/contact_drawing.h"

#include <algorithm>
#include <map>

namespace core::report {

using rules::ContactLink;
using rules::Contacts;
using rules::GiftKind;

namespace {

constexpr double kRowHeight = 8;
constexpr double kTop = 8; ///< room for the days above the rows

/// The colony asked for, then those it reached, nearest first.
std::vector<ColonyIx> drawnColonies(const Contacts& contacts, size_t most) {
    std::vector<ColonyIx> drawn = contacts.reached;
    const auto steps = [&](ColonyIx c) {
        return contacts.links[static_cast<size_t>(contacts.firstLink[static_cast<size_t>(c.value)])].steps;
    };
    std::ranges::stable_sort(drawn, {}, steps);
    drawn.insert(drawn.begin(), contacts.of);
    if (drawn.size() > most) drawn.resize(std::max<size_t>(most, 1));
    return drawn;
}

QString lettersOf(std::span<const rules::Hold> holds, ColonyIx colony) {
    QString letters;
    for (const rules::Hold& h : holds)
        if (h.colony == colony) letters += holdLetter(h.kind);
    return letters;
}

ContactRow rowOf(const Snapshot& s, const Contacts& contacts, std::span<const rules::Hold> holds, ColonyIx colony,
                 Day from, Day until) {
    const SnapColony& c = s.colony(colony);
    ContactRow row;
    row.colony = colony;
    row.label = c.shown;
    row.letters = lettersOf(holds, colony);
    row.ended = c.ended && *c.ended <= until;
    // A gift out of a dead-out may come after its end: the line reaches there.
    row.line = {std::max(c.since, from), row.ended ? std::max(*c.ended, from) : until};
    if (const qint32 link = contacts.firstLink[static_cast<size_t>(colony.value)]; link >= 0)
        row.reached = contacts.links[static_cast<size_t>(link)].gift.day;
    return row;
}

} // namespace

ContactDrawing contactDrawing(const Snapshot& s, const Contacts& contacts, std::span<const rules::Hold> holds, Day from,
                              Day until, size_t most) {
    ContactDrawing out{from, until, contacts.way == rules::ContactWay::Onwards, 0, {}, {}, 0};
    const std::vector<ColonyIx> drawn = drawnColonies(contacts, most);
    out.left = contacts.reached.size() + 1 - drawn.size();
    std::map<ColonyIx, size_t> at;
    std::vector<ContactRow> rows;
    for (const ColonyIx c : drawn) {
        at.emplace(c, rows.size());
        rows.push_back(rowOf(s, contacts, holds, c, from, until));
    }
    std::vector<ContactStroke> strokes;
    for (size_t i = 0; i < contacts.links.size(); ++i) {
        const ContactLink& link = contacts.links[i];
        const auto a = at.find(link.gift.from), b = at.find(link.gift.to);
        if (a == at.end() || b == at.end()) continue;
        const size_t far = static_cast<size_t>(contacts.far(link).value);
        strokes.push_back(
            {{link.gift.day, a->second, b->second}, link.gift.kind, contacts.firstLink[far] == static_cast<qint32>(i)});
        for (const size_t end : {a->second, b->second})
            rows[end].line.until = std::max(rows[end].line.until, link.gift.day);
    }
    std::vector<TimeRow> lines;
    std::vector<TimeStroke> bare;
    for (const ContactRow& row : rows) lines.push_back(row.line);
    for (const ContactStroke& stroke : strokes) bare.push_back(stroke.stroke);
    const std::vector<size_t> order = quietOrder(lines, bare);
    std::vector<size_t> place(rows.size());
    for (size_t i = 0; i < order.size(); ++i) {
        place[order[i]] = i;
        out.rows.push_back(std::move(rows[order[i]]));
    }
    out.asked = place.front();
    for (ContactStroke& stroke : strokes) {
        stroke.stroke.a = place[stroke.stroke.a];
        stroke.stroke.b = place[stroke.stroke.b];
        out.strokes.push_back(stroke);
    }
    return out;
}

namespace {

/// Days to millimetres, rows to millimetres.
class ContactPen {
public:
    ContactPen(const ContactDrawing& drawing, const TextMeasure& measure, double width, Block& block)
        : m_drawing(drawing), m_pen(measure, block), m_width(width) {
        for (const ContactRow& row : drawing.rows) m_left = std::max(m_left, m_pen.width(labelOf(row), kStrong) + 5);
        m_left = std::min(m_left, width / 3);
    }

    void draw() {
        drawDays();
        for (size_t i = 0; i < m_drawing.rows.size(); ++i) drawRow(i);
        for (const ContactStroke& stroke : m_drawing.strokes) drawStroke(stroke);
    }

private:
    static QString labelOf(const ContactRow& row) {
        return row.letters.isEmpty() ? row.label : row.label + QStringLiteral("  ") + row.letters;
    }
    double x(Day day) const {
        const int days = std::max(m_drawing.until - m_drawing.from, 1);
        return m_left + (m_width - m_left - 2) * (day - m_drawing.from) / days;
    }
    static double y(size_t row) { return contactRow(row).y + 0.5 * kRowHeight; }

    /// The first days of months, as many as have room for their names.
    void drawDays() {
        const double bottom = contactHeight(m_drawing);
        const double room = m_pen.width(QStringLiteral("2026-05"), kText) + 4;
        const double perMonth = (m_width - m_left) / std::max((m_drawing.until - m_drawing.from) / 30.4, 1.0);
        int every = 1;
        for (const int step : {1, 2, 3, 6, 12, 24, 60})
            if (every = step; perMonth * step >= room) break;
        for (QDate month(toDate(m_drawing.from).year(), 1, 1); dayOf(month) <= m_drawing.until;
             month = month.addMonths(every)) {
            const Day day = dayOf(month);
            if (day < m_drawing.from || x(day) + room / 2 > m_width) continue;
            m_pen.stroke({x(day), kTop - 1.5}, {x(day), bottom}, 0.1, {0.4, 1.2});
            m_pen.line(x(day), 0, isoText(day).left(7), kText, Align::Centre);
        }
    }

    void drawRow(size_t i) {
        const ContactRow& row = m_drawing.rows[i];
        const double top = y(i) - lineHeight(kText.pointSize) / 2;
        m_pen.line(0, top, elided(m_pen.measure(), labelOf(row), kStrong, m_left - 4), kStrong);
        const bool asked = i == m_drawing.asked;
        const Day linked =
            asked ? m_drawing.onwards ? m_drawing.from : m_drawing.until : row.reached.value_or(row.line.until);
        const Day turn = std::clamp(linked, row.line.from, row.line.until);
        const Day begin = m_drawing.onwards ? turn : row.line.from, end = m_drawing.onwards ? row.line.until : turn;
        m_pen.stroke({x(row.line.from), y(i)}, {x(row.line.until), y(i)}, 0.15);
        if (begin < end) m_pen.stroke({x(begin), y(i)}, {x(end), y(i)}, asked ? 1.1 : 0.6);
        if (row.ended) m_pen.stroke({x(row.line.until), y(i) - 1.6}, {x(row.line.until), y(i) + 1.6}, 0.5);
    }

    void drawStroke(const ContactStroke& s) {
        const Point from{x(s.stroke.day), y(s.stroke.a)}, to{x(s.stroke.day), y(s.stroke.b)};
        const double width = s.first ? 0.5 : 0.25;
        std::vector<double> dash;
        if (s.kind == GiftKind::Feed) dash = {0.6, 0.9};
        if (s.kind == GiftKind::Divided) dash = {2, 0.9};
        const double down = to.y > from.y ? 1 : -1;
        const bool whole = s.kind == GiftKind::United || s.kind == GiftKind::ShakenOut; // all its bees: two lines
        for (const double beside : whole ? std::vector{-0.5, 0.5} : std::vector{0.0})
            m_pen.stroke({from.x + beside, from.y}, {to.x + beside, to.y}, width, dash);
        PathMark head;
        head.points = {to, {to.x - 0.9, to.y - 2.2 * down}, {to.x + 0.9, to.y - 2.2 * down}};
        head.closed = head.filled = true;
        head.fill = Ink::Black;
        head.lineWidth = 0.1;
        m_pen.add(head);
        CircleMark dot;
        dot.centre = from;
        dot.radius = 0.6;
        dot.fill = Ink::Black;
        m_pen.add(dot);
    }

    const ContactDrawing& m_drawing;
    BlockPen m_pen;
    double m_width;
    double m_left = 0;
};

} // namespace

double contactHeight(const ContactDrawing& drawing) { return contactRow(drawing.rows.size()).y; }

Rect contactRow(size_t row) { return {0, kTop + static_cast<double>(row) * kRowHeight, 0, kRowHeight}; }

Block contactBlock(const ContactDrawing& drawing, const TextMeasure& measure, double width) {
    Block block;
    block.height = contactHeight(drawing);
    block.zone = QStringLiteral("contacts");
    block.zoneWidth = width;
    ContactPen(drawing, measure, width, block).draw();
    return block;
}

QString contactKey() {
    return QStringLiteral("A line is a colony, thick while it is linked; a bar ends it. An arrow is a gift: frames, "
                          "brood, bees or a box solid, feed dotted, a divide dashed, a union or shake-out double; bold "
                          "where it is the first link. Letters after a label are holds.");
}

} // namespace core::report
