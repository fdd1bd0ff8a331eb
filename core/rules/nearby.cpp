#include "core/rules/nearby.h"

#include "core/rules/hold_sources.h"
#include "core/rules/limits.h"

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

void add(NearAfb& out, const Snapshot& s, const Source& source, YardIx yard, double metres) {
    if (!out.because.isEmpty()) out.because += u' ';
    out.because += why(s, source, yard, metres);
    out.why.rule = "4.5";
    out.why.fact("source", source.colony).fact("yard", yard).fact("last day", source.last);
    out.why.fact("metres", qint64(std::lround(metres))).limit("afb.near_m").limit("afb.yard_after_days");
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

std::vector<NearAfb> nearAfb(const Evidence& evidence) {
    const Snapshot& s = evidence.s;
    std::vector<NearAfb> out(s.yards.size());
    for (const Source& source : sourcesOf(evidence)) {
        const SnapStay* place = s.placeOf(source.colony);
        if (source.past || !place || s.on - source.last > evidence.limits.afbYardAfterDays) continue;
        const SnapYard& there = s.yard(place->yard);
        if (!hasCoordinates(there)) continue;
        for (size_t i = 0; i < s.yards.size(); ++i) {
            if (static_cast<qint32>(i) == place->yard.value || !hasCoordinates(s.yards[i])) continue;
            const double metres = metresBetween(s.yards[i], there);
            if (metres <= s.settings.afbNearM.real()) add(out[i], s, source, place->yard, metres);
        }
    }
    for (NearAfb& near : out)
        if (!near.because.isEmpty())
            near.because += QStringLiteral(" A yard within %1 counts as near, for %2 days after the source's last day.")
                                .arg(limitText(s.settings, "afb.near_m"))
                                .arg(evidence.limits.afbYardAfterDays);
    return out;
}

} // namespace core::rules
