#include "core/rules/objections.h"

#include "core/rules/limits.h"
#include "core/rules/pairs.h"

#include <QStringList>

#include <array>

namespace core::rules {

namespace {

using Pair = std::array<ColonyIx, 2>;

/// One sentence for each of the two that `say` has something about.
template <class Say> QString each(const Pair& pair, Say say) {
    QStringList out;
    for (const ColonyIx c : pair)
        if (const QString text = say(c); !text.isEmpty()) out += text;
    return out.join(u' ');
}

QString whyHeld(const DayView& view, ColonyIx c) {
    QStringList out;
    for (const Hold& hold : view.holds)
        if (hold.colony == c)
            out += QStringLiteral("%1 is held as %2: %3").arg(view.name(c), holdWord(hold.kind), hold.because());
    return out.join(u' ');
}

QString whyNoStrength(const DayView& view, ColonyIx c) {
    const ColonyFacts& f = view.of(c);
    const QString& name = view.name(c);
    if (f.strength)
        return f.strengthClass == StrengthClass::ShakeOut
                   ? QStringLiteral("%1 has %2 frames of bees, the shake-out class (up to %3).")
                         .arg(name, framesText(*f.strength), framesText(view.s.settings.shakeOutMax))
                   : QString();
    switch (f.noStrength) {
    case NoStrength::NoBees:
        return QStringLiteral("%1 had no bees on %2.").arg(name, isoText(*f.counted));
    case NoStrength::CountOld:
        return QStringLiteral("%1's bees were last counted on %2, %4 days ago; more than %3 days is too old.")
            .arg(name, isoText(*f.counted))
            .arg(view.s.settings.strengthMaxAgeDays)
            .arg(view.s.on - *f.counted);
    case NoStrength::NoCount:
        break;
    }
    return QStringLiteral("%1's bees are not counted.").arg(name);
}

QString whyNotOneBox(const DayView& view, ColonyIx c) {
    const QString& name = view.name(c);
    const int room = view.s.boxKindOf(c).frames;
    switch (oneBox(view, c)) {
    case OneBox::IsInOne:
    case OneBox::Fits:
        return {};
    case OneBox::NoStrength:
        return QStringLiteral("%1 is in two boxes, and without a count nobody knows whether it fits into one.")
            .arg(name);
    case OneBox::TooManyBees:
        return QStringLiteral("%1 is in two boxes, and its %2 frames of bees do not fit into one of %3.")
            .arg(name, framesText(*view.of(c).strength))
            .arg(room);
    case OneBox::TooMuchComb:
        break;
    }
    return QStringLiteral("%1 is in two boxes, and its %2 frames of brood and stores do not fit into one of %3.")
        .arg(name, framesText(*combNeeded(view, c)))
        .arg(room);
}

QString describe(const DayView& view, ColonyIx c) {
    const ColonyFacts& f = view.of(c);
    const QString strength = f.strengthClass ? classWord(*f.strengthClass) : QStringLiteral("without a strength");
    return QStringLiteral("%1 is %2, its queen: %3").arg(view.name(c), strength, word(f.queen));
}

QString whyOutOfSeason(const DayView& view, const Pair& pair) {
    const YardSeasons& here = view.seasonsOf(pair[0]);
    const YardSeasons& there = view.seasonsOf(pair[1]);
    const bool southern = view.southern(pair[0]);
    const auto open = [](bool in) { return in ? QLatin1StringView("is open") : QLatin1StringView("is not open"); };
    return QStringLiteral(
               "On %1 the season for strength (%6 to %7) %2 (for it: both weak or medium, one of them weak, no virgin; "
               "weak is below %9 frames, medium below %10), and that for queen trouble (%8 to %7) %3 (for it: exactly "
               "one without a queen, the other no virgin). %4; %5.")
        .arg(isoText(view.s.on), open(here.strength && there.strength), open(here.queenTrouble && there.queenTrouble),
             describe(view, pair[0]), describe(view, pair[1]))
        .arg(limitText(view.s.settings, "season.fall_start", southern),
             limitText(view.s.settings, "season.fall_end", southern),
             limitText(view.s.settings, "season.start", southern), framesText(view.s.settings.mediumMin),
             framesText(view.s.settings.strongMin));
}

QString whyNoGain(const DayView& view, const Pair& pair, const PairJudgement& judged) {
    const Quarters sum = *view.of(pair[0]).strength + *view.of(pair[1]).strength;
    return QStringLiteral(
               "Together %1, alone %2 and %3 thousandths of a spring colony, less %4 for the carry (%7): the gain is "
               "%5, the limit %6 (by value tables that are an assumption).")
        .arg(view.value(sum))
        .arg(*view.valueAlone(pair[0]))
        .arg(*view.valueAlone(pair[1]))
        .arg(judged.carry)
        .arg(*judged.gain)
        .arg(judged.limit)
        .arg(limitText(view.s.settings, "carry.per_m"));
}

QString why(const DayView& view, const Pair& pair, const PairJudgement& judged, int part) {
    const QString& a = view.name(pair[0]);
    const QString& b = view.name(pair[1]);
    const auto yard = [&](ColonyIx c) { return view.s.yard(view.of(c).yard).name; };
    const auto kind = [&](ColonyIx c) { return view.s.boxKindOf(c).name; };
    switch (part) {
    case 1:
        return QStringLiteral("%1 stands in %2, %3 in %4.").arg(a, yard(pair[0]), b, yard(pair[1]));
    case 2:
        return each(pair, [&](ColonyIx c) { return whyHeld(view, c); });
    case 3:
        return each(pair, [&](ColonyIx c) {
            return view.of(c).layingWorkers ? QStringLiteral("%1 has laying workers.").arg(view.name(c)) : QString();
        });
    case 4:
        return each(pair, [&](ColonyIx c) { return whyNoStrength(view, c); });
    case 5:
        return QStringLiteral("%1 and %2 both lack a queen (%3, %4).")
            .arg(a, b, word(view.of(pair[0]).queen), word(view.of(pair[1]).queen));
    case 6:
        return QStringLiteral("%1 is in boxes %2, %3 in %4.").arg(a, kind(pair[0]), b, kind(pair[1]));
    case 7:
        return each(pair, [&](ColonyIx c) { return whyNotOneBox(view, c); });
    case 8:
        return QStringLiteral("%1 + %2 frames of bees are more than two boxes of %3 hold.")
            .arg(framesText(*view.of(pair[0]).strength), framesText(*view.of(pair[1]).strength))
            .arg(view.s.boxKindOf(pair[0]).frames);
    case 9:
        return whyOutOfSeason(view, pair);
    default:
        return whyNoGain(view, pair, judged);
    }
}

/// What of each of the two the part looks at.
void addFacts(const DayView& view, ColonyIx c, int part, Reason& why) {
    const ColonyFacts& f = view.of(c);
    why.fact("colony", c);
    if (part == 1) why.fact("yard", f.yard);
    if (part == 2)
        for (const Hold& hold : view.holds)
            if (hold.colony == c) why.fact("held as", holdWord(hold.kind)).add(hold.why);
    if (part == 3 || part == 5 || part == 9) why.fact("queen", word(f.queen));
    if (part == 4 || part >= 7) {
        if (f.lastCount) why.fact("frames", *f.lastCount);
        if (f.counted) why.fact("counted", *f.counted);
    }
    if (part == 4 && f.strengthClass == StrengthClass::ShakeOut) why.limit("class.shake_out_max");
    if (part == 4 && !f.strength && f.noStrength == NoStrength::CountOld) why.limit("strength.max_age_days");
    if (part == 6) why.fact("box kind", view.s.boxKindOf(c).name);
    if (part == 7 || part == 8) why.fact("frames of a box", qint64(view.s.boxKindOf(c).frames));
}

Reason reasonOf(const DayView& view, const Pair& pair, const PairJudgement& judged, int part) {
    static constexpr const char* kRules[] = {"4.7",   "4.7.1", "4.7.2", "4.7.3", "4.7.4", "4.7.5",
                                             "4.7.6", "4.7.7", "4.7.8", "4.7.9", "4.7.10"};
    Reason why{kRules[part]};
    why.southern = view.southern(pair[0]);
    for (const ColonyIx c : pair) addFacts(view, c, part, why);
    if (part == 7) why.limit("4.7.7 boxes");
    if (part == 8) why.limit("4.7.8 boxes");
    if (part == 9)
        for (const char* limit :
             {"season.fall_start", "season.fall_end", "season.start", "class.medium_min", "class.strong_min"})
            why.limit(limit);
    if (part == 10) {
        why.fact("carry", judged.carry).fact("gain", qint64(*judged.gain));
        why.limit(judged.forQueen ? "gain.min_queen" : "gain.min").limit("carry.per_m");
        why.limit("value.winter").limit("value.divide");
    }
    return why;
}

} // namespace

Objection objection(const DayView& view, ColonyIx a, ColonyIx b, const PairJudgement& judged, int part) {
    const Pair pair{a, b};
    return {QStringLiteral("4.7.%1").arg(part), why(view, pair, judged, part), reasonOf(view, pair, judged, part)};
}

std::vector<Objection> objections(const DayView& view, ColonyIx a, ColonyIx b) {
    const PairJudgement judged = judgePair(view, a, b);
    std::vector<Objection> out;
    for (int part = 1; part <= 10; ++part)
        if (judged.bars(part)) out.push_back(objection(view, a, b, judged, part));
    return out;
}

} // namespace core::rules
