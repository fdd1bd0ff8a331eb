#include "core/rules/day_view.h"

#include "core/rules/limits.h"
#include "core/rules/season.h"

namespace core::rules {

namespace {

constexpr MonthDay kReverseFrom = fixed::kReverseFrom, kReverseTo = fixed::kReverseTo;
constexpr MonthDay kDivideFrom = fixed::kDivideFrom, kDivideTo = fixed::kDivideTo;
constexpr int kLastMonthOfFirstHalf = fixed::kLastMonthOfSpring;

YardSeasons seasonsOn(Day on, bool southern, const Settings& settings) {
    return {.strength = inSeason(on, settings.fallStart, settings.fallEnd, southern),
            .queenTrouble = inSeason(on, settings.seasonStart, settings.fallEnd, southern),
            .reverse = inSeason(on, kReverseFrom, kReverseTo, southern),
            .divide = inSeason(on, kDivideFrom, kDivideTo, southern),
            .firstHalf = northernMonth(on, southern) <= kLastMonthOfFirstHalf};
}

} // namespace

std::optional<int> DayView::valueAlone(ColonyIx ix) const {
    const ColonyFacts& f = of(ix);
    if (!f.strength) return std::nullopt;
    return f.lacksQueen ? 0 : value(*f.strength);
}

DayView viewOf(const Snapshot& s) {
    DayView view = viewOf(s, colonyFacts(s), holds(s));
    view.evidence = std::make_unique<Evidence>(s);
    return view;
}

DayView viewOf(const Snapshot& s, std::vector<ColonyFacts> facts, std::vector<Hold> holds) {
    DayView view{s, std::move(facts), std::move(holds), {}, {}, {}, ValueOf(s.settings), nullptr};
    view.heldAs.assign(view.facts.size(), 0);
    for (const Hold& hold : view.holds) {
        auto& bits = view.heldAs[static_cast<size_t>(hold.colony.value)];
        bits = static_cast<quint16>(bits | (1 << static_cast<int>(hold.kind)));
    }
    for (const SnapYard& yard : s.yards) view.seasons.push_back(seasonsOn(s.on, yard.southern(), s.settings));
    view.place.reserve(view.facts.size());
    for (const ColonyFacts& f : view.facts) view.place.push_back(s.placeOf(f.colony));
    return view;
}

} // namespace core::rules
