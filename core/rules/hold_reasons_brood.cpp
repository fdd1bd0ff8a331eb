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

QString giftSentence(const Evidence& e, const EventFact& fact, const QString& had, const QString& found, int backDays) {
    const QString gift = giftText(e, *fact.gift);
    return fact.found ? found.arg(gift, isoText(*fact.found), QString::number(backDays)) : had.arg(gift);
}

Reason reasonOf(const EventFact& fact, const char* rule, const char* back) {
    Reason why{rule};
    why.fact("event", fact.event);
    if (fact.gift) why.fact("link", *fact.gift);
    if (fact.found) why.fact("found at the giver", *fact.found).limit(back);
    return why;
}

// A check or a negative of `day` that counts no more: which limit it misses. %1 is what it was.
QString outdated(const Evidence& e, const UncheckedFact& fact, Day day, const QString& what, Reason& why) {
    if (day < fact.maxAge) {
        why.limit("check.max_age_days");
        return BroodReasons::tr("%1 is more than %2 days old.").arg(what, QString::number(e.limits.checkMaxAgeDays));
    }
    if (day < fact.season) {
        why.limit("4.4.10 season_start").limit("check.grace_days");
        return BroodReasons::tr("%1 lies before the season that began on %2, and is more than %3 days old.")
            .arg(what, isoText(fact.seasonStart), QString::number(e.limits.checkGraceDays));
    }
    return BroodReasons::tr("%1 counts no more.").arg(what);
}

// Which limit the latest check misses.
QString missedLimit(const Evidence& e, const UncheckedFact& fact, const SnapCheck& check, Reason& why) {
    const QString day = isoText(check.day);
    why.fact("last check", check.day).fact("examined", qint64(check.checked));
    if (e.checks.clean(check))
        return outdated(e, fact, check.day,
                        BroodReasons::tr("The last brood check, of %1 (%2),").arg(day, framesOf(check)), why);
    if (check.signs.broodTrouble())
        return BroodReasons::tr("The last brood check, of %1 (%2), was not clean.").arg(day, framesOf(check));
    return BroodReasons::tr("At the last brood check, of %1, only %2 were examined; it takes %3, or all where "
                            "there are fewer.")
        .arg(day, framesOf(check), QString::number(e.limits.checkMinFrames));
}

// "on or after 2026-10-01, 42 days on", and what an antibiotic adds.
QString checkDay(const Evidence& e, ColonyIx colony, Day day, int days, int masked, Reason& why) {
    const QString plain = BroodReasons::tr("on or after %1 (%2 days on)").arg(isoText(day)).arg(days);
    const auto treated = e.treated.latestKnown(colony, e.s.on);
    if (!treated || day - *treated != masked + 1) return plain;
    why.fact("antibiotic", *treated);
    return BroodReasons::tr("on or after %1 (%2 days on, and more than %3 after the antibiotic of %4)")
        .arg(isoText(day), QString::number(days), QString::number(masked), isoText(*treated));
}

} // namespace

Told efbReason(const Evidence& e, const EventFact& fact) {
    const QString name = shownName(e, fact.colony);
    const QString told =
        fact.gift
            ? giftSentence(e, fact, BroodReasons::tr("%1, and the giver was held for European foulbrood that day."),
                           BroodReasons::tr("%1, and the giver was found with European foulbrood on %2; gifts of up to "
                                            "%3 days before count."),
                           e.limits.efbBackDays)
            : BroodReasons::tr("%1 showed European foulbrood on %2.").arg(name, isoText(fact.event));
    Reason why = reasonOf(fact, "4.4.11", "efb.back_days");
    why.limit("check.full_frames").limit("efb.clear_days");
    const Day clear = calc::efbRecheck(fact.event, e.treated.latestKnown(fact.colony, e.s.on), e.limits).check;
    const QString when = checkDay(e, fact.colony, clear, e.limits.efbClearDays, e.limits.efbClearDays, why);
    why.fact("first day to clear", clear);
    return core::rules::told(
        {told},
        BroodReasons::tr("It can be lifted by a clean check of all brood frames, at least %1, or a "
                         "laboratory's or an inspector's negative for European foulbrood, %2, or "
                         "an inspector's release that names it, dated after %3; with fewer brood "
                         "frames or none, only the negative or the release.")
            .arg(QString::number(e.limits.checkFullFrames), when, isoText(fact.event)),
        std::move(why));
}

Told doubtReason(const Evidence& e, const EventFact& fact) {
    const QString name = shownName(e, fact.colony);
    const QString told =
        fact.gift
            ? giftSentence(e, fact, BroodReasons::tr("%1, and the brood of the giver was in doubt that day."),
                           BroodReasons::tr("%1, and the brood of the giver was in doubt on %2; gifts of up to %3 "
                                            "days before count."),
                           e.limits.doubtBackDays)
            : BroodReasons::tr("The brood of %1 was in doubt on %2.").arg(name, isoText(fact.event));
    const auto treated = e.treated.latestKnown(fact.colony, e.s.on);
    const auto [negative, check] = calc::doubtRecheck(fact.event, static_cast<bool>(fact.gift), treated, e.limits);
    Reason why = reasonOf(fact, "4.4.12", "doubt.back_days");
    why.limit("check.full_frames").limit("doubt.recheck_days");
    if (treated) why.limit("trace.masked_days");
    const QString when = checkDay(e, fact.colony, check, e.limits.doubtRecheckDays, e.limits.traceMaskedDays, why);
    why.fact("first day to check", check).fact("first day of a negative", negative);
    return core::rules::told(
        {told},
        BroodReasons::tr("It can be lifted by a clean check of all brood frames, at least %1, %2, or a laboratory's or "
                         "an inspector's negative on or after %3, or an inspector's release that names it, dated after "
                         "%4; with fewer brood frames or none, only the negative or the release.")
            .arg(QString::number(e.limits.checkFullFrames), when, isoText(negative), isoText(fact.event)),
        std::move(why));
}

Told uncheckedReason(const Evidence& e, const UncheckedFact& fact) {
    QStringList sentences;
    Reason why{"4.4.10"};
    const auto checks = e.checks.of(fact.colony);
    const auto negative = latestUpTo(e.findings.negatives.of(fact.colony.value), e.s.on);
    if (checks.empty() && !negative) sentences << BroodReasons::tr("No brood check and no negative is recorded.");
    if (!checks.empty()) sentences << missedLimit(e, fact, checks.back(), why);
    if (negative) {
        why.fact("last negative", *negative);
        sentences << outdated(e, fact, *negative, BroodReasons::tr("The last negative, of %1,").arg(isoText(*negative)),
                              why);
    }
    const Day shown = std::max(fact.maxAge, fact.season);
    if (fact.spoiled && *fact.spoiled >= shown) {
        why.fact("sign or positive", *fact.spoiled);
        sentences << BroodReasons::tr(
                         "A sign or a positive of %1 takes the worth of all that was seen before it and on "
                         "that day.")
                         .arg(isoText(*fact.spoiled));
    }
    if (fact.gift && fact.gift->day >= shown) {
        why.fact("link", *fact.gift);
        sentences
            << BroodReasons::tr("%1, and the giver's brood was not checked that day.").arg(giftText(e, *fact.gift));
    }
    why.fact("first day to check", fact.from).limit("check.min_frames");
    return told(sentences,
                BroodReasons::tr("It can be lifted by a clean check of at least %1 brood frames, or of all where "
                                 "there are fewer, on or after %2, or a laboratory's or an inspector's negative "
                                 "on or after %2; without brood only by the negative.")
                    .arg(QString::number(e.limits.checkMinFrames), isoText(fact.from)),
                std::move(why));
}

} // namespace core::rules
