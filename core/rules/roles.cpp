#include "core/rules/roles.h"

#include <algorithm>
#include <tuple>
#include <utility>

namespace core::rules {

namespace {

std::pair<ColonyIx, MovedFor> movedOf(const ColonyFacts& a, const ColonyFacts& b) {
    if (a.strength != b.strength) return {*a.strength < *b.strength ? a.colony : b.colony, MovedFor::FewerBees};
    if (a.lacksQueen != b.lacksQueen) return {a.lacksQueen ? a.colony : b.colony, MovedFor::NoQueen};
    if (a.gross && b.gross && a.gross != b.gross)
        return {*a.gross < *b.gross ? a.colony : b.colony, MovedFor::LighterHive};
    return {std::max(a.colony, b.colony), MovedFor::LaterLabel}; // the snapshot's order is the natural one
}

QueenPlan queenPlan(const ColonyFacts& moved, const ColonyFacts& host, WeakerQueen weaker) {
    if (host.lacksQueen) return QueenPlan::KeepMoved;
    if (moved.lacksQueen) return QueenPlan::KeepHost;
    return weaker == WeakerQueen::Remove ? QueenPlan::RemoveMoved : QueenPlan::LeaveBoth;
}

} // namespace

Roles rolesOf(const DayView& view, const ChosenPair& pair) {
    Roles out;
    std::tie(out.moved, out.reason) = movedOf(view.of(pair.a), view.of(pair.b));
    out.host = out.moved == pair.a ? pair.b : pair.a;
    if (pair.host && *pair.host != out.host) {
        std::swap(out.moved, out.host);
        out.reason = MovedFor::Asked;
    }
    const bool hostOnTop = view.s.settings.order == BoxOrder::BetterOnTop;
    out.lower = hostOnTop ? out.moved : out.host;
    out.upper = hostOnTop ? out.host : out.moved;
    out.topAsked = pair.top && *pair.top != out.upper;
    if (out.topAsked) std::swap(out.lower, out.upper);
    out.queen = queenPlan(view.of(out.moved), view.of(out.host), view.s.settings.weakerQueen);
    return out;
}

} // namespace core::rules
