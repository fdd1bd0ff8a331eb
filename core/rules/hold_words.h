#pragma once

#include "core/rules/hold_sources.h"
#include "core/rules/reason.h"

#include <QString>

namespace core::rules {

/// A reason in words and as data, and what would lift the hold.
struct Told {
    QString told;
    QString lift;
    Reason why;
};
Told told(const QStringList& sentences, const QString& lift, Reason why);

QString shownName(const Evidence& e, ColonyIx colony);
QString shownName(const Evidence& e, YardIx yard);
/// "C1 received frames from B2 on 2026-05-20": the receiver is the subject, no full stop.
QString giftText(const Snapshot& s, const Gift& gift);
inline QString giftText(const Evidence& e, const Gift& gift) { return giftText(e.s, gift); }
/// The gifts of a chain, joined.
QString chainText(const Evidence& e, const std::vector<Gift>& chain);
/// What the source is, and since when: a whole sentence.
QString sourceText(const Evidence& e, const Source& source);
QString diseaseText(Disease disease);

/// The day from which on a negative of the colony answers its suspicion: of its last sign.
Day lastSign(const Evidence& e, ColonyIx colony);

} // namespace core::rules
