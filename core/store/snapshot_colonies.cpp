#include "core/base/damaged.h"
#include "core/base/natural_order.h"
#include "core/store/reads.h"
#include "core/store/snapshot_parts.h"

#include <algorithm>
#include <string>

namespace core::store {

namespace {

constexpr const char* kColonies =
    "SELECT id, label, key, since, ended, end_kind, box, brood_boxes, queen_born FROM colony WHERE since <= ?1";
/// Whoever stands in a yard, and whoever they were united with, shaken out of or divided from.
constexpr const char* kKin =
    "WITH here (id) AS MATERIALIZED (SELECT DISTINCT p.colony FROM stand s JOIN placement p ON p.stand = s.id "
    "WHERE s.yard = ?2 AND p.since <= ?1 AND (p.until IS NULL OR p.until >= ?1)), "
    "kin (id) AS (SELECT id FROM here UNION SELECT l.colony FROM here JOIN lineage l ON l.into_colony = here.id "
    "UNION SELECT l.into_colony FROM here JOIN lineage l ON l.colony = here.id) ";
/// And all of their labels: one that is used again is shown with its day.
constexpr const char* kOfKin = " AND key IN (SELECT c.key FROM kin JOIN colony c ON c.id = kin.id)";

/// A colony and what it is sorted by.
struct Sortable {
    SnapColony colony;
    QString key; ///< of the label, then of what is shown
};

/// Where a label is used again, the plain label names the one that came last (section 1); the others are LABEL@SINCE.
void nameShown(std::vector<Sortable>& rows) {
    std::sort(rows.begin(), rows.end(), [](const Sortable& a, const Sortable& b) {
        return std::pair(QStringView(a.key), a.colony.since) < std::pair(QStringView(b.key), b.colony.since);
    });
    for (size_t i = 0; i < rows.size(); ++i) {
        SnapColony& c = rows[i].colony;
        c.shown = c.label;
        // Keys are compared before any is replaced: the one to the right keeps its own until its turn.
        if (i + 1 == rows.size() || rows[i + 1].key != rows[i].key) continue;
        const QString since = QLatin1Char('@') + isoText(c.since);
        c.shown += since;
        rows[i].key += since;
    }
}

bool livingThenNatural(const Sortable& a, const Sortable& b) {
    if (a.colony.living() != b.colony.living()) return a.colony.living();
    if (const int order = naturalCompareFolded(a.key, b.key); order != 0) return order < 0;
    if (const int order = a.colony.shown.compare(b.colony.shown); order != 0) return order < 0;
    return a.colony.id < b.colony.id;
}

Sortable colonyAt(const Statement& row, Day on, const IdIndex& boxKindAt) {
    Sortable r;
    SnapColony& c = r.colony;
    c.id = {row.integer(0)};
    c.label = row.text(1);
    r.key = row.text(2);
    c.since = row.day(3);
    const auto ended = row.optionalDay(4);
    if (ended && *ended <= on) {
        c.ended = ended;
        c.end = enumAt<EndKind>(row, 5);
    }
    c.boxKind = boxKindAt.at(row.integer(6));
    c.broodBoxes = row.small(7);
    c.queenBorn = row.optionalInt(8);
    if (c.boxKind < 0) throw Damaged(QStringLiteral("The book is damaged: a colony has no box kind."), c.label);
    return r;
}

} // namespace

qint32 colonyNamed(const SnapshotBuild& b, qint64 id) {
    if (const qint32 at = b.colonyAt.at(id); at >= 0) return at;
    Statement row = b.db.prepare("SELECT 1 FROM colony WHERE id = ?");
    row.bind(1, id);
    if (!row.step()) throw brokenLink();
    return -1;
}

void readYards(SnapshotBuild& b) {
    for (const Yard& y : yards(b.db)) {
        b.yardAt.set(y.id.value, static_cast<qint32>(b.s.yards.size()));
        b.s.yards.push_back({y.id, y.name, y.latitudeDeg, y.longitudeDeg, y.gate()});
    }
}

void readColonies(SnapshotBuild& b) {
    IdIndex boxKindAt;
    for (const BoxKind& k : boxKinds(b.db)) {
        boxKindAt.set(k.id.value, static_cast<qint32>(b.s.boxKinds.size()));
        b.s.boxKinds.push_back({k.id, k.name, k.frames, k.widthMm, k.lengthMm});
    }
    std::vector<Sortable> rows;
    Statement row = b.db.prepare(b.only ? std::string(kKin) + kColonies + kOfKin : std::string(kColonies));
    row.bind(1, b.s.on);
    if (b.only) row.bind(2, b.only->value);
    while (row.step()) rows.push_back(colonyAt(row, b.s.on, boxKindAt));
    nameShown(rows);
    std::sort(rows.begin(), rows.end(), livingThenNatural);
    b.s.colonies.reserve(rows.size());
    for (Sortable& r : rows) {
        b.colonyAt.set(r.colony.id.value, static_cast<qint32>(b.s.colonies.size()));
        b.s.colonies.push_back(std::move(r.colony));
    }
}

} // namespace core::store
