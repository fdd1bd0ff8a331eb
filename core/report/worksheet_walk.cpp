#include "core/report/fields.h"
#include "core/report/worksheet_part.h"
#include "core/rules/consolidation.h"
#include "core/rules/missing.h"

#include <set>

// Before the merge day: a walk along the hives of which something is missing for a good plan, with room to write it.

namespace core::report {

using rules::MissingKind;

namespace {

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

/// What a visit is to bring.
enum class Ask { Count, Brood, Check, Stores, Weight, Signs, Queen };

/// What answers a missing figure.
std::vector<Ask> asksOf(MissingKind kind) {
    switch (kind) {
    case MissingKind::Count:
    case MissingKind::CountOld:
    case MissingKind::NoBees:
    case MissingKind::CountBeforeTransfer:
        return {Ask::Count};
    case MissingKind::BroodCheck:
        return {Ask::Brood, Ask::Check};
    case MissingKind::Queen:
        return {Ask::Queen};
    case MissingKind::BroodFrames:
        return {Ask::Brood};
    case MissingKind::Room:
        return {Ask::Brood, Ask::Stores};
    case MissingKind::Weight:
        return {Ask::Weight};
    case MissingKind::Signs:
        return {Ask::Signs};
    }
    return {};
}

void addFields(const SheetInput& in, Ask ask, int boxes, std::vector<Field>& fields) {
    switch (ask) {
    case Ask::Count:
        return addCount(in, boxes, fields);
    case Ask::Brood:
        fields.push_back(lineField(in.say("brood frames"), kFigure));
        return;
    case Ask::Check:
        fields.push_back(lineField(in.say("looked through"), kFigure));
        fields.push_back(tickField(in.say("clean")));
        fields.push_back(lineField(in.say("signs"), 2 * kFigure));
        return;
    case Ask::Stores:
        fields.push_back(lineField(in.say("frames of stores"), kFigure));
        if (boxes > 1) fields.push_back(lineField(in.say("in the upper box"), kFigure));
        return;
    case Ask::Weight:
        fields.push_back(lineField(in.say("weight without honey boxes"), kFigure));
        return;
    case Ask::Signs:
        fields.push_back(lineField(in.say("signs now"), 2 * kFigure));
        return;
    case Ask::Queen:
        return addQueen(in, fields);
    }
}

Block walkBlock(const SheetInput& in, const rules::ColonyMissing& row) {
    Block block;
    BlockPen pen(in.measure, block);
    const rules::ColonyFacts& f = in.of(row.colony);
    const double wide = in.width - kIndent;
    pen.tick(0, 0.8, {});
    double y = pen.paragraph(kIndent, 0, wide, in.name(row.colony), kLabel);
    if (const SnapStay* stay = in.s.placeOf(row.colony))
        y = pen.paragraph(kIndent, y, wide, in.say("stand %1").arg(stay->standName), kText);
    if (const QStringList last = lastFigures(in, f); !last.isEmpty())
        y = pen.paragraph(kIndent, y, wide, last.join(QStringLiteral(" · ")) + u'.', kText, in.say("Last:"));
    rules::Sentences why;
    std::set<Ask> asks;
    for (const rules::Missing& missing : row.what) {
        why.push_back(sentenceOf(in.s, missing));
        for (const Ask ask : asksOf(missing.kind)) asks.insert(ask);
    }
    y = pen.paragraph(kIndent, y, wide, in.say(why), kText, in.say("Missing:"));
    std::vector<Field> figures, queen;
    for (const Ask ask : asks) addFields(in, ask, f.boxes, ask == Ask::Queen ? queen : figures);
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

Section walkSection(const SheetInput& in) {
    Section section;
    section.heading = in.say("What is missing for a good plan");
    section.note =
        in.say("In walking order. Quarter frames count. Where brood is not plainly healthy: close up, note it, "
               "and clean hands and tools before the next hive.");
    const rules::DayView view = rules::viewOf(in.s, in.facts, in.plan.holds);
    for (const rules::ColonyMissing& row : rules::missingIn(view, in.yard))
        section.blocks.push_back(walkBlock(in, row));
    return section;
}

Section consolidateSection(const SheetInput& in) {
    Section section;
    section.heading = in.say("Bring down to one box, some days ahead");
    section.note = in.say("So that bees, brood and stores have settled in one box when the union is made.");
    for (const rules::Consolidation& c : rules::consolidations(in.s, in.facts, in.plan, in.yard)) {
        Block block;
        BlockPen pen(in.measure, block);
        pen.tick(0, 0.8, {});
        double y = pen.paragraph(kIndent, 0, in.width - kIndent, in.name(c.colony), kLabel);
        const QString what = in.say("%1 of bees, for union %2 with %3.")
                                 .arg(in.say.frames(c.all), QString::number(c.order), in.name(c.partner));
        block.height = pen.paragraph(kIndent, y, in.width - kIndent, what + u' ' + in.say(sentencesOf(c)), kText);
        section.blocks.push_back(std::move(block));
    }
    return section;
}

} // namespace core::report
