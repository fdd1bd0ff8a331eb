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
    return feedFor(c, wanted.value - f.gross->value * kDecagram, settings);
}

std::optional<Feed> feedOf(const DayView& view, const Union& united) {
    const ColonyFacts& moved = view.of(united.moved);
    const ColonyFacts& host = view.of(united.host);
    if (!view.seasonsOf(united.host).strength || !moved.gross || !host.gross) return std::nullopt;
    const Settings& settings = view.s.settings;
    const qint64 sum = (qint64(moved.gross->value) + host.gross->value) * kDecagram;
    const qint64 away =
        settings.floorLidKg.value + static_cast<qint64>(united.consolidate.size()) * settings.boxKg.value;
    return feedFor(united.host, settings.doubleKg.value - (sum - away), settings);
}

} // namespace core::rules
