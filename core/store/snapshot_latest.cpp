#include "core/store/snapshot_parts.h"

#include <algorithm>

namespace core::store {

namespace {

constexpr const char* kVisit = "SELECT day, id FROM visit INDEXED BY visit_day WHERE colony = ? AND day <= ? "
                               "ORDER BY day DESC LIMIT 1";
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

/// One seek a colony and kind, through the partial index of that kind.
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
        readVisit(id, to);
        if (!to.visit) return readBoxes(position, to);
        readCount(id, to);
        readStores(id, to);
        readQueen(id, to);
        one(m_brood, id, [&](const Statement& r) { to.brood = {r.day(0), r.small(1)}; });
        one(m_weight, id, [&](const Statement& r) { to.weight = {r.day(0), {r.small(1)}, r.small(2)}; });
        one(m_mites, id, [&](const Statement& r) { to.mites = {r.day(0), r.small(1), r.small(2)}; });
        readBoxes(position, to);
    }

private:
    template <class Take> static void one(Statement& statement, qint64 colony, Take&& take) {
        statement.bind(1, colony);
        if (statement.step()) take(statement);
        statement.reset();
    }

    void readVisit(qint64 id, SnapLatest& to) {
        one(m_visit, id, [&](const Statement& r) {
            to.visit = r.day(0);
            to.visitSigns = m_b.signs.of(r.integer(1));
        });
    }

    void readCount(qint64 id, SnapLatest& to) {
        one(m_count, id, [&](const Statement& r) {
            to.count = SnapCount{r.day(0),
                                 optionalUnit<Quarters>(r, 1),
                                 optionalUnit<Quarters>(r, 2),
                                 optionalUnit<Quarters>(r, 3),
                                 optionalUnit<Quarters>(r, 4),
                                 optionalUnit<Quarters>(r, 5),
                                 optionalUnit<Quarters>(r, 6),
                                 r.optionalInt(7),
                                 1};
        });
    }

    void readStores(qint64 id, SnapLatest& to) {
        one(m_stores, id, [&](const Statement& r) {
            to.stores = {r.day(0), optionalUnit<Quarters>(r, 1), optionalUnit<Quarters>(r, 2)};
        });
    }

    void readQueen(qint64 id, SnapLatest& to) {
        m_queen.bind(1, id);
        while (m_queen.step()) {
            to.queen.push_back({m_queen.day(0), enumAt<QueenSeen>(m_queen, 1)});
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
