#include "core/report/fields.h"
#include "core/report/tally.h"

#include <algorithm>
#include <map>

// A colony's row of the tally sheet.

namespace core::report {

using rules::Hold;

namespace {

constexpr double kCellHigh = 12.2; // mm: a gloved hand
constexpr double kRowWords = 10;   // mm to write words in
constexpr double kBadge = 5.6;     // side of a hold's letter, mm
constexpr double kHatch = 5;       // mm of a held row's left edge
constexpr double kRowInset = 1.6;

std::vector<const Hold*> holdsOn(const SheetInput& in, ColonyIx colony) {
    std::vector<const Hold*> out;
    for (const Hold& h : in.plan.holds)
        if (h.colony == colony) out.push_back(&h);
    return out;
}

QString storesLast(const SheetInput& in, const SnapStores& stores) {
    QStringList parts;
    if (stores.stores) parts << framesText(*stores.stores);
    if (stores.upper) parts << framesText(*stores.upper);
    return in.say("stores %1").arg(parts.join(QStringLiteral(" + ")));
}

/// What is known of it, by day, the latest first; nothing from before its fresh start.
std::map<Day, QStringList, std::greater<>> figuresByDay(const SheetInput& in, const rules::ColonyFacts& f) {
    std::map<Day, QStringList, std::greater<>> out;
    const SnapLatest& latest = in.s.latestOf(f.colony);
    const auto stands = [&](Day day) { return !f.freshStart || day > *f.freshStart; };
    if (f.lastCount && f.counted) {
        out[*f.counted] << in.say("bees %1").arg(framesText(*f.lastCount));
        if (f.strengthClass) out[*f.counted] << in.say.strengthClass(*f.strengthClass);
    }
    if (f.queenDay) out[*f.queenDay] << in.say("queen: %1").arg(in.say.queenSeen(f.queenNoted));
    if (latest.stores && stands(latest.stores->day)) out[latest.stores->day] << storesLast(in, *latest.stores);
    if (latest.weight && stands(latest.weight->day))
        out[latest.weight->day] << in.say.shortWeight(latest.weight->gross.value * 10'000LL);
    return out;
}

QString lastLine(const SheetInput& in, ColonyIx colony) {
    QStringList parts;
    if (const SnapStay* stay = in.s.placeOf(colony)) parts << in.say("stand %1").arg(stay->standName);
    const auto figures = figuresByDay(in, in.of(colony));
    for (const auto& [day, what] : figures)
        parts << in.say.shortDay(day, in.plan.on) + QStringLiteral(": ") + what.join(QStringLiteral(", "));
    if (figures.empty()) parts << in.say("nothing noted yet");
    return parts.join(QStringLiteral(" · "));
}

/// Writes one row from the top downwards.
class RowWriter {
public:
    RowWriter(const SheetInput& in, const TallyForm& form, ColonyIx colony)
        : m_in(in), m_form(form), m_colony(colony), m_holds(holdsOn(in, colony)), m_pen(in.measure, m_block) {}

    Block made(bool labelled) {
        if (labelled)
            head();
        else
            badges();
        if (!m_holds.empty()) held(labelled);
        due();
        if (m_y > 0) m_y += 0.8;
        if (!m_holds.empty()) hatch();
        if (!staysClosed(m_holds))
            for (const TallyLine* line : {&m_form.first, &m_form.second}) cells(*line);
        note();
        m_pen.frame({0, 0, m_in.width, m_y}, m_holds.empty() ? 0.5 : 0.9);
        m_block.height = m_y;
        m_block.gapAfter = 0;
        m_block.zone = zone({});
        m_block.zoneWidth = m_in.width;
        return std::move(m_block);
    }

private:
    QString zone(const QString& part) const {
        const QString row = QStringLiteral("tally %1").arg(m_in.name(m_colony));
        return part.isEmpty() ? row : row + QStringLiteral(": ") + part;
    }
    double left() const { return m_holds.empty() ? kRowInset : kHatch + kRowInset; }
    double room() const { return m_in.width - left() - kRowInset; }

    /// The letters of its holds; returns the x after them.
    double badges() {
        double x = left();
        for (const Hold* h : m_holds) {
            m_pen.fill({x, 0.9, kBadge, kBadge}, Ink::Black);
            m_pen.line(x + kBadge / 2, 0.9 + (kBadge - lineHeight(12)) / 2, QString(rules::holdLetter(h->kind)),
                       {12, true, Ink::White}, Align::Centre);
            x += kBadge + 1;
        }
        return x;
    }

    /// Label and last figures, beside each other where there is room.
    void head() {
        const double x = badges();
        const QString& label = m_in.name(m_colony);
        const double labelRoom = m_in.width - kRowInset - x;
        const double wide = m_pen.width(label, kLabel);
        m_y = m_pen.paragraph(x, 0.5, labelRoom, label, kLabel);
        const QString last = lastLine(m_in, m_colony);
        const double beside = x + wide + 4;
        if (wide < labelRoom / 3 || beside + m_pen.width(last, kText) < m_in.width - kRowInset) {
            const double top = 0.5 + baseline(kLabel.pointSize) - baseline(kText.pointSize);
            m_y = std::max(m_y, m_pen.paragraph(beside, top, m_in.width - kRowInset - beside, last, kText));
        } else {
            m_y = m_pen.paragraph(left(), m_y, room(), last, kText);
        }
    }

    void held(bool labelled) {
        if (!labelled) m_y = 0.9 + kBadge + 0.4;
        QStringList titles;
        for (const Hold* h : m_holds) titles << m_in.say.holdTitle(h->kind);
        m_y = m_pen.paragraph(left(), m_y, room(), mayStill(m_in, m_holds), kText,
                              titles.join(QStringLiteral(" · ")) + u':');
    }

    void dueLine(const QString& what, Day on) {
        const QString text = what + QStringLiteral(" (") + m_in.say.weekday(on) + u')';
        m_pen.frame({left(), m_y + 0.5, kTickSide, kTickSide}, 0.45);
        const double indent = kTickSide + 2;
        m_y = std::max(m_y + kTickSide + 0.8,
                       m_pen.paragraph(left() + indent, m_y + 0.6, room() - indent, text, kStrong));
    }

    void due() {
        for (const rules::Due& due : m_in.plan.due)
            if (due.colony == m_colony) dueLine(dueTitle(m_in, due), due.on);
        for (const rules::DivideDue& due : rules::divideChecks(m_in.s, m_in.options.divided))
            if (due.colony == m_colony) dueLine(m_in.say("Look at what the divide became"), due.date.look);
    }

    void hatch() {
        HatchMark mark;
        mark.polygon = {{0, 0}, {kHatch, 0}, {kHatch, m_y}, {0, m_y}};
        mark.spacing = 2.4;
        mark.lineWidth = 0.7;
        m_pen.add(mark);
        m_pen.stroke({kHatch, 0}, {kHatch, m_y}, 0.3);
    }

    void cells(const TallyLine& line) {
        double x = 0;
        const bool oneBox = m_in.of(m_colony).boxes < 2;
        for (const TallyCell& cell : line) {
            const Rect box{x, m_y, cell.width, kCellHigh};
            const bool unlikely = cell.upper && oneBox;
            frameCell(box, unlikely);
            ticks(cell, box);
            if (cell.second)
                m_pen.line(x + cell.width / 2, m_y + (kCellHigh - lineHeight(14)) / 2, QStringLiteral("/"),
                           {14, false, Ink::Black}, Align::Centre);
            m_block.parts.push_back({zone(tallyName(cell.column)), box});
            x += cell.width;
        }
        m_y += kCellHigh;
    }

    /// Dotted inside where it has no upper box.
    void frameCell(const Rect& box, bool unlikely) {
        m_pen.frame(box, 0.3);
        if (!unlikely) return;
        PathMark mark;
        mark.points = {{box.x + 1.2, box.y + box.height - 1.2}, {box.x + box.width - 1.2, box.y + 1.2}};
        mark.lineWidth = 0.3;
        mark.dash = {0.6, 1.4};
        m_pen.add(mark);
    }

    /// A box to tick with the letter that is typed for it.
    void tickBox(double x, double y, QChar letter) {
        m_pen.frame({x, y, kTickSide, kTickSide}, 0.45);
        if (!letter.isSpace())
            m_pen.line(x + kTickSide / 2, y + (kTickSide - lineHeight(kText.pointSize)) / 2 + 0.2,
                       QString(letter.toUpper()), {kText.pointSize, false, Ink::Grey}, Align::Centre);
    }

    void ticks(const TallyCell& cell, const Rect& box) {
        constexpr double kStep = kCellHigh / 2;
        double x = box.x + kTallyPad;
        for (size_t from = 0; from < cell.ticks.size(); from += kTickRows) {
            double most = 0;
            for (size_t i = from; i < std::min(from + kTickRows, cell.ticks.size()); ++i) {
                const double top = box.y + 0.55 + static_cast<double>(i - from) * kStep;
                tickBox(x, top, cell.ticks[i].letter);
                m_pen.line(x + kTickSide + kAfterTick, top + (kTickSide - lineHeight(kText.pointSize)) / 2 + 0.2,
                           cell.ticks[i].words, kText);
                most = std::max(most, m_pen.width(cell.ticks[i].words, kText));
            }
            x += kTickSide + kAfterTick + most + kBetweenTicks;
        }
    }

    /// Boxes for the number of brood boxes, where that changed; returns the x after them.
    double boxes() {
        constexpr double kTop = (kRowWords - kTickSide) / 2;
        const QString words = m_in.say("brood boxes now");
        double x = kRowInset + m_pen.width(words, kText) + 1.6;
        m_pen.line(kRowInset, m_y + kTop + 0.2, words, kText);
        for (const QChar number : {QChar(u'1'), QChar(u'2')}) {
            tickBox(x, m_y + kTop, number);
            x += kTickSide + 1.6;
        }
        m_pen.stroke({x, m_y}, {x, m_y + kRowWords}, 0.3);
        m_block.parts.push_back({zone(tallyName(TallyColumn::Boxes)), {0, m_y, x, kRowWords}});
        return x;
    }

    void note() {
        const double x = staysClosed(m_holds) ? 0 : boxes();
        m_pen.line(x + kRowInset, m_y + 0.6, m_in.say("Note:"), kText);
        m_block.parts.push_back({zone(tallyName(TallyColumn::Note)), {x, m_y, m_in.width - x, kRowWords}});
        m_y += kRowWords;
    }

    const SheetInput& m_in;
    const TallyForm& m_form;
    ColonyIx m_colony;
    std::vector<const Hold*> m_holds;
    Block m_block;
    BlockPen m_pen;
    double m_y = 0;
};

} // namespace

Block tallyRow(const SheetInput& in, const TallyForm& form, ColonyIx colony, bool labelled) {
    return RowWriter(in, form, colony).made(labelled);
}

} // namespace core::report
