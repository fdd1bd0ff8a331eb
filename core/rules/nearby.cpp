#include "core/rules/nearby.h"

#include "core/rules/hold_sources.h"

#include <QStringList>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace core::rules {

namespace {

constexpr double kEarthM = 6371.0e3;

double radians(double degrees) { return degrees * std::numbers::pi / 180.0; }

bool hasCoordinates(const SnapYard& yard) { return yard.latitudeDeg && yard.longitudeDeg; }

QString why(const Snapshot& s, const Source& source, YardIx yard, double metres) {
    const LengthUnit unit = s.settings.showLength;
    return QStringLiteral("%1 %2 from the yard %3, where %4 is %5 American foulbrood (last day %6).")
        .arg(QString::number(std::lround(metres * 1000 / millimetresIn(unit))), unitSign(unit), s.yard(yard).name,
             s.colony(source.colony).shown,
             source.confirmed ? QStringLiteral("a confirmed case of") : QStringLiteral("suspected of"),
             isoText(source.last));
}

} // namespace

double metresBetween(const SnapYard& a, const SnapYard& b) {
    // The haversine formula.
    const double latA = radians(*a.latitudeDeg);
    const double latB = radians(*b.latitudeDeg);
    const double sinLat = std::sin((latB - latA) / 2);
    const double sinLon = std::sin(radians(*b.longitudeDeg - *a.longitudeDeg) / 2);
    const double h = sinLat * sinLat + std::cos(latA) * std::cos(latB) * sinLon * sinLon;
    return 2 * kEarthM * std::asin(std::min(1.0, std::sqrt(h)));
}

std::vector<QString> nearAfb(const Evidence& evidence) {
    const Snapshot& s = evidence.s;
    std::vector<QStringList> reasons(s.yards.size());
    for (const Source& source : sourcesOf(evidence)) {
        const SnapStay* place = s.placeOf(source.colony);
        if (source.past || !place || s.on - source.last > evidence.limits.afbYardAfterDays) continue;
        const SnapYard& there = s.yard(place->yard);
        if (!hasCoordinates(there)) continue;
        for (size_t i = 0; i < s.yards.size(); ++i) {
            if (static_cast<qint32>(i) == place->yard.value || !hasCoordinates(s.yards[i])) continue;
            const double metres = metresBetween(s.yards[i], there);
            if (metres <= s.settings.afbNearM.real()) reasons[i] += why(s, source, place->yard, metres);
        }
    }
    std::vector<QString> out;
    for (const QStringList& list : reasons) out.push_back(list.join(u' '));
    return out;
}

} // namespace core::rules
