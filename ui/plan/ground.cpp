#include "ui/plan/ground.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>

namespace ui::plan {

namespace {
qint32 toTenth(qint32 mm) { return static_cast<qint32>(std::lround(mm / 100.0)) * 100; }

bool isOf(std::span<const core::ColonyId> some, core::ColonyId one) {
    return std::find(some.begin(), some.end(), one) != some.end();
}

const StandMark* nearestStand(const Scene& scene, core::MmPoint at, int reach) {
    const StandMark* nearest = nullptr;
    qint64 least = qint64{reach} * reach;
    for (const StandMark& s : scene.stands) {
        const qint64 apart = core::squaredDistance(s.at, at);
        if (apart > least) continue;
        least = apart;
        nearest = &s;
    }
    return nearest;
}
} // namespace

core::MmPoint snapped(const Scene& scene, core::MmPoint at, std::span<const core::ColonyId> carried, int reach) {
    if (const StandMark* stand = nearestStand(scene, at, reach)) return stand->at;
    core::MmPoint out{toTenth(at.x), toTenth(at.y)};
    int bestX = reach;
    int bestY = reach;
    for (const HiveMark& h : scene.hives) {
        if (isOf(carried, h.colony)) continue;
        if (std::abs(h.at.x - at.x) < bestX) {
            bestX = std::abs(h.at.x - at.x);
            out.x = h.at.x;
        }
        if (std::abs(h.at.y - at.y) < bestY) {
            bestY = std::abs(h.at.y - at.y);
            out.y = h.at.y;
        }
    }
    return out;
}

std::optional<core::ColonyId> standingAt(const Scene& scene, core::MmPoint at, std::span<const core::ColonyId> carried,
                                         double magnified) {
    std::optional<core::ColonyId> found;
    double nearest = 1e12;
    for (const HiveMark& h : scene.hives) {
        if (isOf(carried, h.colony)) continue;
        const double apart = std::sqrt(static_cast<double>(core::squaredDistance(h.at, at)));
        const double body = std::max<double>(h.widthMm, h.widthMm * magnified / 2);
        if (apart >= body || apart >= nearest) continue;
        nearest = apart;
        found = h.colony;
    }
    return found;
}

std::optional<size_t> neighbourOf(const Scene& scene, std::optional<size_t> chosen, bool forward) {
    if (scene.hives.empty()) return std::nullopt;
    if (!chosen) return forward ? size_t{0} : scene.hives.size() - 1;
    if (forward) return *chosen + 1 < scene.hives.size() ? std::optional<size_t>(*chosen + 1) : std::nullopt;
    return *chosen > 0 ? std::optional<size_t>(*chosen - 1) : std::nullopt;
}

} // namespace ui::plan
