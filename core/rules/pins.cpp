#include "core/rules/pins.h"

#include "core/base/error.h"
#include "core/rules/objections.h"
#include "core/rules/pairs.h"

#include <QStringList>

#include <algorithm>
#include <set>

namespace core::rules {

namespace {

[[noreturn]] void refuse(const QString& why) { throw Error(Error::Kind::BadData, why); }

QString named(const DayView& view, ColonyPair pin) { return view.name(pin.first) + u'+' + view.name(pin.second); }

QString against(const DayView& view, ColonyPair pin) {
    QStringList parts;
    for (const Objection& o : objections(view, pin.first, pin.second))
        if (o.rule != QLatin1StringView("4.7.10")) parts += o.rule + QLatin1StringView(": ") + o.because;
    return parts.join(u' ');
}

ChosenPair checked(const DayView& view, const std::vector<YardIx>& yards, ColonyPair pin) {
    for (const ColonyIx c : {pin.first, pin.second})
        if (!std::binary_search(yards.begin(), yards.end(), view.of(c).yard))
            refuse(QStringLiteral("%1 cannot be pinned: %2 stands in the yard %3, which the plan is not for.")
                       .arg(named(view, pin), view.name(c), view.s.yard(view.of(c).yard).name));
    const PairJudgement judged = judgePair(view, pin.first, pin.second);
    if (!judged.mayPin()) refuse(QStringLiteral("%1 cannot be pinned. %2").arg(named(view, pin), against(view, pin)));
    return {pin.first, pin.second, *judged.gain, true};
}

} // namespace

ColonyPair inOrder(ColonyPair pair) {
    if (pair.second < pair.first) std::swap(pair.first, pair.second);
    return pair;
}

std::vector<ChosenPair> checkedPins(const DayView& view, const std::vector<YardIx>& yards, const PlanRequest& request) {
    std::set<ColonyPair> pins, forbids;
    for (const ColonyPair& pin : request.pins) pins.insert(inOrder(pin));
    for (const ColonyPair& pair : request.forbids) forbids.insert(inOrder(pair));
    std::set<ColonyIx> used;
    std::vector<ChosenPair> out;
    for (const ColonyPair& pin : pins) {
        if (pin.first == pin.second)
            refuse(QStringLiteral("%1 cannot be pinned: a colony is not united with itself.").arg(named(view, pin)));
        for (const ColonyIx c : {pin.first, pin.second})
            if (!used.insert(c).second)
                refuse(QStringLiteral("%1 is pinned twice: a colony can be in one union only.").arg(view.name(c)));
        for (const ColonyIx c : {pin.first, pin.second})
            if (std::find(request.leftOut.begin(), request.leftOut.end(), c) != request.leftOut.end())
                refuse(QStringLiteral("%1 cannot be pinned: %2 is left out.").arg(named(view, pin), view.name(c)));
        if (forbids.contains(pin))
            refuse(QStringLiteral("%1 is pinned and forbidden: only one of the two can be.").arg(named(view, pin)));
        out.push_back(checked(view, yards, pin));
    }
    if (request.most && std::cmp_greater(pins.size(), *request.most))
        refuse(
            QStringLiteral("%1 unions are pinned, but at most %2 are asked for.").arg(pins.size()).arg(*request.most));
    return out;
}

} // namespace core::rules
