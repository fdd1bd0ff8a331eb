#include "core/report/fields.h"
#include "core/report/worksheet_part.h"

#include <algorithm>

// Before the merge day: a walk along the hives of which something is missing for a good plan, with room to write it.

namespace core::report {

namespace {

constexpr double kIndent = 8;
constexpr double kFigure = 16; // mm to write a figure on

/// "5 frames of bees on 30 July", "queen: eggs on 30 July": what is known, so that a slip shows on the spot.
QStringList lastFigures(const SheetInput& in, const rules::ColonyFacts& f) {
    QStringList out;
    const auto on = [&](Day day) { return in.say.day(day, in.plan.on); };
    if (f.lastCount && f.counted) out << in.say("%1 of bees on %2").arg(in.say.frames(*f.lastCount), on(*f.counted));
    if (f.queenDay) out << in.say("queen: %1 on %2").arg(in.say.queenSeen(f.queenNoted), on(*f.queenDay));
    if (f.broodFrames && f.broodDay)
        out << in.say("%1 of brood on %2").arg(in.say.frames(Quarters{4 * *f.broodFrames}), on(*f.broodDay));
    if (const auto& weight = in.s.latestOf(f.colony).weight)
        out << in.say("%1 on %2").arg(in.say.shortWeight(weight->gross.value * 10'000LL), on(weight->day));
    return out;
}

void addCount(const SheetInput& in, int boxes, std::vector<Field>& fields) {
    fields.push_back(lineField(in.say("bees from above"), kFigure));
    fields.push_back(lineField(in.say("from below"), kFigure));
    if (boxes < 2) return;
    fields.push_back(lineField(in.say("upper box: from above"), kFigure));
    fields.push_back(lineField(in.say("from below"), kFigure));
}

void addQueen(const SheetInput& in, std::vector<Field>& fields) {
    fields.push_back(wordsField(in.say("Queen:")));
    for (const QueenSeen seen : {QueenSeen::Seen, QueenSeen::Eggs, QueenSeen::Virgin, QueenSeen::None,
                                 QueenSeen::DroneLayer, QueenSeen::LayingWorkers})
        fields.push_back(tickField(in.say.queenSeen(seen)));
}

void addAsk(const SheetInput& in, WalkAsk ask, int boxes, std::vector<Field>& fields) {
    switch (ask) {
    case WalkAsk::Count:
        return addCount(in, boxes, fields);
    case WalkAsk::BroodCheck:
        fields.push_back(lineField(in.say("brood frames looked through"), kFigure));
        fields.push_back(tickField(in.say("clean")));
        fields.push_back(lineField(in.say("signs"), 2 * kFigure));
        return;
    case WalkAsk::Queen:
        return addQueen(in, fields);
    case WalkAsk::Weight:
        fields.push_back(lineField(in.say("weight"), kFigure));
        return;
    case WalkAsk::Stores:
        fields.push_back(lineField(in.say("frames of stores"), kFigure));
        if (boxes > 1) fields.push_back(lineField(in.say("in the upper box"), kFigure));
        return;
    case WalkAsk::BroodFrames:
        fields.push_back(lineField(in.say("brood frames"), kFigure));
        return;
    }
}

Block walkBlock(const SheetInput& in, const WalkRow& row) {
    Block block;
    BlockPen pen(in.measure, block);
    const rules::ColonyFacts& f = in.of(row.colony);
    const double wide = in.width - kIndent;
    const SnapStay* stay = in.s.placeOf(row.colony);
    pen.tick(0, 0.8, {});
    double y = pen.paragraph(kIndent, 0, wide, in.name(row.colony), kLabel);
    if (stay) y = pen.paragraph(kIndent, y, wide, in.say("stand %1").arg(stay->standName), kText);
    if (const QStringList last = lastFigures(in, f); !last.isEmpty())
        y = pen.paragraph(kIndent, y, wide, last.join(QStringLiteral(" · ")) + u'.', kText, in.say("Last:"));
    if (!row.missing.empty()) y = pen.paragraph(kIndent, y, wide, in.say(row.missing), kText, in.say("Missing:"));
    std::vector<Field> figures, queen;
    for (const WalkAsk ask : row.asks) addAsk(in, ask, f.boxes, ask == WalkAsk::Queen ? queen : figures);
    if (!figures.empty()) y = fieldRows(pen, kIndent, y + 1.2, wide, figures);
    if (!queen.empty()) y = fieldRows(pen, kIndent, y + 1.2, wide, queen);
    pen.stroke({0, y + 0.6}, {in.width, y + 0.6}, 0.2);
    block.height = y + 0.8;
    block.gapAfter = 2;
    block.zone = QStringLiteral("walk %1").arg(in.name(row.colony));
    block.zoneWidth = in.width;
    return block;
}

} // namespace

Section walkSection(const SheetInput& in, const std::vector<WalkRow>& rows) {
    Section section;
    section.heading = in.say("What is missing for a good plan");
    section.note =
        in.say("In walking order. Quarter frames count. Where brood is not plainly healthy: close up, note it, "
               "and clean hands and tools before the next hive.");
    for (const WalkRow& row : rows)
        if (in.here(row.colony)) section.blocks.push_back(walkBlock(in, row));
    return section;
}

Section consolidateSection(const SheetInput& in) {
    Section section;
    section.heading = in.say("Bring down to one box, some days ahead");
    section.note = in.say("So that bees, brood and stores have settled in one box when the union is made.");
    for (const rules::Union& u : in.plan.unions) {
        if (u.yard != in.yard) continue;
        for (const ColonyIx c : u.consolidate) {
            Block block;
            BlockPen pen(in.measure, block);
            pen.tick(0, 0.8, {});
            double y = pen.line(kIndent, 0, in.name(c), kLabel);
            y = pen.paragraph(kIndent, y, in.width - kIndent,
                              in.say("%1 of bees, for union %2 with %3.")
                                  .arg(in.say.frames(*in.of(c).strength), QString::number(u.order),
                                       in.name(c == u.moved ? u.host : u.moved)),
                              kText);
            block.height = y;
            section.blocks.push_back(std::move(block));
        }
    }
    return section;
}

} // namespace core::report
