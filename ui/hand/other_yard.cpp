#include "ui/hand/other_yard.h"

#include "ui/start/new_hives.h"

#include <algorithm>

namespace ui::hand {

namespace {

/// What to add to each place so that all of them stand beside the rows of the yard.
core::MmPoint shiftOf(const desk::Desk& desk, core::YardId yard, const std::vector<plan::OnWay>& hives) {
    const auto fromX = [](const plan::OnWay& h) { return h.from.x; };
    const auto fromY = [](const plan::OnWay& h) { return h.from.y; };
    const core::MmPoint start = start::nextRowStart(desk, yard);
    const auto ix = desk.reading().find(yard);
    const core::MmPoint gate = ix ? desk.reading().snapshot.yard(*ix).gate : core::MmPoint{};
    const qint32 west = std::ranges::min_element(hives, {}, fromX)->from.x;
    const bool rowsGoSouth = start.y < gate.y;
    const qint32 edge = rowsGoSouth ? std::ranges::max_element(hives, {}, fromY)->from.y
                                    : std::ranges::min_element(hives, {}, fromY)->from.y;
    return {start.x - west, start.y - edge};
}

} // namespace

std::vector<core::edit::CarryTo> placesIn(const desk::Desk& desk, core::YardId yard,
                                          const std::vector<plan::OnWay>& hives) {
    std::vector<core::edit::CarryTo> out;
    if (hives.empty()) return out;
    if (hives.size() == 1)
        for (const plan::StandMark& stand : start::emptyStands(desk, yard))
            if (!start::tooNear(desk, yard, stand.at))
                return {{hives.front().colony, yard, stand.at, std::nullopt, desk.day()}};
    const core::MmPoint shift = shiftOf(desk, yard, hives);
    for (const plan::OnWay& hive : hives)
        out.push_back({hive.colony, yard, hive.from + shift, std::nullopt, desk.day()});
    return out;
}

} // namespace ui::hand
