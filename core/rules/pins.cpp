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

ChosenPair checked(const DayView& view, const std::vector<YardIx>& yards, ColonyPair pin) {
    for (const ColonyIx c : {pin.first, pin.second})
        if (!std::binary_search(yards.begin(), yards.end(), view.of(c).yard))
            refuse(QStringLiteral("%1 cannot be pinned: %2 stands in the yard %3, which the plan is not for.")
                       .arg(named(view, pin), view.name(c), view.s.yard(view.of(c).yard).name));
    const QString barred = pinBarred(view, pin);
    if (!barred.isEmpty()) refuse(QStringLiteral("%1 cannot be pinned. %2").arg(named(view, pin), barred));
    return {pin.first, pin.second, *judgePair(view, pin.first, pin.second).gain, true};
}

} // namespace

QString pinBarred(const DayView& view, ColonyPair pin) {
    if (judgePair(view, pin.first, pin.second).mayPin()) return {};
    QStringList parts;
    for (const Objection& o : objections(view, pin.first, pin.second))
        if (o.rule != QLatin1StringView("4.7.10")) parts += o.rule + QLatin1StringView(": ") + o.because;
    return parts.join(u' ');
}

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
    for (const YardMost& most : request.mostIn)
        if (const int left = leftIn(view, request, out, most.yard).value_or(0); left < 0)
            refuse(QStringLiteral("In %1 %2 unions are pinned, but at most %3 are asked for.")
                       .arg(view.s.yard(most.yard).name)
                       .arg(most.unions - left)
                       .arg(most.unions));
    if (request.most && !request.mostIn.empty())
        refuse(QStringLiteral("A limit is asked for over all yards and for one yard: only one of the two can be."));
    if (request.most && std::cmp_greater(pins.size(), *request.most))
        refuse(
            QStringLiteral("%1 unions are pinned, but at most %2 are asked for.").arg(pins.size()).arg(*request.most));
    return out;
}

} // namespace core::rules
