#include "core/report/tally.h"

#include "core/report/fields.h"
#include "core/rules/work_order.h"

#include <utility>

namespace core::report {

namespace {

constexpr double kTallyMargin = 11; // mm

/// Those asked for that live in the yard, in the order given.
std::vector<ColonyIx> roundOf(const SheetInput& in) {
    std::vector<ColonyIx> walk;
    for (const ColonyId id : in.options.round)
        for (const rules::ColonyFacts& f : in.facts)
            if (f.yard == in.yard && in.s.colony(f.colony).id == id) walk.push_back(f.colony);
    return walk;
}

/// All living colonies of the yard, as one walks.
std::vector<ColonyIx> walkOf(const SheetInput& in) {
    if (!in.options.round.empty()) return roundOf(in);
    std::vector<ColonyIx> those;
    std::vector<MmPoint> stops;
    for (const rules::ColonyFacts& f : in.facts) {
        const SnapStay* stay = f.yard == in.yard ? in.s.placeOf(f.colony) : nullptr;
        if (!stay) continue;
        those.push_back(f.colony);
        stops.push_back(stay->at);
    }
    std::vector<ColonyIx> walk;
    for (const size_t at : rules::walkRound(in.s.yard(in.yard).gate, stops)) walk.push_back(those[at]);
    return walk;
}

} // namespace

Block dayLine(const SheetInput& in) {
    Block block;
    BlockPen pen(in.measure, block);
    const double words =
        pen.width(in.say("Day"), kLarge) + pen.width(in.say("Weather"), kLarge) + pen.width(in.say("People"), kLarge);
    const double lines = in.width - words - 3 * 2 - 2 * 6 - 1;
    block.height = fieldRows(pen, 0, 1.5, in.width,
                             {lineField(in.say("Day"), lines * 0.22), lineField(in.say("Weather"), lines * 0.34),
                              lineField(in.say("People"), lines * 0.44)});
    block.gapAfter = 0;
    return block;
}

PageSize tallySize(const WorksheetOptions& options) {
    PageSize size = pageSize(options.paper);
    size.margin = kTallyMargin;
    size.footDrop = 0;
    if (options.large)
        std::swap(size.width, size.height);
    else if (options.sheet == Sheet::Card)
        size.height /= 2;
    return size;
}

std::vector<Section> tallySections(const SheetInput& in) {
    const TallyForm form = tallyForm(in);
    Section rows;
    rows.note = in.say("In walking order. Quarter frames count. Where brood is not plainly healthy: close up, note it, "
                       "and clean hands and tools before the next hive.");
    if (!in.options.round.empty())
        rows.note += u' ' + in.say("Only hives whose brood is to be checked, those that are held last.");
    rows.head = tallyHead(in, form);
    for (const ColonyIx colony : walkOf(in)) rows.blocks.push_back(tallyRow(in, form, colony, true));
    Section day;
    day.blocks.push_back(dayLine(in));
    return {std::move(day), std::move(rows)};
}

} // namespace core::report
