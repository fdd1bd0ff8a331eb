#include "core/report/fields.h"
#include "core/report/worksheet_part.h"
#include "core/rules/finding_words.h"
#include "core/rules/laying_workers.h"

// Colonies with laying workers: a procedure of its own, on another day than unions, with what to mind. Common practice,
// no source.

namespace core::report {

namespace {

constexpr double kDoneLine = 90; // mm to write on

Block colonyBlock(const SheetInput& in, const rules::Separate& apart) {
    Block block;
    BlockPen pen(in.measure, block);
    const double wide = in.width - kIndent;
    pen.tick(0, 0.8, {});
    double y = pen.paragraph(kIndent, 0, wide, in.name(apart.colony), kLabel);
    y = pen.paragraph(kIndent, y, wide, in.say(sentencesOf(in.s, apart)), kText);
    y = fieldRows(pen, kIndent, y + 1.2, wide,
                  {tickField(in.say("several eggs in a cell")), tickField(in.say("drone brood in workers' cells")),
                   tickField(in.say("eggs, one in a cell: a queen")), tickField(in.say("brood not plainly healthy")),
                   lineField(in.say("what was done:"), kDoneLine)});
    pen.stroke({0, y + 0.6}, {in.width, y + 0.6}, 0.2);
    block.height = y + 0.8;
    block.zone = QStringLiteral("laying workers %1").arg(in.name(apart.colony));
    block.zoneWidth = in.width;
    return block;
}

Block partOf(const SheetInput& in, const rules::Procedure& part) {
    Block block;
    BlockPen pen(in.measure, block);
    double y = pen.paragraph(0, 0, in.width, in.say(part.heading), kLabel);
    int number = 0;
    for (const rules::Sentence& sentence : part.sentences) {
        pen.line(0, y, QStringLiteral("%1.").arg(++number), kStrong);
        y = pen.paragraph(7, y, in.width - 7, in.say(rules::Sentences{sentence}), kLarge) + 0.8;
    }
    block.height = y;
    block.gapAfter = 3;
    return block;
}

} // namespace

Section layingWorkersSection(const SheetInput& in) {
    Section section;
    section.heading = in.say("Never in a union");
    section.note =
        in.say("Bees with laying workers kill a queen that comes to them. Do this on another day than unions.");
    for (const rules::Separate& apart : in.plan.separate)
        if (in.here(apart.colony)) section.blocks.push_back(colonyBlock(in, apart));
    if (section.blocks.empty()) return section;
    for (const rules::Procedure& part : rules::layingWorkerProcedure()) section.blocks.push_back(partOf(in, part));
    return section;
}

} // namespace core::report
