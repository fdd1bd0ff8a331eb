#include "ui/look/reason_text.h"

#include <QCoreApplication>
#include <QStringList>

namespace ui::look {

namespace {

struct Reasons {
    Q_DECLARE_TR_FUNCTIONS(Reasons)
};

constexpr size_t kMostFacts = 12; // a chain of links may be long; the sentence has all of it
constexpr qsizetype kLongValue = 20;

QString limitName(const core::rules::Limit& limit) {
    return limit.isSetting ? limit.name : Reasons::tr("fixed by the rule");
}

/// A value table is too long for a line.
QString valueOf(const core::rules::Limit& limit) {
    return limit.value.size() > kLongValue ? Reasons::tr("a table") : limit.value;
}

} // namespace

QString rulesText(const core::Snapshot& s, const core::rules::Reason& why) {
    QStringList limits;
    for (const core::rules::Limit& l : limitsOf(s.settings, why)) {
        QString text = QStringLiteral("%1 %2").arg(limitName(l), valueOf(l));
        if (l.assumption) text += Reasons::tr(" (assumption)");
        limits << text;
    }
    const QString rule = Reasons::tr("Rule %1").arg(QString::fromUtf8(why.rule));
    return limits.isEmpty() ? rule : rule + QStringLiteral(": ") + limits.join(QStringLiteral(" · "));
}

QString reasonTip(const core::Snapshot& s, const core::rules::Reason& why) {
    QStringList lines{Reasons::tr("Rule %1").arg(QString::fromUtf8(why.rule))};
    for (size_t i = 0; i < why.facts.size() && i < kMostFacts; ++i)
        lines << QStringLiteral("%1: %2").arg(factName(why.facts[i]), factText(s, why.facts[i]));
    if (why.facts.size() > kMostFacts) lines << Reasons::tr("… and %1 more").arg(why.facts.size() - kMostFacts);
    for (const core::rules::Limit& l : limitsOf(s.settings, why))
        lines << Reasons::tr("Limit: %1 %2 (%3)").arg(limitName(l), valueOf(l), l.source);
    return lines.join(u'\n');
}

} // namespace ui::look
