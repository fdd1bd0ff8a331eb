#include "core/report/worksheet_part.h"
#include "core/rules/divide_dates.h"
#include "core/rules/divide_work.h"
#include "core/rules/finding_words.h"

#include <algorithm>

// Divides: how it is done and the days to look, once; then a strip each.

namespace core::report {

namespace {

constexpr double kLeft = 19; // of the words, right of the sign
constexpr double kInside = 4;

QString queensText(const SheetInput& in, const std::optional<DivideQueens>& queens) {
    if (!queens) return in.say("not chosen yet; the steps and days are those of queens that the bees raise");
    switch (*queens) {
    case DivideQueens::Cells:
        return in.say("a sealed queen cell for each new hive");
    case DivideQueens::Bought:
        return in.say("a bought queen for each new hive");
    case DivideQueens::Own:
        break;
    }
    return in.say("the bees of each new hive raise their own");
}

/// One hive becomes two: a square, and another that parts from it.
void sign(BlockPen& pen) {
    pen.frame({4.6, 6.4, 5, 6.4}, 0.7);
    pen.frame({11.4, 6.4, 5, 6.4}, 0.7);
    pen.stroke({9.6, 9.6}, {11.4, 9.6}, 0.7, {0.6, 0.6});
}

Block howBlock(const SheetInput& in, const std::optional<DivideQueens>& queens) {
    Block block;
    BlockPen pen(in.measure, block);
    double y = pen.paragraph(0, 0, in.width, queensText(in, queens), kLarge, in.say("Queens:"));
    int n = 0;
    for (const rules::Sentence& step : rules::divideSteps(queens.value_or(DivideQueens::Own))) {
        pen.line(0, y, QStringLiteral("%1.").arg(++n), kStrong);
        y = pen.paragraph(6, y, in.width - 6, in.say(rules::Sentences{step}), kText);
    }
    block.height = pen.paragraph(0, y + 0.8, in.width, in.say(rules::divideDriftWords()), kText);
    block.gapAfter = 3;
    return block;
}

Block looksBlock(const SheetInput& in, DivideQueens queens) {
    Block block;
    BlockPen pen(in.measure, block);
    double y = pen.line(0, 0, in.say("Look at the new hives"), kLabel);
    for (const rules::DivideDate& date : rules::divideDates(queens, in.plan.on)) {
        const bool look = date.what != rules::DivideCheckKind::Mated;
        if (look) pen.tick(0, y + 0.4, {});
        y = pen.paragraph(8, y, in.width - 8, in.say(rules::Sentences{sentenceOf(date)}), kText,
                          in.say.weekday(date.look) + u':') +
            0.8;
    }
    block.height = y;
    block.gapAfter = 3;
    return block;
}

QString placeText(const SheetInput& in, const rules::NewPlace& place, MmPoint mother) {
    const QString far = in.say.distance(mother, place.at);
    QString text =
        place.stand ? in.say("on stand %1, %2 away").arg(place.name, far) : in.say("on a new stand, %1 away").arg(far);
    if (place.nearHeld) text += QStringLiteral(". ") + in.say("A held colony is near: better carry it elsewhere.");
    return text;
}

/// A line a new hive: a box to tick, where it stands, and room for its label.
double newHives(const SheetInput& in, BlockPen& pen, double y, const rules::DivideWork& work) {
    constexpr double kLabelRoom = 42;
    const MmPoint mother = in.s.placeOf(work.divide.colony)->at;
    const double right = in.width - kInside;
    for (const rules::NewPlace& place : work.places) {
        pen.tick(kLeft, y, {});
        const QString label = in.say("label");
        const double at = right - kLabelRoom;
        pen.line(at - pen.width(label, kText) - 2, y + 0.8, label, kText);
        pen.stroke({at, y + kTickSide + 0.6}, {right, y + kTickSide + 0.6}, 0.3);
        const double wide = at - pen.width(label, kText) - 6 - kLeft - 8;
        y = std::max(pen.paragraph(kLeft + 8, y + 0.3, wide, placeText(in, place, mother), kLarge),
                     y + kTickSide + 1.2) +
            0.8;
    }
    return y;
}

Block divideStrip(const SheetInput& in, const rules::DivideWork& work) {
    Block block;
    BlockPen pen(in.measure, block);
    sign(pen);
    const rules::Divide& d = work.divide;
    const double wide = in.width - kLeft - kInside;
    double y =
        pen.paragraph(kLeft, 4.2, wide, in.say("%1: divide into %2").arg(in.name(d.colony)).arg(d.parts), kTitle);
    y = pen.paragraph(kLeft, y, wide, in.say(sentencesOf(in.s, d)), kText) + 1.2;
    y = newHives(in, pen, y, work) + 0.6;
    double x = kLeft;
    for (const char* word : {"done", "not done", "changed:"}) x = pen.tick(x, y, in.say(word)) + 7;
    const double line = y + kTickSide + 1.4;
    pen.stroke({x - 4, line}, {in.width - kInside, line}, 0.3);
    block.height = line + 3.4;
    block.zone = QStringLiteral("divide %1").arg(in.name(d.colony));
    block.zoneWidth = in.width;
    block.gapAfter = 3;
    pen.frame({0, 0, in.width, block.height}, 0.45);
    return block;
}

} // namespace

Section divideSection(const SheetInput& in, const WorksheetOptions& options) {
    Section section;
    section.heading = in.say("Divide");
    section.note = in.say("What a part needs is an assumption. Held colonies are never divided.");
    const auto works = rules::divideWork(in.s, in.plan, in.yard, options.stands);
    if (works.empty()) return section;
    section.blocks.push_back(howBlock(in, options.queens));
    for (const rules::DivideWork& work : works) section.blocks.push_back(divideStrip(in, work));
    section.blocks.push_back(looksBlock(in, options.queens.value_or(DivideQueens::Own)));
    return section;
}

} // namespace core::report
