#include "core/rules/explain.h"

#include "core/base/error.h"
#include "core/rules/compose.h"
#include "core/rules/objections.h"
#include "core/rules/pairs.h"

namespace core::rules {

namespace {

void tellUnion(const DayView& view, ColonyIx a, ColonyIx b, Explanation& e) {
    const Union united = composeUnion(view, {a, b, *e.gain, false});
    e.moved = united.moved;
    e.summary = QStringLiteral("%1 and %2 may unite, gain %3: ").arg(view.name(a), view.name(b)).arg(united.gain) +
                united.because.join(u' ');
    e.why = united.why;
}

QString mayNot(const DayView& view, ColonyIx a, ColonyIx b, const Explanation& e) {
    QStringList rules;
    for (const Objection& o : e.objections) rules += o.rule;
    return QStringLiteral("%1 and %2 may not unite: %3 %4 against it.")
        .arg(view.name(a), view.name(b), rules.join(QLatin1StringView(", ")),
             rules.size() == 1 ? QLatin1StringView("stands") : QLatin1StringView("stand"));
}

} // namespace

Explanation explain(const DayView& view, ColonyIx a, ColonyIx b) {
    if (a == b) throw Error(Error::Kind::BadData, QStringLiteral("%1 cannot be united with itself.").arg(view.name(a)));
    Explanation out{objections(view, a, b), judgePair(view, a, b).gain, {}, {}, {}};
    if (out.objections.empty())
        tellUnion(view, a, b, out);
    else
        out.summary = mayNot(view, a, b, out);
    return out;
}

Explanation explain(const Snapshot& s, ColonyIx a, ColonyIx b) {
    if (a == b)
        throw Error(Error::Kind::BadData, QStringLiteral("%1 cannot be united with itself.").arg(s.colony(a).shown));
    return explain(viewOf(s), a, b);
}

} // namespace core::rules
