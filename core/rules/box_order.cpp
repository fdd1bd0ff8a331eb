#include "core/rules/box_order.h"

#include "core/rules/limits.h"

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

const char kHeavier[] =
    "The lower box holds %1 frames of stores, the upper %2, noted on %3 (%4 at most count); the winter "
    "cluster ends up in the upper box. Advised from %5 to %6.";
const char kReverse[] =
    "All %1 frames of bees are in the upper box and none in the lower: with the full box below, the "
    "queen finds room above her. Advised from %2 to %3.";

BoxOrderAdvice heavierAdvice(const DayView& view, const ColonyFacts& f) {
    Reason why{"4.11"};
    why.southern = view.southern(f.colony);
    why.fact("stores below", *f.stores).fact("stores above", *f.upperStores).fact("noted", *f.storesDay);
    why.limit("season.fall_start").limit("season.fall_end").limit("weigh.max_age_days");
    const auto shown = [&](const char* limit) { return limitText(view.s.settings, limit, why.southern); };
    QString because = filled(QString::fromUtf8(kHeavier),
                             {framesText(*f.stores), framesText(*f.upperStores), isoText(*f.storesDay),
                              shown("weigh.max_age_days"), shown("season.fall_start"), shown("season.fall_end")});
    return {f.colony, BoxAction::HeavierOnTop, std::move(because), std::move(why)};
}

BoxOrderAdvice reverseAdvice(const DayView& view, const ColonyFacts& f) {
    Reason why{"4.11"};
    why.southern = view.southern(f.colony);
    why.fact("bees above", *f.upperBees).fact("counted", *f.counted);
    why.limit("4.11 reverse_from").limit("4.11 reverse_to");
    QString because = filled(QString::fromUtf8(kReverse),
                             {framesText(*f.upperBees), limitText(view.s.settings, "4.11 reverse_from", why.southern),
                              limitText(view.s.settings, "4.11 reverse_to", why.southern)});
    return {f.colony, BoxAction::Reverse, std::move(because), std::move(why)};
}

} // namespace

std::vector<BoxOrderAdvice> boxOrderOf(const DayView& view, ColonyIx c) {
    std::vector<BoxOrderAdvice> out;
    const ColonyFacts& f = view.of(c);
    if (f.boxes != 2) return out;
    if (heavierOnTop(view, c)) out.push_back(heavierAdvice(view, f));
    if (reverse(view, c)) out.push_back(reverseAdvice(view, f));
    return out;
}

} // namespace core::rules
