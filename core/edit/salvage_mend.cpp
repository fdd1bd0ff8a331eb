#include "core/edit/salvage_mend.h"

#include "core/base/natural_order.h"
#include "core/edit/change_fields.h"
#include "core/edit/edit_checks.h"
#include "core/edit/salvage_names.h"
#include "core/edit/salvage_places.h"
#include "core/model/references.h"

#include <algorithm>
#include <map>
#include <set>
#include <string>

namespace core::edit {

namespace {

using store::Statement;

std::string columnName(Table table, size_t column) { return columnsOf(table)[column]; }

/// Ids of a table that rows point to and that are not there.
std::set<qint64> missingOf(const store::Database& db, Table to) {
    std::set<qint64> ids;
    for (const Reference& r : references()) {
        if (r.to != to) continue;
        const std::string column = columnName(r.from, r.column);
        Statement row = db.prepare("SELECT DISTINCT " + column + " FROM " + tableName(r.from) + " WHERE " + column +
                                   " IS NOT NULL AND " + column + " NOT IN (SELECT id FROM " + tableName(to) + ")");
        while (row.step()) ids.insert(row.integer(0));
    }
    return ids;
}

/// A name that none of the table has: "Yard 3, lost", then "Yard 3, lost 2".
QString freeName(const store::Database& db, const char* table, const QString& wanted) {
    for (int n = 1;; ++n) {
        const QString name = n == 1 ? wanted : QStringLiteral("%1 %2").arg(wanted).arg(n);
        Statement row = db.prepare(std::string("SELECT 1 FROM ") + table + " WHERE key = ?");
        row.bind(1, folded(name));
        if (!row.step()) return name;
    }
}

void placeYards(const store::Database& db, SalvageAccount& account) {
    for (const qint64 id : missingOf(db, Table::Yard)) {
        const QString name = freeName(db, "yard", Edits::tr("Yard %1, lost").arg(id));
        db.prepare("INSERT INTO yard (id, name, key, closed) VALUES (?, ?, ?, 0)")
            .bind(1, id)
            .bind(2, name)
            .bind(3, folded(name))
            .run();
        account.mended << Edits::tr("A yard is lost: “%1” stands in its place. Name it again.").arg(name);
    }
}

void placeBoxKinds(const store::Database& db, SalvageAccount& account) {
    constexpr qint64 kMostFrames = 24; // no count of a visit is above it
    for (const qint64 id : missingOf(db, Table::BoxKind)) {
        const QString name = freeName(db, "box_kind", Edits::tr("Box kind %1, lost").arg(id));
        db.prepare("INSERT INTO box_kind (id, name, key, frames) VALUES (?, ?, ?, ?)")
            .bind(1, id)
            .bind(2, name)
            .bind(3, folded(name))
            .bind(4, kMostFrames)
            .run();
        account.mended
            << Edits::tr("A kind of box is lost: “%1”, of 24 frames, stands in its place. Put it right.").arg(name);
    }
}

/// What the records of a lost hive say of its life. It lives, and can be held, unless one says how it ended.
struct LifeLeft {
    QString since;
    QString ended; ///< empty: as far as is known it lives
    QString how;
};

LifeLeft lifeLeft(const store::Database& db, qint64 id) {
    const auto one = [&](const char* sql) {
        Statement row = db.prepare(sql);
        row.bind(1, id);
        return row.step() ? row.text(0) : QString();
    };
    LifeLeft life;
    life.since = one("SELECT day FROM lineage WHERE into_colony = ? AND how = 'divided'");
    if (life.since.isEmpty()) life.since = one("SELECT since FROM placement WHERE colony = ? AND first = 1");
    if (life.since.isEmpty())
        life.since = one("SELECT min(day) FROM (SELECT day FROM visit WHERE colony = ?1 UNION ALL "
                         "SELECT day FROM transfer WHERE giver = ?1 OR receiver = ?1 UNION ALL "
                         "SELECT day FROM lineage WHERE colony = ?1 OR into_colony = ?1 UNION ALL "
                         "SELECT day FROM treatment WHERE colony = ?1 UNION ALL "
                         "SELECT day FROM result WHERE colony = ?1 UNION ALL "
                         "SELECT day FROM sample WHERE colony = ?1 UNION ALL "
                         "SELECT day FROM feeding WHERE colony = ?1 UNION ALL "
                         "SELECT since FROM queen WHERE colony = ?1 UNION ALL "
                         "SELECT since FROM placement WHERE colony = ?1 UNION ALL "
                         "SELECT date(day, '-' || days || ' days') FROM mite_fall WHERE colony = ?1)");
    life.ended = one("SELECT day FROM lineage WHERE colony = ? AND how <> 'divided'");
    life.how = one("SELECT how FROM lineage WHERE colony = ? AND how <> 'divided'");
    return life;
}

void placeColonies(const store::Database& db, SalvageAccount& account, Day today) {
    std::set<qint64> missing = missingOf(db, Table::Colony);
    for (const qint64 id : missing) {
        LifeLeft life = lifeLeft(db, id);
        if (life.since.isEmpty()) life.since = isoText(today);
        const QString label = freeName(db, "colony", Edits::tr("Lost %1").arg(id));
        Statement add =
            db.prepare("INSERT INTO colony (id, label, key, since, ended, end_kind, box, brood_boxes, note) "
                       "VALUES (?, ?, ?, ?, ?, ?, (SELECT id FROM box_kind ORDER BY frames DESC, id LIMIT "
                       "1), 1, ?)");
        add.bind(1, id).bind(2, label).bind(3, folded(label)).bind(4, life.since);
        add.bind(5, life.ended).bind(6, life.how);
        add.bind(7, Edits::tr("Its label, box and beginning are lost: its book was damaged.")).run();
        account.mended << Edits::tr("A hive is lost, its records are not: “%1” stands in its place, from %2 on%3. Look "
                                    "which it is.")
                              .arg(label, life.since,
                                   life.ended.isEmpty() ? QString() : Edits::tr(" to %1").arg(life.ended));
    }
}

/// Takes out what points to a row that is not there.
void leaveOut(const store::Database& db, Table from, size_t column, Table to, SalvageAccount& account) {
    const std::string where = " FROM " + std::string(tableName(from)) + " WHERE " + columnName(from, column) +
                              " IS NOT NULL AND " + columnName(from, column) + " NOT IN (SELECT id FROM " +
                              tableName(to) + ")";
    const qint64 count = db.number("SELECT count(*)" + where);
    if (count == 0) return;
    db.exec("DELETE" + where);
    account.leftOut << Edits::tr("%1 left out: what they belong to is lost.").arg(recordsText(from, count));
}

void clear(const store::Database& db, const char* what, const std::string& sql, SalvageAccount& account) {
    db.exec(sql);
    if (const qint64 count = db.number("SELECT changes()"); count > 0) account.mended << Edits::tr(what).arg(count);
}

void mendEnds(const store::Database& db, SalvageAccount& account) {
    const QString note = Edits::tr("It was united or shaken out; into which hive, is lost.");
    Statement ends =
        db.prepare("UPDATE colony SET end_kind = 'dead', note = coalesce(note || ' ', '') || ? WHERE end_kind IN "
                   "('united', 'shaken-out') AND id NOT IN (SELECT colony FROM lineage WHERE how <> 'divided')");
    ends.bind(1, note).run();
    if (const qint64 count = db.number("SELECT changes()"); count > 0)
        account.mended << Edits::tr("Hives that were united or shaken out, into which is lost: %1. They stand as dead, "
                                    "with a note.")
                              .arg(count);
}

/// A visit that counts an upper box says that there were two.
void mendUpperBoxes(const store::Database& db, SalvageAccount& account) {
    qint64 all = 0;
    for (;;) {
        db.exec("UPDATE visit SET boxes = 2 WHERE id IN (SELECT v.id FROM visit v JOIN colony c ON c.id = v.colony "
                "LEFT JOIN visit w ON w.colony = v.colony AND w.day = (SELECT max(day) FROM visit "
                "WHERE colony = v.colony AND day <= v.day AND boxes IS NOT NULL) "
                "WHERE v.boxes IS NULL AND (v.upper_bees_top_q IS NOT NULL OR v.upper_bees_bottom_q IS NOT NULL OR "
                "v.upper_stores_q IS NOT NULL) AND coalesce(w.boxes, c.brood_boxes) = 1 AND NOT EXISTS "
                "(SELECT 1 FROM lineage WHERE into_colony = v.colony AND how = 'united' AND day <= v.day AND "
                "day >= coalesce(w.day, day)))");
        const qint64 count = db.number("SELECT changes()");
        if (count == 0) break;
        all += count;
    }
    if (all > 0)
        account.mended << Edits::tr(
                              "Visits that count an upper box where the one that brought it is lost: %1. They say "
                              "two boxes now.")
                              .arg(all);
}

/// What cannot stand beside what is left.
struct LeftOver {
    Table table;
    const char* ids;
};
constexpr LeftOver kLeftOver[] = {
    {Table::Result, "SELECT r.id FROM result r JOIN colony c ON c.id = r.colony "
                    "WHERE r.day < (SELECT min(since) FROM colony WHERE key = c.key)"},
    {Table::Sample, "SELECT s.id FROM sample s JOIN colony c ON c.id = s.colony WHERE s.day < c.since"},
    {Table::StripsOut, "SELECT s.id FROM strips_out s JOIN treatment t ON t.id = s.treatment WHERE s.day < t.day OR "
                       "t.colony <> s.colony"},
};

void leaveOutMisfits(const store::Database& db, SalvageAccount& account) {
    for (const LeftOver& x : kLeftOver) {
        db.exec(std::string("DELETE FROM ") + tableName(x.table) + " WHERE id IN (" + x.ids + ")");
        if (const qint64 count = db.number("SELECT changes()"); count > 0)
            account.leftOut << Edits::tr("%1 left out: before the beginning of a hive whose own is lost.")
                                   .arg(recordsText(x.table, count));
    }
}

} // namespace

void mendRemains(const store::Database& db, SalvageAccount& account) {
    leaveOut(db, Table::VisitSign, 0, Table::Visit, account);
    leaveOut(db, Table::StripsOut, 0, Table::Treatment, account);
    for (const Table table : {Table::MergeChoice, Table::MergeStrip, Table::DivideChoice, Table::DivideStrip})
        leaveOut(db, table, 0, Table::MergeDay, account);
    clear(db, QT_TRANSLATE_NOOP("Edits", "Samples whose answer is lost: %1. They wait for one again."),
          "UPDATE sample SET result = NULL WHERE result NOT IN (SELECT id FROM result)", account);
    placeColonies(db, account, account.day);
    clear(db,
          QT_TRANSLATE_NOOP("Edits", "Queens whose mother's hive has no beginning before them: %1. It is not said "
                                     "any more."),
          "UPDATE queen SET mother = NULL WHERE mother IN (SELECT m.id FROM colony m WHERE m.since > queen.since)",
          account);
    placeBoxKinds(db, account);
    placeYards(db, account);
    mendPlaces(db, account);
    mendEnds(db, account);
    mendUpperBoxes(db, account);
    leaveOutMisfits(db, account);
    fileNames(db, account);
}

int holdForDoubt(const store::Database& db, const QString& note, Day today) {
    // Not before any record: a later one must not count as its answer.
    const QString day = std::max(isoText(today), [&] {
        Statement last = db.prepare("SELECT max(day) FROM (SELECT max(day) AS day FROM visit UNION ALL SELECT max(day) "
                                    "FROM result UNION ALL SELECT max(since) FROM colony WHERE ended IS NULL)");
        return last.step() ? last.text(0) : QString();
    }());
    std::set<QString> days{isoText(today), day};
    int held = 0;
    for (const QString& on : days) {
        Statement living = db.prepare("SELECT id FROM colony WHERE ended IS NULL AND since <= ? ORDER BY id");
        living.bind(1, on);
        std::vector<qint64> ids;
        while (living.step()) ids.push_back(living.integer(0));
        held = static_cast<int>(ids.size());
        for (const qint64 id : ids) {
            db.prepare(
                  "INSERT INTO visit (id, colony, day, note) VALUES ((SELECT coalesce(max(id), 0) + 1 FROM visit), "
                  "?1, ?2, ?3) ON CONFLICT (colony, day) DO UPDATE SET note = coalesce(note || ' ', '') || ?3")
                .bind(1, id)
                .bind(2, on)
                .bind(3, note)
                .run();
            db.prepare(
                  "INSERT OR IGNORE INTO visit_sign (id, visit, sign) SELECT (SELECT coalesce(max(id), 0) + 1 FROM "
                  "visit_sign), v.id, 'brood-doubt' FROM visit v WHERE v.colony = ? AND v.day = ?")
                .bind(1, id)
                .bind(2, on)
                .run();
        }
    }
    return held;
}

} // namespace core::edit
