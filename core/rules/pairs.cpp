#include "core/rules/pairs.h"

namespace core::rules {

namespace {

bool aboveShakeOut(const ColonyFacts& f) { return f.strengthClass && *f.strengthClass != StrengthClass::ShakeOut; }

bool virgin(const ColonyFacts& f) { return f.queen == QueenSeen::Virgin; }

/// 9 (a): for strength.
bool forStrength(const ColonyFacts& a, const ColonyFacts& b) {
    const auto is = [](const ColonyFacts& f, StrengthClass c) { return f.strengthClass == c; };
    const auto weakOrMedium = [&](const ColonyFacts& f) {
        return is(f, StrengthClass::Weak) || is(f, StrengthClass::Medium);
    };
    return weakOrMedium(a) && weakOrMedium(b) && (is(a, StrengthClass::Weak) || is(b, StrengthClass::Weak)) &&
           !virgin(a) && !virgin(b);
}

/// 9 (b): for a queen.
bool forQueen(const ColonyFacts& a, const ColonyFacts& b) {
    return a.lacksQueen != b.lacksQueen && !virgin(a.lacksQueen ? b : a);
}

void judgeSeason(const DayView& view, const ColonyFacts& a, const ColonyFacts& b, PairJudgement& out) {
    const YardSeasons& here = view.seasonsOf(a.colony);
    const YardSeasons& there = view.seasonsOf(b.colony);
    out.forQueen = here.queenTrouble && there.queenTrouble && forQueen(a, b);
    if (!out.forQueen && !(here.strength && there.strength && forStrength(a, b)))
        out.against = static_cast<quint16>(out.against | 1 << 9);
}

void judgeGain(const DayView& view, const ColonyFacts& a, const ColonyFacts& b, PairJudgement& out) {
    out.limit = out.forQueen ? view.s.settings.gainMinQueen : view.s.settings.gainMin;
    if (a.yard != b.yard || !a.strength || !b.strength) return;
    out.carry = carryCost(view.placeOf(a.colony).at, view.placeOf(b.colony).at, view.s.settings.carryPerM);
    out.gain = gainBeforeCarry(view, a.colony, b.colony) - static_cast<int>(out.carry);
    if (*out.gain < out.limit) out.against = static_cast<quint16>(out.against | 1 << 10);
}

} // namespace

std::optional<Quarters> combNeeded(const DayView& view, ColonyIx c) {
    const auto& count = view.s.latestOf(c).count;
    if (!view.of(c).counted || !count->broodFrames || !count->stores || !count->upperStores) return std::nullopt;
    return Quarters{4 * *count->broodFrames} + *count->stores + *count->upperStores;
}

OneBox oneBox(const DayView& view, ColonyIx c) {
    const ColonyFacts& f = view.of(c);
    if (f.boxes == 1) return OneBox::IsInOne;
    if (!f.strength) return OneBox::NoStrength;
    const Quarters room = view.boxRoom(c);
    if (*f.strength > room) return OneBox::TooManyBees;
    const auto comb = combNeeded(view, c);
    return comb && *comb > room ? OneBox::TooMuchComb : OneBox::Fits;
}

bool mayTakePart(const DayView& view, ColonyIx c) {
    const ColonyFacts& f = view.of(c);
    return !view.held(c) && !f.layingWorkers && aboveShakeOut(f) && comesToOneBox(oneBox(view, c));
}

int gainBeforeCarry(const DayView& view, ColonyIx a, ColonyIx b) {
    return view.value(*view.of(a).strength + *view.of(b).strength) - *view.valueAlone(a) - *view.valueAlone(b);
}

PairJudgement judgePair(const DayView& view, ColonyIx a, ColonyIx b) {
    const ColonyFacts& fa = view.of(a);
    const ColonyFacts& fb = view.of(b);
    PairJudgement out;
    const auto require = [&](int part, bool met) {
        if (!met) out.against = static_cast<quint16>(out.against | 1 << part);
    };
    const bool oneKind = view.s.colony(a).boxKind == view.s.colony(b).boxKind;
    require(1, fa.yard == fb.yard);
    require(2, !view.held(a) && !view.held(b));
    require(3, !fa.layingWorkers && !fb.layingWorkers);
    require(4, aboveShakeOut(fa) && aboveShakeOut(fb));
    require(5, !(fa.lacksQueen && fb.lacksQueen));
    require(6, oneKind);
    require(7, comesToOneBox(oneBox(view, a)) && comesToOneBox(oneBox(view, b)));
    if (oneKind && fa.strength && fb.strength)
        require(8, (*fa.strength + *fb.strength).value <= 2 * view.boxRoom(a).value);
    judgeSeason(view, fa, fb, out);
    judgeGain(view, fa, fb, out);
    return out;
}

} // namespace core::rules
