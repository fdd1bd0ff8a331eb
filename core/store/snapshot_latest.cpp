#include "core/store/snapshot_parts.h"

#include <algorithm>

namespace core::store {

namespace {

/// The latest visit's own row: what it has needs no further seek.
constexpr const char* kVisit =
    "SELECT day, id, bees_top_q, bees_bottom_q, upper_bees_top_q, upper_bees_bottom_q, stores_q, upper_stores_q, "
    "brood_frames, queen, gross_dag, supers, mites, mite_sample FROM visit INDEXED BY visit_day "
    "WHERE colony = ? AND day <= ? ORDER BY day DESC LIMIT 1";
constexpr int kVisitCount = 2; ///< where the columns of each kind begin in it
constexpr int kVisitStores = 6;
constexpr int kVisitBrood = 8;
constexpr int kVisitQueen = 9;
constexpr int kVisitWeight = 10;
constexpr int kVisitMites = 12;
constexpr const char* kCount =
    "SELECT day, bees_top_q, bees_bottom_q, upper_bees_top_q, upper_bees_bottom_q, stores_q, upper_stores_q, "
    "brood_frames FROM visit INDEXED BY visit_count WHERE colony = ? AND day <= ? AND (bees_top_q IS NOT NULL OR "
    "bees_bottom_q IS NOT NULL OR upper_bees_top_q IS NOT NULL OR upper_bees_bottom_q IS NOT NULL) "
    "ORDER BY day DESC LIMIT 1";
constexpr const char* kStores =
    "SELECT day, stores_q, upper_stores_q FROM visit INDEXED BY visit_stores WHERE colony = ? AND day <= ? "
    "AND (stores_q IS NOT NULL OR upper_stores_q IS NOT NULL) ORDER BY day DESC LIMIT 1";
constexpr const char* kQueen = "SELECT day, queen FROM visit INDEXED BY visit_queen WHERE colony = ? AND day <= ? "
                               "AND queen IS NOT NULL ORDER BY day DESC";
constexpr const char* kBrood = "SELECT day, brood_frames FROM visit INDEXED BY visit_brood WHERE colony = ? AND "
                               "day <= ? AND brood_frames IS NOT NULL ORDER BY day DESC LIMIT 1";
constexpr const char* kWeight = "SELECT day, gross_dag, supers FROM visit INDEXED BY visit_weight WHERE colony = ? "
                                "AND day <= ? AND gross_dag IS NOT NULL ORDER BY day DESC LIMIT 1";
constexpr const char* kMites = "SELECT day, mites, mite_sample FROM visit INDEXED BY visit_mites WHERE colony = ? "
                               "AND day <= ? AND mites IS NOT NULL ORDER BY day DESC LIMIT 1";
constexpr const char* kBoxes = "SELECT day, boxes FROM visit INDEXED BY visit_boxes WHERE colony = ? AND day <= ? "
                               "AND boxes IS NOT NULL ORDER BY day DESC LIMIT 1";

bool settlesQueen(QueenSeen seen) {
    return seen == QueenSeen::Seen || seen == QueenSeen::Eggs || seen == QueenSeen::Virgin ||
           seen == QueenSeen::LayingWorkers;
}

// A kind's columns from column `c` on, the day in column 0.

SnapCount countAt(const Statement& r, int c) {
    return {r.day(0),
            optionalUnit<Quarters>(r, c),
            optionalUnit<Quarters>(r, c + 1),
            optionalUnit<Quarters>(r, c + 2),
            optionalUnit<Quarters>(r, c + 3),
            optionalUnit<Quarters>(r, c + 4),
            optionalUnit<Quarters>(r, c + 5),
            r.optionalInt(c + 6),
            1};
}
SnapStores storesAt(const Statement& r, int c) {
    return {r.day(0), optionalUnit<Quarters>(r, c), optionalUnit<Quarters>(r, c + 1)};
}
SnapBrood broodAt(const Statement& r, int c) { return {r.day(0), r.small(c)}; }
SnapWeight weightAt(const Statement& r, int c) { return {r.day(0), {r.small(c)}, r.small(c + 1)}; }
SnapMites mitesAt(const Statement& r, int c) { return {r.day(0), r.small(c), r.small(c + 1)}; }
SnapQueen queenAt(const Statement& r, int c) { return {r.day(0), enumAt<QueenSeen>(r, c)}; }

bool anyOf(const Statement& r, int first, int count) {
    for (int c = first; c < first + count; ++c)
        if (!r.isNull(c)) return true;
    return false;
}

/// The latest visit, then one seek for each kind that it lacks, through the partial index of that kind.
class LatestReader {
public:
    explicit LatestReader(SnapshotBuild& b)
        : m_b(b),
          m_visit(b.db.prepare(kVisit)),
          m_count(b.db.prepare(kCount)),
          m_stores(b.db.prepare(kStores)),
          m_queen(b.db.prepare(kQueen)),
          m_brood(b.db.prepare(kBrood)),
          m_weight(b.db.prepare(kWeight)),
          m_mites(b.db.prepare(kMites)),
          m_boxes(b.db.prepare(kBoxes)),
          m_unions(b.s.colonies.size()) {
        for (const SnapLineage& l : b.s.lineage)
            if (l.how == LineageHow::United) m_unions[static_cast<size_t>(l.into.value)].push_back(l.day);
        for (Statement* each : {&m_visit, &m_count, &m_stores, &m_queen, &m_brood, &m_weight, &m_mites, &m_boxes})
            each->bind(2, b.s.on);
    }

    void read(size_t position, SnapLatest& to) {
        const qint64 id = m_b.s.colonies[position].id.value;
        one(m_visit, id, [&](const Statement& r) { takeVisit(r, to); });
        if (!to.visit) return readBoxes(position, to);
        seek(m_count, id, to.count, countAt);
        seek(m_stores, id, to.stores, storesAt);
        seek(m_brood, id, to.brood, broodAt);
        seek(m_weight, id, to.weight, weightAt);
        seek(m_mites, id, to.mites, mitesAt);
        if (to.queen.empty()) readQueen(id, to);
        readBoxes(position, to);
    }

private:
    template <class Take> static void one(Statement& statement, qint64 colony, Take&& take) {
        statement.bind(1, colony);
        if (statement.step()) take(statement);
        statement.reset();
    }

    template <class T>
    static void seek(Statement& statement, qint64 colony, std::optional<T>& to, T (*at)(const Statement&, int)) {
        if (!to) one(statement, colony, [&](const Statement& r) { to = at(r, 1); });
    }

    void takeVisit(const Statement& r, SnapLatest& to) const {
        to.visit = r.day(0);
        to.visitSigns = m_b.signs.of(r.integer(1));
        if (anyOf(r, kVisitCount, 4)) to.count = countAt(r, kVisitCount);
        if (anyOf(r, kVisitStores, 2)) to.stores = storesAt(r, kVisitStores);
        if (!r.isNull(kVisitBrood)) to.brood = broodAt(r, kVisitBrood);
        if (!r.isNull(kVisitWeight)) to.weight = weightAt(r, kVisitWeight);
        if (!r.isNull(kVisitMites)) to.mites = mitesAt(r, kVisitMites);
        if (r.isNull(kVisitQueen)) return;
        const SnapQueen queen = queenAt(r, kVisitQueen);
        if (settlesQueen(queen.seen)) to.queen = {queen}; // else what came before it counts too
    }

    void readQueen(qint64 id, SnapLatest& to) {
        m_queen.bind(1, id);
        while (m_queen.step()) {
            to.queen.push_back(queenAt(m_queen, 1));
            if (settlesQueen(to.queen.back().seen)) break;
        }
        m_queen.reset();
        std::reverse(to.queen.begin(), to.queen.end());
    }

    struct Boxes {
        Day since; ///< the day of the visit or union that says so
        int count = 1;
    };

    /// Rule 4.0, boxes: the latest visit with boxes or union on or before the day; at a tie the union.
    Boxes boxesOn(size_t position, Day day) {
        const SnapColony& colony = m_b.s.colonies[position];
        const auto& unions = m_unions[position];
        const auto after = std::upper_bound(unions.begin(), unions.end(), day);
        const bool united = after != unions.begin();
        Boxes boxes = united ? Boxes{*(after - 1), 2} : Boxes{colony.since, colony.broodBoxes};
        m_boxes.bind(2, day);
        one(m_boxes, colony.id.value, [&](const Statement& r) {
            const Day visited = r.day(0);
            if (!united || visited > boxes.since) boxes = {visited, r.small(1)};
        });
        return boxes;
    }

    void readBoxes(size_t position, SnapLatest& to) {
        const Boxes now = boxesOn(position, m_b.s.on);
        to.boxes = now.count;
        if (to.count) to.count->boxes = now.since <= to.count->day ? now.count : boxesOn(position, to.count->day).count;
    }

    SnapshotBuild& m_b;
    Statement m_visit, m_count, m_stores, m_queen, m_brood, m_weight, m_mites, m_boxes;
    std::vector<std::vector<Day>> m_unions; ///< of each colony, as `into`, by day
};

} // namespace

void readLatest(SnapshotBuild& b) {
    b.s.latest.resize(b.s.colonies.size());
    LatestReader reader(b);
    for (size_t i = 0; i < b.s.colonies.size(); ++i)
        if (b.s.colonies[i].living()) reader.read(i, b.s.latest[i]);
}

} // namespace core::store
