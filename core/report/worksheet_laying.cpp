#include "core/report/fields.h"
#include "core/report/worksheet_part.h"
#include "core/rules/finding_words.h"

// Colonies with laying workers: a procedure of its own, on another day than unions, with what to mind. Common practice,
// no source.

namespace core::report {

namespace {

constexpr double kIndent = 8;
constexpr double kRemark = 90; // mm to write on

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
                   lineField(in.say("what was done:"), kRemark)});
    pen.stroke({0, y + 0.6}, {in.width, y + 0.6}, 0.2);
    block.height = y + 0.8;
    block.zone = QStringLiteral("laying workers %1").arg(in.name(apart.colony));
    block.zoneWidth = in.width;
    return block;
}

Block caution(const SheetInput& in, int number, const char* text) {
    Block block;
    BlockPen pen(in.measure, block);
    pen.line(0, 0, QStringLiteral("%1.").arg(number), kStrong);
    block.height = pen.paragraph(7, 0, in.width - 7, in.say(text), kLarge);
    block.gapAfter = 1.4;
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
    // clang-format off
    static constexpr const char* kCautions[] = {
        "Make sure first. A young queen too may lay several eggs in a cell for some days; a drone-layer has one in each. "
        "Look again after a week where you are not sure.",
        "Look through the brood for disease before anything else. Where it is not plainly healthy: stop, close up, note "
        "it; bees and combs stay where they are.",
        "Not worth saving late in the year or with few bees: then give it up, rather than weaken another.",
        "To give it up, shake it out on a mild day, far from its stand, when others fly well. Not before a weak colony, "
        "nor before one without a queen or with a young one; not where a held colony stands near by.",
        "Take its hive away the same hour, so that its bees beg their way in elsewhere and do not gather again.",
        "To save it in early summer: a comb with eggs and young larvae from a healthy colony that is not held, each week "
        "until it draws queen cells; mostly three. Each comb given is written into the book: holds go along it.",
        "Combs with its drone brood go to no other colony: cut or melt them.",
        "Write down what was seen and done. Only a queen, eggs or a virgin seen later lift this.",
    };
    // clang-format on
    int number = 0;
    for (const char* text : kCautions) section.blocks.push_back(caution(in, ++number, text));
    return section;
}

} // namespace core::report
