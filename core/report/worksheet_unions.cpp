#include "core/report/worksheet_part.h"

#include <algorithm>

// A strip a union, and a lower one a shake-out: what to do, boxes to tick, a line to write on.

namespace core::report {

namespace {

constexpr double kLeft = 19; // of the words, right of the number
constexpr double kInside = 4;
constexpr qsizetype kMostCautionLines = 6;

void number(BlockPen& pen, const QString& text) {
    CircleMark circle;
    circle.centre = {10, 9.5};
    circle.radius = 5.6;
    circle.lineWidth = 0.7;
    pen.add(circle);
    pen.line(10, 9.5 - lineHeight(16) / 2 + 0.3, text, {16, true, Ink::Black}, Align::Centre);
}

/// Names as large as fit on one line, else 14 pt and wrapped.
double title(BlockPen& pen, double x, double y, double width, const QString& text) {
    for (double size = kTitle.pointSize; size > kLabel.pointSize; size -= 2)
        if (pen.width(text, {size, true, Ink::Black}) <= width) return pen.line(x, y, text, {size, true, Ink::Black});
    return pen.paragraph(x, y, width, text, kLabel);
}

/// How wide the words may be at a height: the drawing stands to their right, down to `free`.
struct Room {
    double wide;
    double narrow = 0;
    double free = 0;
    double at(double y) const { return y < free ? narrow : wide; }
};

double numbered(BlockPen& pen, double x, double y, const Room& room, const QStringList& steps) {
    for (qsizetype i = 0; i < steps.size(); ++i) {
        pen.line(x, y, QStringLiteral("%1.").arg(i + 1), kStrong);
        y = pen.paragraph(x + 6, y, room.at(y) - 6, steps[i], kText);
    }
    return y;
}

struct Column {
    double x, y, width;
};

double cautions(const SheetInput& in, BlockPen& pen, const Column& at, const std::vector<rules::Caution>& list,
                const std::vector<ColonyIx>& colonies, qsizetype mostLines = kMostCautionLines) {
    const double x = at.x;
    const double width = at.width;
    double y = at.y;
    for (const rules::Caution& c : list) {
        PathMark sign;
        const double top = y + 0.9;
        sign.points = {{x + 1.9, top}, {x + 3.8, top + 3.3}, {x, top + 3.3}};
        sign.closed = true;
        sign.lineWidth = 0.5;
        pen.add(sign);
        QString text = cautionText(in, c, colonies);
        const QStringList lines = wrapped(in.measure, text, kText, width - 6, width - 6);
        if (mostLines == 0) text.clear();
        if (lines.size() > mostLines && mostLines > 0) text = lines.mid(0, mostLines).join(u' ') + QStringLiteral(" …");
        y = pen.paragraph(x + 6, y, width - 6, text, kText, in.say.cautionTitle(c.kind) + u'.');
    }
    return y;
}

/// Boxes to tick and a line to write on, across the strip. Returns the y below.
double outcome(const SheetInput& in, BlockPen& pen, double x, double y) {
    for (const char* word : {"done", "not done", "changed:"}) x = pen.tick(x, y, in.say(word)) + 7;
    pen.stroke({x - 4, y + kTickSide + 1.4}, {in.width - kInside, y + kTickSide + 1.4}, 0.3);
    return y + kTickSide + 1.4;
}

void closeStrip(const SheetInput& in, BlockPen& pen, Block& block, double bottom, const QString& zone) {
    block.height = bottom + 3.4;
    block.zone = zone;
    block.zoneWidth = in.width;
    block.gapAfter = 3;
    pen.frame({0, 0, in.width, block.height}, 0.45);
}

/// Where the parts of a strip stand: the words beside the drawing of the boxes, and what runs across below it.
struct Shape {
    bool narrow; ///< large print: the head runs across above the drawing, the words begin at the strip's edge
    double left, beside, across;
};

Shape shapeOf(const SheetInput& in) {
    constexpr double kNarrow = 150;
    const bool narrow = in.width < kNarrow;
    const double left = narrow ? kInside + 1 : kLeft;
    return {narrow, left, in.width - left - kStackWidth - kInside - 4, in.width - left - kInside};
}

/// Who goes to whom in large type; how far and what it makes beside it, or below where the names are long.
double head(const SheetInput& in, const rules::Union& u, BlockPen& pen, double width) {
    const QString names = QStringLiteral("%1 → %2").arg(in.name(u.moved), in.name(u.host));
    const QString carry = in.say("carry %1 to stand %2").arg(in.say.distance(u.from, u.to), u.stand);
    const QString sum =
        in.say("%1 + %2 = %3 frames").arg(framesText(u.movedFrames), framesText(u.hostFrames), framesText(u.frames));
    const double right = kLeft + std::max(pen.width(names, kTitle) + 6, 36.0);
    const double room = kLeft + width - right;
    if (std::max(pen.width(carry, kLarge), pen.width(sum, kLarge)) <= room) {
        pen.line(kLeft, 4.2, names, kTitle);
        return pen.line(right, pen.line(right, 4.4, carry, kLarge), sum, kLarge) + 1;
    }
    const double y = title(pen, kLeft, 4.2, width, names);
    return pen.paragraph(kLeft, pen.paragraph(kLeft, y, width, carry, kLarge), width, sum, kLarge);
}

/// Queen, what there is to lift, and whether somebody asked for it.
double besideDrawing(const SheetInput& in, const rules::Union& u, BlockPen& pen, const Shape& shape, double y) {
    const ColonyIx other = u.queen == rules::QueenPlan::KeepMoved ? u.host : u.moved;
    const bool droneLayer = in.of(other).queen == QueenSeen::DroneLayer;
    y = pen.paragraph(shape.left, y, shape.beside,
                      in.say.queen(u.queen, in.briefly(u.moved), in.briefly(u.host), droneLayer), kLarge,
                      in.say("Queen:"));
    y = pen.paragraph(shape.left, y, shape.beside, liftText(in, u), kText, in.say("To lift:"));
    if (u.pinned) y = pen.paragraph(shape.left, y, shape.beside, in.say("This pair was asked for."), kText);
    return y;
}

/// `cautionLines`: at most so many of each caution.
Block unionStrip(const SheetInput& in, const rules::Union& u, qsizetype cautionLines) {
    Block block;
    BlockPen pen(in.measure, block);
    number(pen, QString::number(u.order));
    const Shape shape = shapeOf(in);
    double y = head(in, u, pen, shape.narrow ? in.width - kLeft - kInside : shape.beside);
    if (shape.narrow) y = std::max(y, 16.5);
    const double stack = stackDrawing(in, u, pen, in.width - kStackWidth - 1, shape.narrow ? y + 0.6 : 4.6);
    y = besideDrawing(in, u, pen, shape, y);
    y = numbered(pen, shape.left, y + 1, {shape.across, shape.beside, stack}, unionSteps(in, u)) + 0.8;
    y = std::max(y, stack);
    y = cautions(in, pen, {shape.left, y, shape.across}, u.cautions, {u.moved, u.host}, cautionLines) + 1.8;
    closeStrip(in, pen, block, outcome(in, pen, shape.left, y), QStringLiteral("union %1").arg(u.order));
    return block;
}

/// Whole on one page, with its heading: where there is much to mind, that is said more briefly.
Block fittingStrip(const SheetInput& in, const rules::Union& u) {
    constexpr double kHeadings = 9;
    for (qsizetype lines = kMostCautionLines; lines > 0; --lines)
        if (Block block = unionStrip(in, u, lines); block.height + kHeadings <= in.height) return block;
    return unionStrip(in, u, 0);
}

/// The colony and its host; where that is a union, both its colonies.
std::vector<ColonyIx> takingPart(const SheetInput& in, const rules::ShakeOut& shaken) {
    std::vector<ColonyIx> out{shaken.colony, shaken.into};
    for (const rules::Union& u : in.plan.unions)
        if (shaken.intoUnion && u.host == shaken.into) out.push_back(u.moved);
    return out;
}

Block shakeOutStrip(const SheetInput& in, const rules::ShakeOut& shaken) {
    Block block;
    BlockPen pen(in.measure, block);
    pen.stroke({5, 9.5}, {14, 9.5}, 0.9, {0.1, 1.7});
    PathMark head;
    head.points = {{11.6, 7.2}, {14.6, 9.5}, {11.6, 11.8}};
    head.lineWidth = 0.7;
    pen.add(head);
    const Shape shape = shapeOf(in);
    const double wide = in.width - kLeft - kInside;
    double y =
        title(pen, kLeft, 4.2, wide, QStringLiteral("%1 → %2").arg(in.name(shaken.colony), in.name(shaken.into)));
    y = pen.paragraph(
        kLeft, y, wide,
        in.say("%1, carried %2").arg(in.say.frames(shaken.frames), in.say.distance(shaken.from, shaken.to)), kLarge);
    if (shape.narrow) y = std::max(y, 14.0);
    y = numbered(pen, shape.left, y + 0.6, {shape.across}, shakeOutSteps(in, shaken)) + 0.8;
    y = cautions(in, pen, {shape.left, y, shape.across}, shaken.cautions, takingPart(in, shaken)) + 1.8;
    closeStrip(in, pen, block, outcome(in, pen, shape.left, y),
               QStringLiteral("shake-out %1").arg(in.name(shaken.colony)));
    return block;
}

} // namespace

Section unionSection(const SheetInput& in) {
    Section section;
    section.heading = in.say("Unite, in this order");
    section.note = in.say("Thick lines: combs with bees. Small squares: combs of stores.");
    section.note += u' ' + in.say("Look again on %1.").arg(in.say.weekday(in.plan.on + in.s.settings.followUnionDays));
    for (const rules::Union& u : in.plan.unions)
        if (u.yard == in.yard) section.blocks.push_back(fittingStrip(in, u));
    return section;
}

Section shakeOutSection(const SheetInput& in) {
    Section section;
    section.heading = in.say("Shake out");
    for (const rules::ShakeOut& shaken : in.plan.shakeOuts)
        if (shaken.yard == in.yard) section.blocks.push_back(shakeOutStrip(in, shaken));
    return section;
}

} // namespace core::report
