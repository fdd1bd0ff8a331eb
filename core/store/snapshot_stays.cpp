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
    StandId stand;
    std::optional<int> heading;
};

PlacedStand standAt(const SnapshotBuild& b, const Statement& row) {
    return {{neededAt(b.yardAt, row.integer(1))}, {row.integer(0)}, row.text(2), {row.small(3), row.small(4)}};
}

/// All, or of a part of the book those that are asked for.
std::vector<PlacedStand> readStands(const SnapshotBuild& b, const std::vector<Placed>& placed, IdIndex& at) {
    std::vector<PlacedStand> stands;
    Statement row = b.db.prepare(b.only ? "SELECT id, yard, name, x_mm, y_mm FROM stand WHERE id = ?"
                                        : "SELECT id, yard, name, x_mm, y_mm FROM stand");
    const auto take = [&] {
        while (row.step()) {
            at.set(row.integer(0), static_cast<qint32>(stands.size()));
            stands.push_back(standAt(b, row));
        }
    };
    if (!b.only) take();
    for (const Placed& p : placed) {
        if (!b.only || at.at(p.stand.value) >= 0) continue;
        row.bind(1, p.stand.value);
        take();
        row.reset();
    }
    return stands;
}

Placed placedAt(const SnapshotBuild& b, const Statement& row) {
    return {{colonyNamed(b, row.integer(0))},
            row.day(1),
            row.integer(2) == 0,
            row.integer(3),
            {row.integer(4)},
            row.optionalInt(5)};
}

std::vector<Placed> readPlaced(const SnapshotBuild& b) {
    std::vector<Placed> placed;
    if (b.only) { // said in two, so that the two indexes of a colony's placements are used
        Statement row =
            b.db.prepare("SELECT colony, since, first, id, stand, heading_deg FROM placement "
                         "WHERE since <= ?2 AND ((colony = ?1 AND first = 1) OR (colony = ?1 AND first = 0))");
        row.bind(2, b.s.on);
        for (const SnapColony& colony : b.s.colonies) {
            row.bind(1, colony.id.value);
            while (row.step()) placed.push_back(placedAt(b, row));
            row.reset();
        }
    } else {
        Statement row =
            b.db.prepare("SELECT colony, since, first, id, stand, heading_deg FROM placement WHERE since <= ?");
        row.bind(1, b.s.on);
        while (row.step())
            if (const Placed p = placedAt(b, row); p.colony.value >= 0) placed.push_back(p);
    }
    std::sort(placed.begin(), placed.end(), [](const Placed& x, const Placed& y) {
        return std::tie(x.colony, x.since, x.carried, x.id) < std::tie(y.colony, y.since, y.carried, y.id);
    });
    return placed;
}

} // namespace

void readStays(SnapshotBuild& b) {
    const std::vector<Placed> placed = readPlaced(b);
    IdIndex standIx;
    const std::vector<PlacedStand> stands = readStands(b, placed, standIx);
    b.s.stays.reserve(placed.size());
    int heading = kHeadingDeg;
    for (size_t i = 0; i < placed.size(); ++i) {
        const Placed& p = placed[i];
        if (i == 0 || placed[i - 1].colony != p.colony) heading = kHeadingDeg;
        heading = p.heading.value_or(heading);
        const PlacedStand& stand = stands[static_cast<size_t>(neededAt(standIx, p.stand.value))];
        const bool last = i + 1 == placed.size() || placed[i + 1].colony != p.colony;
        b.s.stays.push_back({p.colony, stand.yard, stand.id, stand.name, stand.at, heading, p.since,
                             last ? b.s.colony(p.colony).ended : std::optional<Day>(placed[i + 1].since)});
    }
}

} // namespace core::store
