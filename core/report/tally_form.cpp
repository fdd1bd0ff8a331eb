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

double columnWide(const SheetInput& in, const TallyCell& cell, size_t from) {
    double most = 0;
    for (size_t i = from; i < std::min(from + kTickRows, cell.ticks.size()); ++i)
        most = std::max(most, wideOfText(in, cell.ticks[i].words));
    return kTickSide + kAfterTick + most;
}

double leastWide(const SheetInput& in, const TallyCell& cell) {
    if (cell.ticks.empty())
        return std::max({kLeastCell, wideOfText(in, cell.caption) + 2 * kTallyPad, cell.second ? 1.7 * kLeastCell : 0});
    double width = 2 * kTallyPad;
    for (size_t i = 0; i < cell.ticks.size(); i += kTickRows)
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
    const auto writes = [](const TallyCell& cell) { return cell.ticks.empty(); };
    const auto many = static_cast<double>(std::count_if(line.begin(), line.end(), writes));
    const double left = in.width - sumOf(line, 0, line.size() - 1);
    for (TallyCell& cell : line)
        if (writes(cell)) cell.width += left / many;
}

void addBees(const SheetInput& in, TallyLine& line) {
    const QString lower = in.say("lower box");
    const QString upper = in.say("upper box");
    line.push_back({TallyColumn::BeesTop, lower, in.say("above")});
    line.push_back({TallyColumn::BeesBottom, lower, in.say("below")});
    line.push_back({TallyColumn::UpperTop, upper, in.say("above"), {}, true});
    line.push_back({TallyColumn::UpperBottom, upper, in.say("below"), {}, true});
}

TallyCell queenCell(const SheetInput& in) {
    TallyCell cell{TallyColumn::Queen, in.say("queen")};
    for (const QueenSeen seen : {QueenSeen::Seen, QueenSeen::Eggs, QueenSeen::Virgin, QueenSeen::None,
                                 QueenSeen::DroneLayer, QueenSeen::LayingWorkers}) {
        const bool workers = seen == QueenSeen::LayingWorkers;
        cell.ticks.push_back({workers ? in.say("workers lay") : in.say.queenSeen(seen), tallyLetter(seen)});
    }
    return cell;
}

TallyCell signCell(const SheetInput& in) {
    TallyCell cell{TallyColumn::Signs, in.say("signs in the brood")};
    cell.ticks.push_back({in.say("clean")});
    for (const Sign sign :
         {Sign::Chalkbrood, Sign::Afb, Sign::Sacbrood, Sign::Efb, Sign::Nosema, Sign::BroodDoubt, Sign::DeformedWings})
        cell.ticks.push_back({tallyWord(in, sign), tallyLetter(sign)});
    return cell;
}

} // namespace

QString tallyWord(const SheetInput& in, Sign sign) {
    switch (sign) {
    case Sign::Afb:
        return in.say("AFB");
    case Sign::Efb:
        return in.say("EFB");
    case Sign::BroodDoubt:
        return in.say("doubt");
    case Sign::Chalkbrood:
        return in.say("chalk");
    case Sign::Sacbrood:
        return in.say("sac");
    case Sign::Nosema:
        return in.say("nosema");
    case Sign::DeformedWings:
        break;
    }
    return in.say("wings");
}

QString tallyName(TallyColumn column) {
    static constexpr const char* kNames[] = {"above",   "below",  "upper above", "upper below",  "queen",  "brood",
                                             "checked", "signs",  "stores",      "upper stores", "supers", "weight",
                                             "mites",   "sample", "boxes",       "note"};
    return QString::fromLatin1(kNames[static_cast<size_t>(column)]);
}

TallyForm tallyForm(const SheetInput& in) {
    TallyForm form;
    addBees(in, form.first);
    form.first.push_back(queenCell(in));
    form.first.push_back({TallyColumn::Brood, in.say("brood"), in.say("frames")});
    form.first.push_back({TallyColumn::Checked, in.say("of these"), in.say("looked at")});
    form.second.push_back(signCell(in));
    form.second.push_back({TallyColumn::Stores, in.say("stores"), in.say("lower")});
    form.second.push_back({TallyColumn::UpperStores, in.say("stores"), in.say("upper"), {}, true});
    form.second.push_back({TallyColumn::Supers, in.say("honey"), in.say("boxes")});
    form.second.push_back({TallyColumn::Weight, in.say("weight"), unitSign(in.say.units().weight)});
    form.second.push_back({TallyColumn::Mites, in.say("mites"), in.say("in bees"), {}, false, TallyColumn::Sample});
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
