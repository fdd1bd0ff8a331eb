#include "core/rules/hold_reasons.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace core::rules {

namespace {

struct HoldReasons {
    Q_DECLARE_TR_FUNCTIONS(core::rules::HoldReasons)
};

QString orderName(const SnapResult& order) {
    return HoldReasons::tr("order %1 of %2 by %3 (%4)")
        .arg(order.paper, isoText(order.day), order.by, diseaseText(order.disease));
}

QString orderSentence(const Evidence& e, const OrderFact& fact) {
    const SnapResult& order = *fact.order;
    const ColonyIx met = fact.chain.empty() ? fact.colony : fact.chain.back().from;
    const QString text = order.yard.value >= 0
                             ? HoldReasons::tr("The %1 names the yard %2, where %3 stood on %4.")
                                   .arg(orderName(order), shownName(e, order.yard), shownName(e, met),
                                        isoText(fact.stood.value_or(order.day)))
                             : HoldReasons::tr("The %1 names %2.").arg(orderName(order), shownName(e, met));
    return fact.chain.empty() ? text : text + u' ' + chainText(e, fact.chain) + u'.';
}

QString orderLift(const Evidence& e, const SnapResult& order) {
    const QString target = order.yard.value >= 0 ? HoldReasons::tr("the yard %1").arg(shownName(e, order.yard))
                                                 : shownName(e, order.colony);
    return HoldReasons::tr("an inspector's release of %1 for %2 dated on or after %3")
        .arg(target, diseaseText(order.disease), isoText(order.day));
}

} // namespace

Told orderReason(const Evidence& e, std::span<const OrderFact> facts) {
    QStringList sentences;
    QStringList lifts;
    Reason why{"4.4 order"};
    for (const OrderFact& fact : facts) {
        sentences << orderSentence(e, fact);
        lifts << orderLift(e, *fact.order);
        why.fact("order", fact.order->day).fact("paper", fact.order->paper);
        if (fact.stood) why.fact("stood there", *fact.stood);
        for (const Gift& gift : fact.chain) why.fact("link", gift);
    }
    lifts.removeDuplicates();
    return told(sentences, HoldReasons::tr("Only this lifts it: %1.").arg(lifts.join(HoldReasons::tr(", and "))),
                std::move(why));
}

Told confirmedReason(const Evidence& e, ColonyIx colony) {
    const auto positives = e.findings.positives.of(colony.value);
    const auto release = latestUpTo(e.findings.releases.of(colony.value), e.s.on);
    QStringList days;
    Reason why{"4.4.5"};
    for (const Day day : positives) {
        if (release && day < *release) continue;
        days << isoText(day);
        why.fact("positive", day);
    }
    const QString name = shownName(e, colony);
    const Day last = *later(positives.back(), latestUpTo(e.findings.signs.of(colony.value), e.s.on));
    return told({HoldReasons::tr("A laboratory or an inspector found American foulbrood in %1: positive of %2.")
                     .arg(name, days.join(QStringLiteral(", ")))},
                HoldReasons::tr("Only an inspector's release that names %1, dated after %2, lifts it.")
                    .arg(name, isoText(last)),
                std::move(why));
}

Told suspectedReason(const Evidence& e, ColonyIx colony) {
    const auto release = latestUpTo(e.findings.releases.of(colony.value), e.s.on);
    const auto negative = latestUpTo(e.findings.negatives.of(colony.value), e.s.on);
    QStringList days;
    Reason why{"4.4.5"};
    for (const Day day : e.findings.signs.of(colony.value)) {
        if ((release && day < *release) || (negative && day <= *negative)) continue;
        days << isoText(day);
        why.fact("sign", day);
    }
    const QString name = shownName(e, colony);
    const QString last = isoText(lastSign(e, colony));
    return told(
        {HoldReasons::tr("%1 shows signs of American foulbrood: %2.").arg(name, days.join(QStringLiteral(", ")))},
        HoldReasons::tr("A laboratory's or an inspector's negative of %1 dated on or after %2 lifts it, or an "
                        "inspector's release that names %1, dated after %2.")
            .arg(name, last),
        std::move(why));
}

} // namespace core::rules
