#include "core/rules/feed.h"

#include "core/rules/calc/feeding.h"

namespace core::rules {

namespace {

// Weights in millionths of a kilogram, so that settings and scale readings add up exactly.
constexpr qint64 kDecagram = 10'000;
constexpr qint64 kTenth = 100'000;

std::optional<Feed> feedFor(ColonyIx c, qint64 shortBy, const Settings& settings) {
    if (shortBy <= 0) return std::nullopt;
    return Feed{c, (shortBy + kTenth / 2) / kTenth, calc::halfLitresFor(shortBy, settings.storesKgPerL), shortBy};
}

Reason whyFed(const DayView& view, const ColonyFacts& f, const char* wanted) {
    Reason why{"4.12"};
    why.southern = view.southern(f.colony);
    why.fact("weighs", *f.gross).fact("weighed", *f.weighed).fact("boxes", qint64(f.boxes));
    why.limit(wanted).limit("syrup.stores_kg_per_l").limit("weigh.max_age_days");
    return why.limit("season.fall_start").limit("season.fall_end");
}

bool left(const DayView& view, const ColonyFacts& f) {
    const bool noBees = !f.strength && f.noStrength == NoStrength::NoBees;
    return noBees || f.layingWorkers || view.heldAsKind(f.colony, HoldKind::AfbConfirmed) ||
           view.heldAsKind(f.colony, HoldKind::AfbSuspected);
}

} // namespace

std::optional<Feed> feedOf(const DayView& view, ColonyIx c) {
    const ColonyFacts& f = view.of(c);
    if (!view.seasonsOf(c).strength || !f.gross || left(view, f)) return std::nullopt;
    const Settings& settings = view.s.settings;
    const Millionths wanted = f.boxes == 2 ? settings.doubleKg : settings.singleKg;
    auto feed = feedFor(c, wanted.value - f.gross->value * kDecagram, settings);
    if (feed) feed->why = whyFed(view, f, f.boxes == 2 ? "stores.double_kg" : "stores.single_kg");
    return feed;
}

std::optional<Feed> feedOf(const DayView& view, const Union& united) {
    const ColonyFacts& moved = view.of(united.moved);
    const ColonyFacts& host = view.of(united.host);
    if (!view.seasonsOf(united.host).strength || !moved.gross || !host.gross) return std::nullopt;
    const Settings& settings = view.s.settings;
    const qint64 sum = (qint64(moved.gross->value) + host.gross->value) * kDecagram;
    const qint64 away =
        settings.floorLidKg.value + static_cast<qint64>(united.consolidate.size()) * settings.boxKg.value;
    auto feed = feedFor(united.host, settings.doubleKg.value - (sum - away), settings);
    if (!feed) return feed;
    feed->why = whyFed(view, host, "stores.double_kg");
    feed->why.fact("united with", united.moved).fact("weighs", *moved.gross).fact("weighed", *moved.weighed);
    feed->why.limit("tare.floor_lid_kg");
    if (!united.consolidate.empty())
        feed->why.fact("boxes taken away", qint64(united.consolidate.size())).limit("tare.box_kg");
    return feed;
}

} // namespace core::rules
