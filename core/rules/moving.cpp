#include "core/rules/moving.h"

#include "core/rules/nearby.h"
#include "core/rules/season.h"

namespace core::rules {

namespace {

__extension__ using Wide = __int128;

/// Metres in the unit shown, without needless zeros.
QString lengthOf(const Settings& settings, Millionths metres) {
    const LengthUnit unit = settings.showLength;
    return QStringLiteral("%1 %2").arg(decimalText(lengthTenths(metres.value / 1000, unit), 1), unitSign(unit));
}

/// Whether it lies above the step and below the far distance; both exactly from the millimetres.
bool inBetween(const Settings& settings, MmPoint a, MmPoint b) {
    const Wide squared = Wide(squaredDistance(a, b)) * 1'000'000; // micrometres²
    const Wide step = settings.moveStepM.value;
    const Wide far = settings.moveFarM.value;
    return squared > step * step && squared < far * far;
}

QString custom(const Snapshot& s, const QString& way) {
    return QStringLiteral("Moving caution: %1; above %2 and below %3 in the flying season foragers return to the old "
                          "place (custom).")
        .arg(way, lengthOf(s.settings, s.settings.moveStepM), lengthOf(s.settings, s.settings.moveFarM));
}

} // namespace

bool inFlyingSeason(const Snapshot& s, YardIx yard) {
    return inSeason(s.on, s.settings.seasonStart, s.settings.fallEnd, s.yard(yard).southern());
}

const SnapStay* knownPlace(const Snapshot& s, ColonyIx colony) {
    const auto stays = s.staysOf(colony);
    if (stays.empty()) return nullptr;
    const bool carriedToday = stays.size() > 1 && stays.back().since == s.on;
    return carriedToday ? &stays[stays.size() - 2] : &stays.back();
}

std::optional<MovingCaution> movingCaution(const Snapshot& s, ColonyIx colony, YardIx to, MmPoint at) {
    const SnapStay* known = knownPlace(s, colony);
    if (!known || !inFlyingSeason(s, known->yard)) return std::nullopt;
    const QString& name = s.colony(colony).shown;
    const LengthUnit unit = s.settings.showLength;
    if (known->yard == to) {
        if (!inBetween(s.settings, known->at, at)) return std::nullopt;
        const QString far = decimalText(distanceTenths(known->at, at, unit), 1);
        return MovingCaution{true, custom(s, QStringLiteral("%1 goes %2 %3").arg(name, far, unitSign(unit)))};
    }
    const SnapYard& a = s.yard(known->yard);
    const SnapYard& b = s.yard(to);
    if (!a.latitudeDeg || !a.longitudeDeg || !b.latitudeDeg || !b.longitudeDeg)
        return MovingCaution{false,
                             QStringLiteral("Moving caution: how far %1 lies from %2 is not recorded; nearer than "
                                            "%3 the foragers of %4 return in the flying season (custom).")
                                 .arg(a.name, b.name, lengthOf(s.settings, s.settings.moveFarM), name)};
    const double metres = metresBetween(a, b);
    if (metres <= s.settings.moveStepM.real() || metres >= s.settings.moveFarM.real()) return std::nullopt;
    const QString far = decimalText(lengthTenths(static_cast<qint64>(metres * 1000), unit), 1);
    return MovingCaution{true, custom(s, QStringLiteral("%1 goes %2 %3").arg(name, far, unitSign(unit)))};
}

} // namespace core::rules
