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
QString ownLift(const Evidence& e, ColonyIx colony, Day last, bool releaseThatDay, Reason& why) {
    const QString release = isoText(releaseThatDay ? last : last + 1);
    const auto treated = e.treated.latestKnown(colony, e.s.on);
    const auto [negative, check] = calc::afbContactRecheck(last, treated, e.limits);
    why.fact("first day to check", check).fact("first day of a negative", negative);
    why.limit("check.full_frames").limit("afb.recheck_days").limit("afb.own_result_days");
    QString days = TracedReasons::tr("%1 days on").arg(e.limits.afbRecheckDays);
    if (treated && check - *treated == e.limits.traceMaskedDays + 1) {
        why.fact("antibiotic", *treated).limit("trace.masked_days");
        days += TracedReasons::tr(", and more than %1 after the antibiotic of %2")
                    .arg(QString::number(e.limits.traceMaskedDays), isoText(*treated));
    }
    return TracedReasons::tr(
               "a check of all brood frames, at least %1, on or after %2 (%5), or a laboratory's or an "
               "inspector's negative on or after %3 (%6 days on), or an inspector's release dated on or after %4; with "
               "fewer brood frames or none, only the negative or the release")
        .arg(QString::number(e.limits.checkFullFrames), isoText(check), isoText(negative), release, days,
             QString::number(e.limits.afbOwnResultDays));
}

// The source and the colony's links to it, as data.
void addSource(const Source& source, Day last, Reason& why) {
    why.fact("source", source.colony).fact("since", source.date).fact("source's last day", source.last);
    why.fact("last contact", last);
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

// The first links as data; the words have them all.
void addLinks(const std::vector<Gift>& chain, Reason& why) {
    constexpr size_t kMostFacts = 12;
    for (const Gift& gift : chain)
        if (why.facts.size() < kMostFacts) why.fact("link", gift);
}

QString windowText(const Evidence& e, const Source& source, Reason& why) {
    const char* limit = source.treated ? "trace.masked_days" : "trace.days";
    why.fact("links count from", source.open).limit(limit);
    return source.treated ? TracedReasons::tr("It was treated with an antibiotic, so links count from %1 on, %2 days "
                                              "before.")
                                .arg(isoText(source.open), QString::number(e.limits.traceMaskedDays))
                          : TracedReasons::tr("Links count from %1 on, %2 days before.")
                                .arg(isoText(source.open), QString::number(e.limits.traceDays));
}

// The days before the source's first record and after its last one in the yard that count.
QString reachText(const Evidence& e, const Source& source, Reason& why) {
    why.limit("afb.yard_back_days").limit("afb.yard_after_days");
    return TracedReasons::tr("Its yards count from %1 on, %2 days before, to %3 days after its last day there.")
        .arg(isoText(source.date - e.limits.afbYardBackDays), QString::number(e.limits.afbYardBackDays),
             QString::number(e.limits.afbYardAfterDays));
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

void addReach(const Evidence& e, const Source& source, const ReachFact& fact, QStringList& sentences, Reason& why) {
    for (const ReachStay& stay : fact.stays) {
        sentences << stayText(e, stay, source);
        why.fact("yard", stay.yard).fact("there since", stay.arrived);
    }
    for (const ReachFact::Chain& chain : fact.chains) {
        sentences << chainText(e, chain.gifts) + u'.';
        addLinks(chain.gifts, why);
        if (chain.stood) sentences << stayText(e, *chain.stood, source);
    }
}

} // namespace

Told contactReason(const Evidence& e, const std::vector<Source>& sources, std::span<const ContactFact> facts) {
    QStringList sentences;
    Reason why{"4.4.7"};
    for (const ContactFact& fact : facts) {
        const Source& source = sources[static_cast<size_t>(fact.source)];
        addSource(source, fact.last, why);
        sentences << sourceText(e, source) << windowText(e, source, why);
        for (const auto& chain : fact.chains) {
            sentences << chainText(e, chain) + u'.';
            addLinks(chain, why);
        }
    }
    const QString own = ownLift(e, facts.front().colony, latestOf(facts), false, why);
    const auto suspects = suspectsOf(facts, sources, [](const Source& s) { return !s.past && !s.confirmed; });
    const QString lift = suspects.all
                             ? TracedReasons::tr("It can be lifted by %1; or by %2, which answers the suspicion.")
                                   .arg(own, answersOf(e, suspects))
                             : TracedReasons::tr("It can be lifted by %1.").arg(own);
    sentences.removeDuplicates();
    return told(sentences, lift, std::move(why));
}

Told reachReason(const Evidence& e, const std::vector<Source>& sources, std::span<const ReachFact> facts) {
    QStringList sentences;
    Reason why{"4.4.9"};
    for (const ReachFact& fact : facts) {
        const Source& source = sources[static_cast<size_t>(fact.source)];
        addSource(source, fact.last, why);
        sentences << sourceText(e, source) << reachText(e, source, why);
        addReach(e, source, fact, sentences, why);
    }
    const Day last = latestOf(facts);
    const bool byGift =
        std::any_of(facts.begin(), facts.end(), [&](const ReachFact& f) { return f.last == last && f.byGift; });
    const QString own = ownLift(e, facts.front().colony, last, !byGift, why);
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
    return told(sentences, lift, std::move(why));
}

} // namespace core::rules
