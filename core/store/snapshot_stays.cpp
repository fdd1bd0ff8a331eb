#include "core/store/snapshot_parts.h"

#include <algorithm>
#include <tuple>

namespace core::store {

namespace {

constexpr int kHeadingDeg = 180; ///< where none was ever recorded (section 3)

struct PlacedStand {
    YardIx yard;
    StandId id;
    QString name;
    MmPoint at;
};

struct Placed {
    ColonyIx colony;
    Day since;
    bool carried = false; ///< not the colony's own row
    qint64 id = 0;
    qint32 stand = 0;
    std::optional<int> heading;
};

std::vector<PlacedStand> readStands(const SnapshotBuild& b, IdIndex& standAt) {
    std::vector<PlacedStand> stands;
    Statement row = b.db.prepare("SELECT id, yard, name, x_mm, y_mm FROM stand");
    while (row.step()) {
        standAt.set(row.integer(0), static_cast<qint32>(stands.size()));
        stands.push_back({{b.yardAt.at(row.integer(1))}, {row.integer(0)}, row.text(2), {row.small(3), row.small(4)}});
    }
    return stands;
}

std::vector<Placed> readPlaced(const SnapshotBuild& b, const IdIndex& standAt) {
    std::vector<Placed> placed;
    Statement row = b.db.prepare("SELECT colony, since, first, id, stand, heading_deg FROM placement WHERE since <= ?");
    row.bind(1, b.s.on);
    while (row.step()) {
        const ColonyIx colony{b.colonyAt.at(row.integer(0))};
        if (colony.value < 0) continue;
        placed.push_back(
            {colony, row.day(1), row.integer(2) == 0, row.integer(3), standAt.at(row.integer(4)), row.optionalInt(5)});
    }
    std::sort(placed.begin(), placed.end(), [](const Placed& x, const Placed& y) {
        return std::tie(x.colony, x.since, x.carried, x.id) < std::tie(y.colony, y.since, y.carried, y.id);
    });
    return placed;
}

} // namespace

void readStays(SnapshotBuild& b) {
    IdIndex standAt;
    const std::vector<PlacedStand> stands = readStands(b, standAt);
    const std::vector<Placed> placed = readPlaced(b, standAt);
    b.s.stays.reserve(placed.size());
    int heading = kHeadingDeg;
    for (size_t i = 0; i < placed.size(); ++i) {
        const Placed& p = placed[i];
        if (i == 0 || placed[i - 1].colony != p.colony) heading = kHeadingDeg;
        heading = p.heading.value_or(heading);
        const PlacedStand& stand = stands.at(static_cast<size_t>(p.stand));
        const bool last = i + 1 == placed.size() || placed[i + 1].colony != p.colony;
        b.s.stays.push_back({p.colony, stand.yard, stand.id, stand.name, stand.at, heading, p.since,
                             last ? b.s.colony(p.colony).ended : std::optional<Day>(placed[i + 1].since)});
    }
}

} // namespace core::store
