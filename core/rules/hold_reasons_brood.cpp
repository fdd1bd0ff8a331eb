#include "core/rules/hold_reasons.h"

#include "core/rules/calc/recheck.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace core::rules {

namespace {

struct BroodReasons {
    Q_DECLARE_TR_FUNCTIONS(core::rules::BroodReasons)
};

QString framesOf(const SnapCheck& check) {
    return check.broodFrames < 0 ? BroodReasons::tr("%1 brood frames, of how many is not recorded").arg(check.checked)
                                 : BroodReasons::tr("%1 of %2 brood frames")
                                       .arg(QString::number(check.checked), QString::number(check.broodFrames));
}

QString giftSentence(const Evidence& e, const EventFact& fact, const QString& had, const QString& found) {
    const QString gift = giftText(e, *fact.gift);
    return fact.found ? found.arg(gift, isoText(*fact.found)) : had.arg(gift);
}

// Which limit the latest check misses.
QString missedLimit(const Evidence& e, const UncheckedFact& fact, const SnapCheck& check) {
    const QString day = isoText(check.day);
    if (!e.checks.clean(check))
        return check.signs.broodTrouble()
                   ? BroodReasons::tr("The last brood check, of %1 (%2), was not clean.").arg(day, framesOf(check))
                   : BroodReasons::tr(
                         "At the last brood check, of %1, only %2 were examined; it takes %3, or all where "
                         "there are fewer.")
                         .arg(day, framesOf(check), QString::number(e.limits.checkMinFrames));
    if (check.day < fact.maxAge)
        return BroodReasons::tr("The last brood check, of %1 (%2), is more than %3 days old.")
            .arg(day, framesOf(check), QString::number(e.limits.checkMaxAgeDays));
    if (check.day < fact.season)
        return BroodReasons::tr(
                   "The last brood check, of %1 (%2), lies before the season that began on %3, and is more "
                   "than %4 days old.")
            .arg(day, framesOf(check), isoText(fact.seasonStart), QString::number(e.limits.checkGraceDays));
    return BroodReasons::tr("The last brood check, of %1 (%2), counts no more.").arg(day, framesOf(check));
}

} // namespace

Told efbReason(const Evidence& e, const EventFact& fact) {
    const QString name = shownName(e, fact.colony);
    const QString why =
        fact.gift
            ? giftSentence(e, fact, BroodReasons::tr("%1, and the giver was held for European foulbrood that day."),
                           BroodReasons::tr("%1, and the giver was found with European foulbrood on %2."))
            : BroodReasons::tr("%1 showed European foulbrood on %2.").arg(name, isoText(fact.event));
    const Day clear = calc::efbRecheck(fact.event, e.treated.latestKnown(fact.colony, e.s.on), e.limits).check;
    return told({why},
                BroodReasons::tr("It can be lifted by a clean check of all brood frames, at least %1, or a "
                                 "laboratory's or an inspector's negative for European foulbrood, on or after %2, or "
                                 "an inspector's release that names it, dated after %3; with fewer brood frames or "
                                 "none, only the negative or the release.")
                    .arg(QString::number(e.limits.checkFullFrames), isoText(clear), isoText(fact.event)));
}

Told doubtReason(const Evidence& e, const EventFact& fact) {
    const QString name = shownName(e, fact.colony);
    const QString why =
        fact.gift ? giftSentence(e, fact, BroodReasons::tr("%1, and the brood of the giver was in doubt that day."),
                                 BroodReasons::tr("%1, and the brood of the giver was in doubt on %2."))
                  : BroodReasons::tr("The brood of %1 was in doubt on %2.").arg(name, isoText(fact.event));
    const auto [negative, check] = calc::doubtRecheck(fact.event, static_cast<bool>(fact.gift),
                                                      e.treated.latestKnown(fact.colony, e.s.on), e.limits);
    return told(
        {why},
        BroodReasons::tr("It can be lifted by a clean check of all brood frames, at least %1, on or after "
                         "%2, or a laboratory's or an inspector's negative on or after %3, or an inspector's "
                         "release that names it, dated after %4; with fewer brood frames or none, only the "
                         "negative or the release.")
            .arg(QString::number(e.limits.checkFullFrames), isoText(check), isoText(negative), isoText(fact.event)));
}

Told uncheckedReason(const Evidence& e, const UncheckedFact& fact) {
    QStringList sentences;
    const auto checks = e.checks.of(fact.colony);
    const auto negative = latestUpTo(e.findings.negatives.of(fact.colony.value), e.s.on);
    if (checks.empty() && !negative) sentences << BroodReasons::tr("No brood check and no negative is recorded.");
    if (!checks.empty()) sentences << missedLimit(e, fact, checks.back());
    if (negative) sentences << BroodReasons::tr("The last negative, of %1, counts no more.").arg(isoText(*negative));
    const Day shown = std::max(fact.maxAge, fact.season);
    if (fact.spoiled && *fact.spoiled >= shown)
        sentences << BroodReasons::tr(
                         "A sign or a positive of %1 takes the worth of all that was seen before it and on "
                         "that day.")
                         .arg(isoText(*fact.spoiled));
    if (fact.gift && fact.gift->day >= shown)
        sentences
            << BroodReasons::tr("%1, and the giver's brood was not checked that day.").arg(giftText(e, *fact.gift));
    return told(sentences,
                BroodReasons::tr("It can be lifted by a clean check of at least %1 brood frames, or of all where "
                                 "there are fewer, on or after %2, or a laboratory's or an inspector's negative "
                                 "on or after %2; without brood only by the negative.")
                    .arg(QString::number(e.limits.checkMinFrames), isoText(fact.from)));
}

} // namespace core::rules
