#include "core/report/worksheet_part.h"

#include <algorithm>
#include <limits>

// Room for the yard's drawing: as high as the ground's shape asks for, a page for many hives.

namespace core::report {

namespace {

constexpr double kMargin = 15;       // mm around the ground, for labels
constexpr double kMostPerMetre = 29; // mm on paper
constexpr size_t kWholePage = 60;    // more hives than this have a page to themselves

struct Ground {
    double left = std::numeric_limits<double>::max(), right = std::numeric_limits<double>::lowest();
    double top = left, bottom = right;
    void add(MmPoint at) {
        left = std::min(left, at.x / 1000.0);
        right = std::max(right, at.x / 1000.0);
        top = std::min(top, -at.y / 1000.0);
        bottom = std::max(bottom, -at.y / 1000.0);
    }
    double width() const { return right - left; }
    double height() const { return bottom - top; }
};

size_t addHives(const SheetInput& in, Ground& ground) {
    size_t hives = 0;
    for (const rules::ColonyFacts& f : in.facts) {
        const SnapStay* stay = f.yard == in.yard ? in.s.placeOf(f.colony) : nullptr;
        if (!stay) continue;
        ground.add(stay->at);
        ++hives;
    }
    return hives;
}

/// Arcs bow out above and below a row, the longer ones further.
double arcRoom(const SheetInput& in, double mmPerMetre) {
    double longest = 0;
    for (const rules::Union& u : in.plan.unions)
        if (u.yard == in.yard) longest = std::max(longest, static_cast<double>(u.carryTenths) / 10);
    return 8 + std::min(0.3 * longest * mmPerMetre, 45.0);
}

Block drawingBlock(const SheetInput& in, const Ground& shown, double height) {
    Block block;
    block.height = height;
    block.gapAfter = 4;
    block.zone = QStringLiteral("drawing");
    block.zoneWidth = in.width;
    YardMark mark;
    mark.area = {0, 0, in.width, height};
    mark.ground = {shown.left, shown.top, shown.width(), shown.height()};
    block.marks.push_back(mark);
    BlockPen(in.measure, block).frame(mark.area, 0.35);
    return block;
}

/// With the gate, unless it lies so far away that the hives would be small.
Ground withGate(const SheetInput& in, const Ground& hives) {
    Ground all = hives;
    all.add(in.s.yard(in.yard).gate);
    const double before = std::max({hives.width(), hives.height(), 4.0});
    return std::max(all.width(), all.height()) <= 1.6 * before ? all : hives;
}

double mostTall(size_t hives, double pageRoom) {
    if (hives > kWholePage) return pageRoom;
    return std::min(pageRoom, hives <= 15 ? 125.0 : hives <= 36 ? 165.0 : 200.0);
}

} // namespace

Section drawingSection(const SheetInput& in, double pageRoom) {
    Section section;
    Ground ground;
    const size_t hives = addHives(in, ground);
    if (hives == 0) return section;
    const Ground shown = withGate(in, ground);
    const double across = std::max(shown.width(), 0.8);
    const double down = std::max(shown.height(), 0.8);
    const double scale = std::min((in.width - 2 * kMargin) / across, kMostPerMetre);
    const double most = mostTall(hives, pageRoom);
    const double wanted = hives > kWholePage ? most : std::max(down * scale + 2 * kMargin + arcRoom(in, scale), 65.0);
    const auto block = [in, shown](double height) { return drawingBlock(in, shown, height); };
    section.note = in.say("Hatched: held · number: union · dotted: shake-out · L: laying workers · ?: not counted");
    section.blocks.push_back(block(std::min(wanted, most)));
    section.ownPage = hives > kWholePage;
    section.stretch = std::max(0.0, wanted - most);
    section.resized = block;
    return section;
}

} // namespace core::report
