#include "core/store/visit_list.h"

#include "core/base/natural_order.h"
#include "core/store/note_words.h"

#include <algorithm>
#include <initializer_list>
#include <string>
#include <string_view>

namespace core::store {

namespace {

constexpr const char* kFrom = " FROM colony c CROSS JOIN visit v ON v.colony = c.id ";
/// From the notes that have the words, where words are asked for.
constexpr const char* kFromWords =
    " FROM (SELECT rowid / 16 AS id FROM note_words WHERE note_words MATCH ?8 AND rowid % 16 = 0) w "
    "CROSS JOIN visit v ON v.id = w.id CROSS JOIN colony c ON c.id = v.colony ";
/// ?9: one colony, of those that it names alone.
constexpr const char* kAll = "WHERE ?9 IS NULL ";
constexpr const char* kOfOne = "WHERE c.id = ?9 ";
constexpr const char* kWhat =
    "AND v.day BETWEEN ?2 AND ?3 "
    "AND (?1 IS NULL OR (c.id IN (SELECT p.colony FROM stand s JOIN placement p ON p.stand = s.id WHERE s.yard = ?1) "
    "AND EXISTS (SELECT 1 FROM placement p JOIN stand s ON s.id = p.stand WHERE p.colony = v.colony AND s.yard = ?1 "
    "AND v.day BETWEEN p.since AND coalesce(p.until, '9999-12-31')))) "
    "AND (?4 IS NULL OR instr(c.key, ?4) > 0) "
    "AND (?5 IS NULL OR instr(lower(v.by_whom), lower(?5)) > 0) "
    "AND (?6 = 0 OR v.note IS NOT NULL) "
    "AND (?7 = 0 OR EXISTS (SELECT 1 FROM visit_sign WHERE visit = v.id)) "
    "AND (?8 IS NULL OR ?8 <> '') "; // said by kFromWords

/// One after the other. (A chain of + is warned of by GCC 12 where it is optimized.)
std::string joined(std::initializer_list<std::string_view> parts) {
    std::string sql;
    for (const std::string_view part : parts) sql.append(part);
    return sql;
}

Statement filtered(const Database& db, const std::string& sql, const VisitFilter& f, std::optional<ColonyId> one) {
    Statement s = db.prepare(sql);
    if (f.yard)
        s.bind(1, f.yard->value);
    else
        s.bindNull(1);
    s.bind(2, f.from ? isoText(*f.from) : QStringLiteral("0000"))
        .bind(3, f.until ? isoText(*f.until) : QStringLiteral("9999-12-31"));
    s.bind(4, folded(f.label.trimmed())).bind(5, f.by.trimmed());
    s.bind(6, qint64(f.withNote)).bind(7, qint64(f.withSigns)).bind(8, noteQuery(f.words));
    if (one)
        s.bind(9, one->value);
    else
        s.bindNull(9);
    return s;
}

std::string valueOf(VisitKey key) {
    switch (key) {
    case VisitKey::Day:
    case VisitKey::Label:
        return "v.day";
    case VisitKey::Bees:
        return "coalesce(v.bees_top_q, v.bees_bottom_q) + coalesce(v.upper_bees_top_q, v.upper_bees_bottom_q, 0)";
    case VisitKey::Stores:
        return "v.stores_q + coalesce(v.upper_stores_q, 0)";
    case VisitKey::Queen:
        return "v.queen";
    case VisitKey::BroodFrames:
        return "v.brood_frames";
    case VisitKey::Weight:
        return "v.gross_dag";
    case VisitKey::Mites:
        return "1.0 * v.mites / v.mite_sample";
    case VisitKey::By:
        return "v.by_whom COLLATE NOCASE";
    }
    return "v.day";
}

const char* fromOf(const VisitFilter& filter) { return noteQuery(filter.words).isEmpty() ? kFrom : kFromWords; }

/// The same of the visits with some words, which are no more than have them.
std::vector<VisitId> byLabelWithWords(const Database& db, const VisitFilter& filter, bool descending, int most) {
    struct Named {
        VisitId id;
        QString key;
        QString since;
    };
    std::vector<Named> visits;
    const std::string sql =
        joined({"SELECT v.id, c.key, c.since", kFromWords, kAll, kWhat, "ORDER BY v.day DESC, v.id"});
    Statement s = filtered(db, sql, filter, {});
    while (s.step()) visits.push_back({{s.integer(0)}, s.text(1), s.text(2)});
    std::ranges::stable_sort(visits, [descending](const Named& a, const Named& b) {
        const int order = naturalCompareFolded(a.key, b.key);
        if (order != 0) return descending ? order > 0 : order < 0;
        return a.since > b.since;
    });
    std::vector<VisitId> found;
    for (size_t i = 0; i < visits.size() && i < static_cast<size_t>(most); ++i) found.push_back(visits[i].id);
    return found;
}

/// Of each label the latest colony first, and of a colony its latest visit: until there are enough.
std::vector<VisitId> byLabel(const Database& db, const VisitFilter& filter, bool descending, int most) {
    struct Named {
        ColonyId id;
        QString key;
        QString since;
    };
    std::vector<Named> colonies;
    Statement read = db.prepare("SELECT id, key, since FROM colony WHERE ?1 IS NULL OR instr(key, ?1) > 0");
    read.bind(1, folded(filter.label.trimmed()));
    while (read.step()) colonies.push_back({{read.integer(0)}, read.text(1), read.text(2)});
    std::ranges::sort(colonies, [descending](const Named& a, const Named& b) {
        const int order = naturalCompareFolded(a.key, b.key);
        if (order != 0) return descending ? order > 0 : order < 0;
        return a.since != b.since ? a.since > b.since : a.id < b.id;
    });
    std::vector<VisitId> found;
    const std::string sql = joined({"SELECT v.id", kFrom, kOfOne, kWhat, "ORDER BY v.day DESC LIMIT ?10"});
    for (const Named& colony : colonies) {
        if (found.size() >= static_cast<size_t>(most)) break;
        Statement s = filtered(db, sql, filter, colony.id);
        s.bind(10, most - static_cast<qint64>(found.size()));
        while (s.step()) found.push_back({s.integer(0)});
    }
    return found;
}

} // namespace

std::vector<VisitId> visitsFound(const Database& db, const VisitFilter& filter, VisitOrder order, int most) {
    const ReadTransaction steady(db);
    if (order.key == VisitKey::Label)
        return fromOf(filter) == kFromWords ? byLabelWithWords(db, filter, order.descending, most)
                                            : byLabel(db, filter, order.descending, most);
    const std::string value = valueOf(order.key);
    const std::string turn = order.descending ? " DESC" : "";
    std::string by = " ORDER BY ";
    if (order.key != VisitKey::Day)
        by += "(" + value + ") IS NULL, " + value + turn + ", v.day DESC, v.id LIMIT ?10";
    else
        by += "v.day" + turn + ", v.id LIMIT ?10";
    Statement s = filtered(db, joined({"SELECT v.id", fromOf(filter), kAll, kWhat, by}), filter, {});
    s.bind(10, qint64(most));
    std::vector<VisitId> found;
    while (s.step()) found.push_back({s.integer(0)});
    return found;
}

VisitTotals visitTotals(const Database& db, const VisitFilter& filter) {
    const std::string each =
        joined({"SELECT count(*) AS visits, count(v.note) AS notes, count(v.gross_dag) AS weighed, "
                "sum(v.gross_dag) AS gross, count(v.mites) AS samples, sum(v.mites) AS mites, "
                "sum(v.mite_sample) AS bees",
                fromOf(filter), kAll, kWhat, "GROUP BY c.id"});
    Statement s = filtered(db,
                           "SELECT sum(visits), count(*), sum(notes), sum(weighed), sum(gross), sum(samples), "
                           "sum(mites), sum(bees) FROM (" +
                               each + ")",
                           filter, {});
    VisitTotals t;
    if (!s.step()) return t;
    qint64* const to[] = {&t.visits,   &t.colonies,    &t.withNote, &t.weighed,
                          &t.grossSum, &t.miteSamples, &t.mites,    &t.bees};
    for (int i = 0; i < 8; ++i) *to[i] = s.isNull(i) ? 0 : s.integer(i);
    return t;
}

} // namespace core::store
