#include "core/rules/hold_reasons.h"

#include "core/rules/calc/recheck.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace core::rules {

namespace {

struct TracedReasons {
    Q_DECLARE_TR_FUNCTIONS(core::rules::TracedReasons)
};

// What the colony itself can bring, its days running from `last`.
QString ownLift(const Evidence& e, ColonyIx colony, Day last, bool releaseThatDay) {
    const QString release = isoText(releaseThatDay ? last : last + 1);
    const auto [negative, check] = calc::afbContactRecheck(last, e.treated.latestKnown(colony, e.s.on), e.limits);
    return TracedReasons::tr(
               "a check of all brood frames, at least %1, on or after %2, or a laboratory's or an "
               "inspector's negative on or after %3, or an inspector's release dated on or after %4; with "
               "fewer brood frames or none, only the negative or the release")
        .arg(QString::number(e.limits.checkFullFrames), isoText(check), isoText(negative), release);
}

QString suspicionLift(const Evidence& e, ColonyIx source) {
    return TracedReasons::tr("a laboratory's or an inspector's negative of %1 dated on or after %2")
        .arg(shownName(e, source), isoText(lastSign(e, source)));
}

// The current suspects among the sources of some facts, each once; `all`: every source is one.
struct Suspects {
    std::vector<ColonyIx> colonies;
    bool all = true;
};

template <class Fact, class Wanted>
Suspects suspectsOf(std::span<const Fact> facts, const std::vector<Source>& sources, Wanted wanted) {
    Suspects suspects;
    for (const Fact& fact : facts) {
        const Source& source = sources[static_cast<size_t>(fact.source)];
        if (wanted(source))
            suspects.colonies.push_back(source.colony);
        else
            suspects.all = false;
    }
    return suspects;
}

QString answersOf(const Evidence& e, const Suspects& suspects) {
    QStringList answers;
    for (const ColonyIx colony : suspects.colonies) answers << suspicionLift(e, colony);
    return answers.join(TracedReasons::tr(", and "));
}

template <class Fact> Day latestOf(std::span<const Fact> facts) {
    return std::max_element(facts.begin(), facts.end(), [](const Fact& a, const Fact& b) { return a.last < b.last; })
        ->last;
}

QString stayText(const Evidence& e, const ReachStay& stay, const Source& source) {
    const QString name = shownName(e, stay.colony);
    const QString yard = shownName(e, stay.yard);
    const QString arrived = isoText(stay.arrived);
    const QString other = shownName(e, source.colony);
    const QString otherLast = isoText(stay.sourceLast);
    if (stay.until >= e.s.on)
        return TracedReasons::tr("%1 stands in %2 since %3, where %4 stood until %5.")
            .arg(name, yard, arrived, other, otherLast);
    return TracedReasons::tr("%1 stood in %2 from %3 to %6, where %4 stood until %5.")
        .arg(name, yard, arrived, other, otherLast, isoText(stay.until));
}

void addReach(const Evidence& e, const Source& source, const ReachFact& fact, QStringList& sentences) {
    for (const ReachStay& stay : fact.stays) sentences << stayText(e, stay, source);
    for (const ReachFact::Chain& chain : fact.chains) {
        sentences << chainText(e, chain.gifts) + u'.';
        if (chain.stood) sentences << stayText(e, *chain.stood, source);
    }
}

} // namespace

Told contactReason(const Evidence& e, const std::vector<Source>& sources, std::span<const ContactFact> facts) {
    QStringList sentences;
    for (const ContactFact& fact : facts) {
        const Source& source = sources[static_cast<size_t>(fact.source)];
        sentences << sourceText(e, source);
        sentences << (source.treated
                          ? TracedReasons::tr("It was treated with an antibiotic, so links count from %1 on.")
                          : TracedReasons::tr("Links count from %1 on."))
                         .arg(isoText(source.open));
        for (const auto& chain : fact.chains) sentences << chainText(e, chain) + u'.';
    }
    const QString own = ownLift(e, facts.front().colony, latestOf(facts), false);
    const auto suspects = suspectsOf(facts, sources, [](const Source& s) { return !s.past && !s.confirmed; });
    const QString lift = suspects.all
                             ? TracedReasons::tr("It can be lifted by %1; or by %2, which answers the suspicion.")
                                   .arg(own, answersOf(e, suspects))
                             : TracedReasons::tr("It can be lifted by %1.").arg(own);
    sentences.removeDuplicates();
    return told(sentences, lift);
}

Told reachReason(const Evidence& e, const std::vector<Source>& sources, std::span<const ReachFact> facts) {
    QStringList sentences;
    for (const ReachFact& fact : facts) {
        const Source& source = sources[static_cast<size_t>(fact.source)];
        sentences << sourceText(e, source);
        addReach(e, source, fact, sentences);
    }
    const Day last = latestOf(facts);
    const bool byGift =
        std::any_of(facts.begin(), facts.end(), [&](const ReachFact& f) { return f.last == last && f.byGift; });
    const QString own = ownLift(e, facts.front().colony, last, !byGift);
    const auto living = suspectsOf(facts, sources, [](const Source& s) { return s.livingSuspect; });
    const auto all = suspectsOf(facts, sources, [](const Source& s) { return !s.past && !s.confirmed; });
    const bool stays = std::any_of(facts.begin(), facts.end(), [&](const ReachFact& f) {
        return f.last == e.s.on && !f.byGift && sources[static_cast<size_t>(f.source)].last == e.s.on;
    });
    QString lift;
    if (!living.colonies.empty())
        lift =
            TracedReasons::tr("While a suspected colony lives nothing of its own lifts it: first %1; without that, and "
                              "once the suspected colony is gone or found positive, %2.")
                .arg(answersOf(e, living), own);
    else if (all.all)
        lift = TracedReasons::tr("It can be lifted by %1; or by %2, which answers the suspicion.")
                   .arg(own, answersOf(e, all));
    else if (stays)
        lift = TracedReasons::tr("As long as it stands with the source the days begin anew; from this day on it can be "
                                 "lifted by %1.")
                   .arg(own);
    else
        lift = TracedReasons::tr("It can be lifted by %1.").arg(own);
    sentences.removeDuplicates();
    return told(sentences, lift);
}

} // namespace core::rules
