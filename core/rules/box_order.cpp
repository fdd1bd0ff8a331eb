#include "core/rules/box_order.h"

namespace core::rules {

namespace {

bool heavierOnTop(const DayView& view, ColonyIx c) {
    const ColonyFacts& f = view.of(c);
    return view.seasonsOf(c).strength && !view.held(c) && f.stores && f.upperStores && *f.stores > *f.upperStores;
}

bool reverse(const DayView& view, ColonyIx c) {
    const ColonyFacts& f = view.of(c);
    const auto onlyUnchecked = 1 << static_cast<int>(HoldKind::BroodNotChecked);
    const bool held = (view.heldAs[static_cast<size_t>(c.value)] & ~onlyUnchecked) != 0;
    return view.seasonsOf(c).reverse && !held && f.strength && f.upperBees && f.lowerBees == Quarters{0};
}

} // namespace

std::vector<BoxOrderAdvice> boxOrderOf(const DayView& view, ColonyIx c) {
    std::vector<BoxOrderAdvice> out;
    const ColonyFacts& f = view.of(c);
    if (f.boxes != 2) return out;
    if (heavierOnTop(view, c))
        out.push_back(
            {c, BoxAction::HeavierOnTop,
             QStringLiteral("The lower box holds %1 frames of stores, the upper %2; the winter cluster ends up in "
                            "the upper box.")
                 .arg(framesText(*f.stores), framesText(*f.upperStores))});
    if (reverse(view, c))
        out.push_back(
            {c, BoxAction::Reverse,
             QStringLiteral("All %1 frames of bees are in the upper box and none in the lower: with the full box "
                            "below, the queen finds room above her.")
                 .arg(framesText(*f.upperBees))});
    return out;
}

} // namespace core::rules
