#include "core/rules/hold_words.h"

#include <QCoreApplication>
#include <QStringList>

namespace core::rules {

namespace {

struct HoldWords {
    Q_DECLARE_TR_FUNCTIONS(core::rules::HoldWords)
};

QString giftSentence(GiftKind kind) {
    switch (kind) {
    case GiftKind::Frames:
        return HoldWords::tr("%1 received frames from %2 on %3");
    case GiftKind::Brood:
        return HoldWords::tr("%1 received brood from %2 on %3");
    case GiftKind::Bees:
        return HoldWords::tr("%1 received bees from %2 on %3");
    case GiftKind::Box:
        return HoldWords::tr("%1 received a box from %2 on %3");
    case GiftKind::Feed:
        return HoldWords::tr("%1 received feed from %2 on %3");
    case GiftKind::United:
        return HoldWords::tr("%2 was united into %1 on %3");
    case GiftKind::ShakenOut:
        return HoldWords::tr("%2 was shaken out into %1 on %3");
    case GiftKind::Divided:
        return HoldWords::tr("%1 was divided from %2 on %3");
    }
    return {};
}

QString pastText(const Evidence& e, const Source& source) {
    const QString text = source.confirmed
                             ? HoldWords::tr("%1 had American foulbrood from %2 on, until its release on %3.")
                             : HoldWords::tr("%1 was under suspicion of American foulbrood from its sign of "
                                             "%2 on, until its release on %3.");
    return text.arg(shownName(e, source.colony), isoText(source.date), isoText(source.last));
}

} // namespace

Told told(const QStringList& sentences, const QString& lift, Reason why) {
    why.facts.shrink_to_fit();
    why.limits.shrink_to_fit();
    return {sentences.join(u' '), lift, std::move(why)};
}

QString shownName(const Evidence& e, ColonyIx colony) { return e.s.colony(colony).shown; }
QString shownName(const Evidence& e, YardIx yard) { return e.s.yard(yard).name; }

QString giftText(const Snapshot& s, const Gift& gift) {
    return giftSentence(gift.kind).arg(s.colony(gift.to).shown, s.colony(gift.from).shown, isoText(gift.day));
}

QString chainText(const Evidence& e, const std::vector<Gift>& chain) {
    QStringList links;
    for (const Gift& gift : chain) links << giftText(e, gift);
    return links.join(QStringLiteral(", "));
}

QString sourceText(const Evidence& e, const Source& source) {
    if (source.past) return pastText(e, source);
    const bool living = e.s.colony(source.colony).living();
    const QString name = shownName(e, source.colony);
    const QString date = isoText(source.date);
    const QString last = isoText(source.last);
    if (source.confirmed) {
        const QString positive = isoText(*latestUpTo(e.findings.positives.of(source.colony.value), e.s.on));
        return living ? HoldWords::tr("%1 has American foulbrood: first record of %2, positive of %3.")
                            .arg(name, date, positive)
                      : HoldWords::tr(
                            "%1 had American foulbrood: first record of %2, positive of %3; its last day was %4.")
                            .arg(name, date, positive, last);
    }
    return living ? HoldWords::tr("%1 is under suspicion of American foulbrood since its sign of %2.").arg(name, date)
                  : HoldWords::tr(
                        "%1 ended under suspicion of American foulbrood, since its sign of %2; its last day was %3.")
                        .arg(name, date, last);
}

QString diseaseText(Disease disease) {
    return disease == Disease::Afb ? HoldWords::tr("American foulbrood") : HoldWords::tr("European foulbrood");
}

Day lastSign(const Evidence& e, ColonyIx colony) {
    return latestUpTo(e.findings.signs.of(colony.value), e.s.on).value_or(e.s.on);
}

} // namespace core::rules
