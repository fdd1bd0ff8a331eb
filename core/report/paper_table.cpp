#include "core/report/paper_table.h"

#include <algorithm>

namespace core::report {

namespace {

constexpr Type kTableCell{9.5, false, Ink::Black};
constexpr Type kStrongCell{9.5, true, Ink::Black};
constexpr double kColumnGap = 2.4;  ///< columns, mm
constexpr double kMostShare = 0.24; ///< of the width, of all columns but the widest
constexpr double kRowAbove = 0.7;   ///< the text of a row
constexpr size_t kMostRowLines = 9; ///< of a row in one block: longer ones may go on on the next page

struct Place {
    double x = 0;
    double width = 0;
};

QString shownCell(const QString& cell) { return cell.isEmpty() ? QStringLiteral("—") : cell; }

QStringList linesOf(const QString& text, const Type& type, double width, const TextMeasure& measure) {
    QStringList lines;
    for (const QString& part : text.split(u'\n')) lines += wrapped(measure, part, type, width, width);
    return lines;
}

const Type& typeOf(const TableColumn& column, bool head) { return head || column.strong ? kStrongCell : kTableCell; }

/// The widest word, and the widest line, of a column: what it needs, and what it would like.
struct Wish {
    double least = 0;
    double most = 0;
};

void widen(Wish& wish, const QString& text, const Type& type, const TextMeasure& measure, double width) {
    const auto wide = [&](const QString& part) { return measure.widthMm(part, type.pointSize, type.bold) + 0.1; };
    for (const QString& line : text.split(u'\n')) {
        wish.most = std::max(wish.most, std::min(wide(line), width));
        for (const QString& one : line.split(u' ')) wish.least = std::max(wish.least, std::min(wide(one), width / 3));
    }
}

/// Each column has room for its longest word; what is left goes first to those that want little more, so that the
/// widest alone break their lines.
std::vector<double> shared(const std::vector<Wish>& wishes, double room) {
    std::vector<double> widths;
    std::vector<size_t> order;
    double spare = room;
    for (size_t c = 0; c < wishes.size(); ++c) {
        widths.push_back(wishes[c].least);
        order.push_back(c);
        spare -= wishes[c].least;
    }
    if (spare < 0) {
        for (double& w : widths) w *= room / (room - spare);
        return widths;
    }
    std::ranges::stable_sort(order, {}, [&](size_t c) { return wishes[c].most - wishes[c].least; });
    for (size_t i = 0; i < order.size(); ++i) {
        const Wish& wish = wishes[order[i]];
        const double more = std::min(wish.most - wish.least, spare / static_cast<double>(order.size() - i));
        widths[order[i]] += more;
        spare -= more;
    }
    for (double& w : widths) w += spare / static_cast<double>(widths.size());
    return widths;
}

std::vector<Place> placesOf(const PaperTable& table, const TextMeasure& measure, double width) {
    const size_t count = table.columns.size();
    std::vector<Wish> wishes(count);
    for (size_t c = 0; c < count; ++c) {
        for (const QString& one : table.columns[c].shown.split(u' '))
            widen(wishes[c], one, kStrongCell, measure, width);
        for (const QStringList& row : table.rows)
            widen(wishes[c], shownCell(row.value(static_cast<qsizetype>(c))), typeOf(table.columns[c], false), measure,
                  width);
    }
    const auto widest = std::ranges::max_element(wishes, {}, &Wish::most);
    for (auto wish = wishes.begin(); wish != wishes.end(); ++wish)
        if (wish != widest) wish->most = std::max(wish->least, std::min(wish->most, width * kMostShare));
    const auto widths = shared(wishes, width - kColumnGap * static_cast<double>(count - 1));
    std::vector<Place> places;
    double x = 0;
    for (const double wide : widths) {
        places.push_back({x, wide});
        x += wide + kColumnGap;
    }
    return places;
}

void rule(BlockPen& pen, double y, double width, Ink ink) {
    pen.add(PathMark{{{0, y}, {width, y}}, 0.2, ink, false, false, Ink::White, {}});
}

struct LineSpan {
    size_t first = 0;
    size_t count = 0;
};

/// Those lines of each cell; a rule below the last.
Block partOf(const PaperTable& table, const std::vector<Place>& places, const std::vector<QStringList>& cells,
             LineSpan span, const TextMeasure& measure, bool head) {
    Block block;
    BlockPen pen(measure, block);
    const double width = places.back().x + places.back().width;
    double bottom = kRowAbove;
    for (size_t c = 0; c < places.size(); ++c) {
        const Type& type = typeOf(table.columns[c], head);
        double y = kRowAbove;
        for (size_t i = span.first; i < std::min(span.first + span.count, static_cast<size_t>(cells[c].size())); ++i) {
            const QString& text = cells[c][static_cast<qsizetype>(i)];
            const bool right = table.columns[c].right;
            y = pen.line(right ? places[c].x + places[c].width : places[c].x, y, text, type,
                         right ? Align::Right : Align::Left);
        }
        bottom = std::max(bottom, y);
    }
    const bool last = std::ranges::all_of(
        cells, [&](const QStringList& lines) { return static_cast<size_t>(lines.size()) <= span.first + span.count; });
    if (!last) {
        block.height = bottom - kRowAbove;
        block.gapAfter = 0;
        return block;
    }
    rule(pen, bottom + 0.5, width, head ? Ink::Black : Ink::Pale);
    block.height = bottom + 0.5;
    block.gapAfter = 0;
    return block;
}

std::vector<Block> rowBlocks(const PaperTable& table, const std::vector<Place>& places, const QStringList& row,
                             const TextMeasure& measure, bool head) {
    std::vector<QStringList> cells;
    size_t most = 1;
    for (size_t c = 0; c < places.size(); ++c) {
        const Type& type = typeOf(table.columns[c], head);
        cells.push_back(linesOf(shownCell(row.value(static_cast<qsizetype>(c))), type, places[c].width, measure));
        most = std::max(most, static_cast<size_t>(cells.back().size()));
    }
    const size_t parts = (most + kMostRowLines - 1) / kMostRowLines;
    const size_t lines = (most + parts - 1) / parts; // about as many in each: no line stands alone
    std::vector<Block> blocks;
    for (size_t first = 0; first < most; first += lines)
        blocks.push_back(partOf(table, places, cells, {first, lines}, measure, head));
    return blocks;
}

Block sentence(const QString& text, const TextMeasure& measure, double width) {
    Block block;
    BlockPen pen(measure, block);
    block.height = pen.paragraph(0, 1, width, text, kText);
    return block;
}

} // namespace

Section tableSection(const PaperTable& table, const TextMeasure& measure, double width, Ticker* ticker) {
    Section section;
    section.heading = table.heading;
    section.note = table.note;
    if (table.rows.empty()) {
        if (!table.none.isEmpty()) section.blocks.push_back(sentence(table.none, measure, width));
        return section;
    }
    QStringList heads;
    for (const TableColumn& c : table.columns) heads << c.shown;
    const auto places = placesOf(table, measure, width);
    section.head = rowBlocks(table, places, heads, measure, true).front();
    for (const QStringList& row : table.rows) {
        if (ticker) ticker->tick();
        for (Block& block : rowBlocks(table, places, row, measure, false)) section.blocks.push_back(std::move(block));
    }
    if (!table.after.isEmpty()) section.blocks.push_back(sentence(table.after, measure, width));
    return section;
}

} // namespace core::report
