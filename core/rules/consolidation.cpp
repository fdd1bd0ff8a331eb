#include "core/rules/consolidation.h"

namespace core::rules {

namespace {

constexpr int kQuartersOfBrood = 4;

std::optional<Quarters> combOf(const SnapLatest& latest) {
    const auto& count = latest.count;
    if (!count || !count->broodFrames || !count->stores || !count->upperStores) return std::nullopt;
    return Quarters{kQuartersOfBrood * *count->broodFrames} + *count->stores + *count->upperStores;
}

} // namespace

std::vector<Consolidation> consolidations(const Snapshot& s, const std::vector<ColonyFacts>& facts, const Plan& plan,
                                          YardIx yard) {
    std::vector<Consolidation> out;
    for (const Union& u : plan.unions) {
        if (u.yard != yard) continue;
        for (const ColonyIx c : u.consolidate) {
            const ColonyFacts& f = facts[static_cast<size_t>(c.value)];
            Consolidation one{c,
                              c == u.moved ? u.host : u.moved,
                              u.order,
                              true,
                              {},
                              f.strength.value_or(Quarters{}),
                              combOf(s.latestOf(c)),
                              s.boxKindOf(c).frames};
            const Quarters lower = f.lowerBees.value_or(Quarters{});
            const Quarters upper = f.upperBees.value_or(Quarters{});
            one.keepUpper = upper >= lower;
            one.kept = one.keepUpper ? upper : lower;
            out.push_back(one);
        }
    }
    return out;
}

Sentences sentencesOf(const Consolidation& c) {
    const QStringList bees{framesText(c.kept), framesText(c.all)};
    Sentences all;
    if (c.keepUpper)
        all.push_back({"Keep the upper box: %1 of %2 frames of bees are there. Hang brood and stores of the lower one "
                       "into it.",
                       bees});
    else
        all.push_back({"Keep the lower box: %1 of %2 frames of bees are there. Hang brood and stores of the upper one "
                       "into it.",
                       bees});
    if (c.comb)
        all.push_back({"Brood and stores fill %1 of %2 frames.", {framesText(*c.comb), QString::number(c.room)}});
    else
        all.push_back({"Whether brood and stores fit is not known: look first."});
    all.push_back({"The box that comes away is closed at once: open comb starts robbing."});
    return all;
}

} // namespace core::rules
