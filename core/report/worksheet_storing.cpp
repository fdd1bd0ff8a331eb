#include "core/report/fields.h"
#include "core/report/worksheet_part.h"

#include <array>

// The kit that the day makes free: whose it was, and how it is put away so that nothing is lost, robbed or passed on.

namespace core::report {

namespace {

constexpr double kWhere = 34; // mm to write on

/// Combs of one colony; floors and lids of all together.
struct Freed {
    QString whose;
    QString what;
    QString zone;
};

void addBoxes(const SheetInput& in, ColonyIx c, int boxes, std::vector<Freed>& out) {
    out.push_back({in.name(c), in.say.count(boxes, "1 box with its combs", "%1 boxes with their combs"),
                   QStringLiteral("freed %1").arg(in.name(c))});
}

std::vector<Freed> freedHere(const SheetInput& in) {
    std::vector<Freed> out;
    QStringList bare;
    for (const rules::Union& u : in.plan.unions) {
        if (u.yard != in.yard) continue;
        bare << in.name(u.moved);
        for (const ColonyIx c : u.consolidate) addBoxes(in, c, 1, out);
    }
    for (const rules::ShakeOut& shaken : in.plan.shakeOuts) {
        if (shaken.yard != in.yard) continue;
        bare << in.name(shaken.colony);
        addBoxes(in, shaken.colony, in.of(shaken.colony).boxes, out);
    }
    if (!bare.isEmpty())
        out.insert(out.begin(), {bare.join(QStringLiteral(", ")),
                                 in.say.count(static_cast<int>(bare.size()), "floor, lid and inner cover",
                                              "%1 floors, lids and inner covers"),
                                 QStringLiteral("freed floors")});
    return out;
}

Block freedBlock(const SheetInput& in, const Freed& freed) {
    Block block;
    BlockPen pen(in.measure, block);
    const double wide = in.width - kIndent;
    double y = pen.paragraph(kIndent, 0, wide, freed.what, kLarge, freed.whose + u':');
    pen.tick(0, 0.2, {});
    y = fieldRows(pen, kIndent, y + 0.8, wide,
                  {tickField(in.say("scraped")), tickField(in.say("marked")), tickField(in.say("closed")),
                   lineField(in.say("stands in"), kWhere)});
    block.height = y;
    block.gapAfter = 1;
    block.zone = freed.zone;
    block.zoneWidth = in.width;
    return block;
}

} // namespace

Section storingSection(const SheetInput& in) {
    Section section;
    section.heading = in.say("Store what comes free");
    for (const Freed& freed : freedHere(in)) section.blocks.push_back(freedBlock(in, freed));
    if (section.blocks.empty()) return section;
    // common practice, no source
    const std::array<QString, 6> order{
        in.say("Nothing of a held colony comes into this pile: its kit stays with it."),
        in.say("Close each box bee-tight before the next hive is opened: open combs start robbing."),
        in.say(
            "Mark each part with the colony and the day. Should that colony's bees turn out sick, you find it again."),
        in.say("Sort combs: stores for feeding, drawn and clean for spring, old or with dead brood to melt."),
        in.say("Scrape floors and lids, and let them dry."),
        in.say("Combs where it is cold, airy and light, against wax moth; all of it mouse-tight. Nothing against moths "
               "but what its label allows."),
    };
    for (const QString& line : order) {
        Block block;
        BlockPen pen(in.measure, block);
        pen.line(0, 0, QStringLiteral("–"), kText);
        block.height = pen.paragraph(4, 0, in.width - 4, line, kText);
        block.gapAfter = 0.6;
        section.blocks.push_back(std::move(block));
    }
    return section;
}

} // namespace core::report
