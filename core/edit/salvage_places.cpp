#include "core/edit/salvage_places.h"

#include "core/base/natural_order.h"
#include "core/edit/edit_checks.h"
#include "core/store/row_store.h"

#include <map>
#include <optional>
#include <vector>

namespace core::edit {

namespace {

using store::Statement;

/// The yard of places that nobody knows, made when it is first needed; its stands lie in a row.
class LostYard {
public:
    explicit LostYard(const store::Database& db) : m_db(db) {}

    void addStand(qint64 id, const QString& wanted) {
        constexpr qint64 kApartMm = 2000;
        QString name = wanted.left(50);
        for (int n = 2; m_names.contains(folded(name)); ++n) name = QStringLiteral("%1 %2").arg(wanted.left(50)).arg(n);
        const qint64 place = std::ssize(m_names);
        m_names[folded(name)] = id;
        constexpr qint64 kInARow = 40;
        m_db.prepare("INSERT INTO stand (id, yard, name, key, x_mm, y_mm, removed) VALUES (?, ?, ?, ?, ?, ?, 0)")
            .bind(1, id)
            .bind(2, yard())
            .bind(3, name)
            .bind(4, folded(name))
            .bind(5, place % kInARow * kApartMm)
            .bind(6, place / kInARow * kApartMm)
            .run();
    }
    qint64 newStand(const QString& name) {
        const qint64 id = store::maxId(m_db, Table::Stand) + 1;
        addStand(id, name);
        return id;
    }
    QString name() const { return m_name; }

private:
    qint64 yard() {
        if (m_yard) return *m_yard;
        for (int n = 1;; ++n) {
            m_name = n == 1 ? Edits::tr("Places lost") : Edits::tr("Places lost %1").arg(n);
            Statement taken = m_db.prepare("SELECT 1 FROM yard WHERE key = ?");
            taken.bind(1, folded(m_name));
            if (!taken.step()) break;
        }
        m_yard = store::maxId(m_db, Table::Yard) + 1;
        m_db.prepare("INSERT INTO yard (id, name, key, closed) VALUES (?, ?, ?, 0)")
            .bind(1, *m_yard)
            .bind(2, m_name)
            .bind(3, folded(m_name))
            .run();
        return *m_yard;
    }

    const store::Database& m_db;
    std::optional<qint64> m_yard;
    QString m_name;
    std::map<QString, qint64> m_names;
};

struct Stay {
    qint64 id = 0;
    QString since;
    QString until; ///< empty: it stands there
    bool first = false;
};

struct Hive {
    qint64 id = 0;
    QString label;
    QString since;
    QString ended;
};

std::vector<Hive> brokenHives(const store::Database& db) {
    std::vector<Hive> hives;
    Statement row = db.prepare(
        "SELECT id, label, since, ended FROM colony c WHERE "
        "NOT EXISTS (SELECT 1 FROM placement p WHERE p.colony = c.id AND p.first = 1 AND p.since = c.since) OR "
        "EXISTS (SELECT 1 FROM (SELECT until, lead(since) OVER (ORDER BY since, first DESC, id) AS next "
        "FROM placement WHERE colony = c.id) p WHERE p.until IS NOT coalesce(p.next, c.ended)) ORDER BY id");
    while (row.step()) hives.push_back({row.integer(0), row.text(1), row.text(2), row.text(3)});
    return hives;
}

std::vector<Stay> staysOf(const store::Database& db, qint64 colony) {
    std::vector<Stay> stays;
    Statement row =
        db.prepare("SELECT id, since, until, first FROM placement WHERE colony = ? ORDER BY since, first DESC, id");
    row.bind(1, colony);
    while (row.step()) stays.push_back({row.integer(0), row.text(1), row.text(2), row.integer(3) != 0});
    return stays;
}

/// Fills the days of one hive that no place is known for.
class Joining {
public:
    Joining(const store::Database& db, LostYard& yard, Hive hive) : m_db(db), m_yard(yard), m_hive(std::move(hive)) {}

    void run() {
        QString at = m_hive.since;
        bool begun = false;
        bool open = false;
        for (const Stay& stay : staysOf(m_db, m_hive.id)) {
            if (stay.since > at || (!begun && !stay.first)) fill(at, stay.since, !begun);
            begun = true;
            at = stay.until;
            open = stay.until.isEmpty();
            m_last = stay.id;
            m_lastSince = stay.since;
        }
        if (begun && open) return;
        if (!begun || m_hive.ended.isEmpty() || at < m_hive.ended) fill(at, m_hive.ended, !begun);
    }

private:
    void fill(const QString& since, const QString& until, bool first) {
        if (!m_stand) m_stand = m_yard.newStand(m_hive.label);
        if (!first && m_lastSince == since) { // carried that day already: the last place is the one that is not known
            m_db.prepare("UPDATE placement SET stand = ?, until = ? WHERE id = ?")
                .bind(1, *m_stand)
                .bind(2, until)
                .bind(3, m_last)
                .run();
            return;
        }
        m_db.prepare("INSERT INTO placement (id, colony, stand, since, until, first) VALUES (?, ?, ?, ?, ?, ?)")
            .bind(1, store::maxId(m_db, Table::Placement) + 1)
            .bind(2, m_hive.id)
            .bind(3, *m_stand)
            .bind(4, since)
            .bind(5, until)
            .bind(6, qint64(first))
            .run();
    }

    const store::Database& m_db;
    LostYard& m_yard;
    Hive m_hive;
    std::optional<qint64> m_stand;
    qint64 m_last = 0;
    QString m_lastSince;
};

} // namespace

void mendPlaces(const store::Database& db, SalvageAccount& account) {
    LostYard yard(db);
    Statement lost = db.prepare("SELECT DISTINCT stand FROM placement WHERE stand NOT IN (SELECT id FROM stand)");
    std::vector<qint64> stands;
    while (lost.step()) stands.push_back(lost.integer(0));
    for (const qint64 id : stands) yard.addStand(id, Edits::tr("Stand %1").arg(id));
    const std::vector<Hive> hives = brokenHives(db);
    for (const Hive& hive : hives) Joining(db, yard, hive).run();
    if (!stands.empty())
        account.mended << Edits::tr("Stands that are lost: %1. Each has one in its place, in the yard “%2”.")
                              .arg(stands.size())
                              .arg(yard.name());
    QStringList labels;
    for (const Hive& hive : hives) labels << hive.label;
    if (!labels.isEmpty())
        account.mended << Edits::tr(
                              "Where these hives stood is lost, or a part of it: %1. For those days they stand in "
                              "the yard “%2”; carry them to where they are.")
                              .arg(labels.join(QStringLiteral(", ")), yard.name());
}

} // namespace core::edit
