#include "core/report/tally.h"

#include <algorithm>
#include <numeric>

// What a row of the tally sheet asks, and the head that says it.

namespace core::report {

namespace {

constexpr double kLeastCell = 13; // mm to write a figure in, in gloves

double wideOfText(const SheetInput& in, const QString& text) {
    return in.measure.widthMm(text, kText.pointSize, false);
}

double columnWide(const SheetInput& in, const TallyCell& cell, qsizetype from) {
    double most = 0;
    for (const QString& word : cell.ticks.mid(from, kTickRows)) most = std::max(most, wideOfText(in, word));
    return kTickSide + kAfterTick + most;
}

double leastWide(const SheetInput& in, const TallyCell& cell) {
    if (cell.ticks.isEmpty())
        return std::max(
            {kLeastCell, wideOfText(in, cell.caption) + 2 * kTallyPad, cell.between.isEmpty() ? 0 : 1.7 * kLeastCell});
    double width = 2 * kTallyPad;
    for (qsizetype i = 0; i < cell.ticks.size(); i += kTickRows)
        width += columnWide(in, cell, i) + (i > 0 ? kBetweenTicks : 0);
    return width;
}

/// The last cell of those that share the words of cell `first`.
size_t lastOfGroup(const TallyLine& line, size_t first) {
    size_t last = first;
    while (last + 1 < line.size() && line[last + 1].group == line[first].group) ++last;
    return last;
}

double sumOf(const TallyLine& line, size_t first, size_t last) {
    double sum = 0;
    for (size_t i = first; i <= last; ++i) sum += line[i].width;
    return sum;
}

/// The least that their words need, and what is left given to those to write in.
void setWidths(const SheetInput& in, TallyLine& line) {
    for (TallyCell& cell : line) cell.width = leastWide(in, cell);
    for (size_t i = 0; i < line.size(); i = lastOfGroup(line, i) + 1) {
        const size_t last = lastOfGroup(line, i);
        const double lacks = wideOfText(in, line[i].group) + 2 * kTallyPad - sumOf(line, i, last);
        for (size_t c = i; lacks > 0 && c <= last; ++c) line[c].width += lacks / static_cast<double>(last - i + 1);
    }
    const auto writes = [](const TallyCell& cell) { return cell.ticks.isEmpty(); };
    const auto many = static_cast<double>(std::count_if(line.begin(), line.end(), writes));
    const double left = in.width - sumOf(line, 0, line.size() - 1);
    for (TallyCell& cell : line)
        if (writes(cell)) cell.width += left / many;
}

void addBees(const SheetInput& in, TallyLine& line) {
    for (const bool upper : {false, true}) {
        const QString box = upper ? in.say("upper box") : in.say("lower box");
        const QString name = upper ? QStringLiteral("upper ") : QString();
        line.push_back({name + QStringLiteral("above"), box, in.say("above"), {}, upper});
        line.push_back({name + QStringLiteral("below"), box, in.say("below"), {}, upper});
    }
}

TallyCell queenCell(const SheetInput& in) {
    QStringList ticks;
    for (const QueenSeen seen :
         {QueenSeen::Seen, QueenSeen::Eggs, QueenSeen::Virgin, QueenSeen::None, QueenSeen::DroneLayer})
        ticks << in.say.queenSeen(seen);
    ticks << in.say("workers lay");
    return {QStringLiteral("queen"), in.say("queen"), {}, ticks};
}

TallyCell signCell(const SheetInput& in) {
    const QStringList ticks{in.say("clean"), in.say("chalk"),  in.say("AFB"),   in.say("sac"),
                            in.say("EFB"),   in.say("nosema"), in.say("doubt"), in.say("wings")};
    return {QStringLiteral("signs"), in.say("signs in the brood"), {}, ticks};
}

} // namespace

TallyForm tallyForm(const SheetInput& in) {
    TallyForm form;
    addBees(in, form.first);
    form.first.push_back(queenCell(in));
    form.first.push_back({QStringLiteral("brood"), in.say("brood"), in.say("frames"), {}});
    form.first.push_back({QStringLiteral("checked"), in.say("of these"), in.say("looked at"), {}});
    form.second.push_back(signCell(in));
    form.second.push_back({QStringLiteral("stores"), in.say("stores"), in.say("lower"), {}});
    form.second.push_back({QStringLiteral("upper stores"), in.say("stores"), in.say("upper"), {}, true});
    form.second.push_back({QStringLiteral("supers"), in.say("honey"), in.say("boxes"), {}});
    form.second.push_back({QStringLiteral("weight"), in.say("weight"), unitSign(in.say.units().weight), {}});
    form.second.push_back(
        {QStringLiteral("mites"), in.say("mites"), in.say("in bees"), {}, false, QStringLiteral("/")});
    setWidths(in, form.first);
    setWidths(in, form.second);
    return form;
}

namespace {

constexpr double kHeadLine = 10.4; // mm: two lines of words

/// The captions of one line; words of a group across all its cells.
void setHeadLine(BlockPen& pen, double y, const TallyLine& line) {
    double x = 0;
    for (size_t i = 0; i < line.size(); i = lastOfGroup(line, i) + 1) {
        const size_t last = lastOfGroup(line, i);
        const double width = sumOf(line, i, last);
        const bool one = line[i].caption.isEmpty();
        pen.frame({x, y, width, kHeadLine}, 0.3);
        pen.line(x + width / 2, y + (one ? kHeadLine / 4 : 0.2), line[i].group, kText, Align::Centre);
        for (size_t c = i; c <= last; ++c) {
            if (!one)
                pen.line(x + line[c].width / 2, y + 0.2 + lineHeight(kText.pointSize), line[c].caption, kText,
                         Align::Centre);
            x += line[c].width;
        }
    }
}

} // namespace

Block tallyHead(const SheetInput& in, const TallyForm& form) {
    Block block;
    BlockPen pen(in.measure, block);
    pen.fill({0, 0, in.width, 2 * kHeadLine}, Ink::Pale);
    setHeadLine(pen, 0, form.first);
    setHeadLine(pen, kHeadLine, form.second);
    block.height = 2 * kHeadLine;
    block.gapAfter = 1.2;
    block.zone = QStringLiteral("tally head");
    block.zoneWidth = in.width;
    return block;
}

} // namespace core::report
