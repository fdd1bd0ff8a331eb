#include "core/report/worksheet_part.h"
#include "core/rules/calc/syrup.h"
#include "core/rules/kit_to_load.h"

#include <cmath>

// What to load before leaving, what comes free, and how to stay whole: design of the paper's last part.

namespace core::report {

namespace {

Block tickLine(const SheetInput& in, const QString& text) {
    Block block;
    BlockPen pen(in.measure, block);
    pen.tick(0, 0, {});
    block.height = std::max(kTickSide, pen.paragraph(kTickSide + 3, 0, in.width - kTickSide - 3, text, kLarge));
    block.gapAfter = 1.4;
    return block;
}

/// Two parts of sugar to one of water, by mass; to a tenth, rounded up.
QString syrupText(const SheetInput& in, qint64 halfLitres) {
    const rules::calc::Syrup syrup = rules::calc::syrupOf({2, 1});
    const double sugarKg = static_cast<double>(halfLitres) / 2 * syrup.sugarKgPerL.value_or(0);
    const ShownUnits& units = in.say.units();
    const auto tenths = [&](double kg) {
        const double tenth = std::ceil(kg / kilogramsIn(units.weight) * 10) / 10;
        return QString::number(tenth, 'f', 1) + u' ' + unitSign(units.weight);
    };
    const QString litres = decimalText(feedTenths(halfLitres, units.volume), 1) + u' ' + unitSign(units.volume);
    return in.say("syrup: %1 in all, of %2 of sugar and %3 of water").arg(litres, tenths(sugarKg), tenths(sugarKg / 2));
}

Block care(const SheetInput& in, const char* lead, const char* text, const QStringList& with = {}) {
    Block block;
    BlockPen pen(in.measure, block);
    QString said = in.say(text);
    for (const QString& part : with) said = said.arg(part);
    block.height = pen.paragraph(0, 0, in.width, said, kText, in.say(lead));
    block.gapAfter = 1;
    return block;
}

} // namespace

Section kitSection(const SheetInput& in) {
    Section section;
    section.heading = in.say("Kit");
    const rules::KitToLoad kit = rules::kitToLoad(in.s, in.facts, in.plan, in.yard);
    const auto queens = static_cast<int>(kit.of(rules::KitThing::QueenCages));
    const qint64 halfLitres = kit.of(rules::KitThing::SyrupHalfLitres);
    const auto add = [&](const QString& text) { section.blocks.push_back(tickLine(in, text)); };
    if (kit.unions > 0) {
        add(in.say.count(kit.unions, "1 sheet of newspaper", "%1 sheets of newspaper, one a union"));
        add(in.say.count(kit.unions, "1 strap for the hive that is carried",
                         "straps for %1 hives that are carried, and a barrow or a second pair of hands"));
    }
    if (queens > 0) add(in.say.count(queens, "a cage: 1 queen is to be removed", "cages: %1 queens are to be removed"));
    if (kit.parts > 0)
        add(in.say.count(kit.parts, "1 hive for what is divided off: floor, box with frames, inner cover, lid",
                         "%1 hives for what is divided off: floors, boxes with frames, inner covers, lids"));
    if (kit.carried + kit.parts > 0) add(in.say("smoker with fuel, water, hive tool, brush, pencil, spare gloves"));
    if (kit.carried > 0)
        add(in.say("comes free: lids %1, floors %1, boxes %2")
                .arg(QString::number(kit.carried), QString::number(kit.freed.boxesInAll())));
    if (halfLitres > 0) add(syrupText(in, halfLitres));
    return section;
}

Section careSection(const SheetInput& in) {
    Section section;
    section.heading = in.say("Take care");
    section.blocks = {
        care(in, "Lifting.",
             "A full box can pass %3 %4: two people or a barrow. Your local rules for lifting by hand decide. To "
             "lift: the hive that is carried, with floor and lid, and the other's box, by your weights and the "
             "tares of your settings (an assumption). Over %1, %2, %3 %4: where common guidance (%1 and %3: from "
             "memory) says to stop and think, for one person at best; none of these is a safe weight.",
             {in.say.wholeWeight(16), in.say.wholeWeight(23), in.say.wholeWeight(25), unitSign(in.say.units().weight)}),
        care(in, "Stings.",
             "Never work alone. Keep the emergency number at hand, and adrenaline where it is prescribed."),
        care(in, "Smoke.", "Mind dry grass; keep water by the smoker, and put it out before you leave."),
        care(in, "Robbing.", "Keep kit and combs closed, spill no syrup, work fast; reduce entrances."),
        care(in, "Medicines.", "The label and the veterinarian decide."),
        care(in, "Foulbrood.",
             "It is notifiable nearly everywhere. Sunken, perforated or smelling brood: stop, close up, clean tools "
             "and hands, call the inspector."),
        care(in, "This paper advises.",
             "Apiary law, inspectors, veterinarians and labels decide. Which colonies to unite was reckoned with value "
             "tables that are an assumption, not from your own winters."),
    };
    return section;
}

} // namespace core::report
