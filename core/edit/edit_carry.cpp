#include "core/edit/carrying.h"
#include "core/edit/edit_checks.h"
#include "core/edit/edits.h"

#include <QStringList>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <set>

namespace core::edit {

namespace {

/// The eight winds, from north clockwise.
QString windText(MmPoint step) {
    const double turns = std::atan2(double(step.x), double(step.y)) / (2 * std::numbers::pi);
    switch ((static_cast<int>(std::lround(turns * 8)) + 8) % 8) {
    case 0:
        return Edits::tr("north");
    case 1:
        return Edits::tr("north-east");
    case 2:
        return Edits::tr("east");
    case 3:
        return Edits::tr("south-east");
    case 4:
        return Edits::tr("south");
    case 5:
        return Edits::tr("south-west");
    case 6:
        return Edits::tr("west");
    default:
        return Edits::tr("north-west");
    }
}

QString distanceText(const EditContext& c, MmPoint a, MmPoint b) {
    const LengthUnit unit = c.settings().showLength;
    return QStringLiteral("%1 %2").arg(decimalText(distanceTenths(a, b, unit), 1), unitSign(unit));
}

/// "A1", "A1, A2 and A3", "12 hives"
QString namesOf(const EditContext& c, const std::vector<OnTheWay>& hives) {
    constexpr size_t kMostNamed = 4;
    if (hives.size() > kMostNamed) return Edits::tr("%1 hives").arg(hives.size());
    QStringList names;
    for (const OnTheWay& hive : hives) names << shownName(c, hive.colony, hive.to.day);
    const QString last = names.takeLast();
    return names.isEmpty() ? last : Edits::tr("%1 and %2").arg(names.join(QStringLiteral(", ")), last);
}

/// How far all of them go alike, or where to.
QString wayText(const EditContext& c, const std::vector<OnTheWay>& hives) {
    const OnTheWay& first = hives.front();
    const MmPoint step = first.to.to - first.stand.at;
    const auto oneYard = [&](const OnTheWay& h) { return h.to.yard == first.to.yard && !h.staysInYard(); };
    const auto alike = [&](const OnTheWay& h) { return h.staysInYard() && h.to.to - h.stand.at == step; };
    if (std::all_of(hives.begin(), hives.end(), oneYard))
        return Edits::tr(" to %1").arg(needYard(c, first.to.yard).name);
    if (!std::all_of(hives.begin(), hives.end(), alike)) return {};
    return QStringLiteral(" %1 %2").arg(distanceText(c, first.stand.at, first.to.to), windText(step));
}

} // namespace

ChangeSet carryHives(const EditContext& c, const std::vector<CarryTo>& carries) {
    std::vector<OnTheWay> hives;
    std::set<ColonyId> once;
    for (const CarryTo& carry : carries) {
        if (!once.insert(carry.colony).second) refuse(Edits::tr("One hive is carried to one place."));
        if (carry.day != carries.front().day) refuse(Edits::tr("Hives carried together are carried on one day."));
        OnTheWay hive = onTheWay(c, carry);
        if (!hive.movesNowhere()) hives.push_back(std::move(hive));
    }
    if (hives.empty()) return {};
    ChangeSet change;
    change.rows = setDown(c, hives);
    change.text = Edits::tr("Carried %1").arg(namesOf(c, hives)) + wayText(c, hives);
    change.against = againstYards(hives);
    return change;
}

ChangeSet carryTo(const EditContext& c, const CarryTo& carry) { return carryHives(c, {carry}); }

ChangeSet carryHive(const EditContext& c, ColonyId id, MmPoint to, Day day) {
    const auto open = c.openPlacement(id);
    const auto stand = open ? c.stand(open->stand) : std::nullopt;
    return carryTo(c, {id, stand ? stand->yard : YardId{}, to, std::nullopt, day});
}

ChangeSet swapHives(const EditContext& c, ColonyId one, ColonyId other, Day day) {
    if (one == other) refuse(Edits::tr("Two hives are swapped."));
    const auto placeOf = [&](ColonyId id) {
        const auto open = c.openPlacement(id);
        const auto stand = open ? c.stand(open->stand) : std::nullopt;
        if (!stand) refuse(Edits::tr("%1 stands on no stand.").arg(needColony(c, id).label));
        return *stand;
    };
    const Stand a = placeOf(one);
    const Stand b = placeOf(other);
    if (a.yard != b.yard) refuse(Edits::tr("Hives are swapped within one yard."));
    ChangeSet change =
        carryHives(c, {{one, b.yard, b.at, std::nullopt, day}, {other, a.yard, a.at, std::nullopt, day}});
    change.text = Edits::tr("Swapped %1 and %2, %3 apart")
                      .arg(shownName(c, needColony(c, one), day), shownName(c, needColony(c, other), day),
                           distanceText(c, a.at, b.at));
    return change;
}

} // namespace core::edit
