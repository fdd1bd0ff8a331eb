#include "core/store/invariants.h"

#include <algorithm>
#include <cctype>
#include <string_view>

namespace core::store {

namespace {

constexpr Invariant kInvariants[] = {
    {"stand-shared", "Two colonies stand on one stand on a day that is not the one's last and the other's first there",
     "SELECT a.label || ' and ' || b.label || ', stand ' || s.name || ' of ' || y.name || ', ' || max(p.since, "
     "q.since) "
     "FROM placement p JOIN placement q ON q.stand = p.stand AND q.id > p.id AND q.colony <> p.colony "
     "JOIN colony a ON a.id = p.colony JOIN colony b ON b.id = q.colony JOIN stand s ON s.id = p.stand "
     "JOIN yard y ON y.id = s.yard "
     "WHERE p.since < coalesce(q.until, '9999-12-32') AND q.since < coalesce(p.until, '9999-12-32')"},

    {"open-placement", "A living colony does not stand on exactly one stand",
     "SELECT label || ', ' || since FROM colony c WHERE ended IS NULL "
     "AND (SELECT count(*) FROM placement WHERE colony = c.id AND until IS NULL) <> 1"},

    {"ended-stands", "A colony that has ended still stands somewhere",
     "SELECT c.label || ', ended ' || c.ended FROM placement p JOIN colony c ON c.id = p.colony "
     "WHERE c.ended IS NOT NULL AND (p.until IS NULL OR p.until > c.ended)"},

    {"first-placement", "A colony's first place is not there or does not begin with it",
     "SELECT c.label || ', ' || c.since FROM colony c WHERE NOT EXISTS "
     "(SELECT 1 FROM placement p WHERE p.colony = c.id AND p.first = 1 AND p.since = c.since)"},

    {"placements-joined", "A colony leaves a place on another day than it comes to the next, or ends",
     "SELECT c.label || ', left ' || coalesce(p.until, 'never') || ', then ' || coalesce(p.next, c.ended, 'lives') "
     "FROM (SELECT colony, until, lead(since) OVER (PARTITION BY colony ORDER BY since, first DESC, id) AS next "
     "FROM placement) p JOIN colony c ON c.id = p.colony WHERE p.until IS NOT coalesce(p.next, c.ended)"},

    {"label-shared", "Two colonies have one label on one day",
     "SELECT a.label || ', since ' || a.since || ' and ' || b.since FROM colony a JOIN colony b ON b.key = a.key "
     "AND b.id > a.id WHERE a.since <= coalesce(b.ended, '9999-12-32') AND b.since <= coalesce(a.ended, '9999-12-32')"},

    {"lineage-end", "A union or shake-out does not agree with the end of its colony",
     "SELECT c.label || ', ' || l.how || ' ' || l.day FROM lineage l JOIN colony c ON c.id = l.colony "
     "WHERE l.how <> 'divided' AND (c.ended IS NOT l.day OR c.end_kind IS NOT l.how)"},

    {"end-lineage", "A colony ended as united or shaken out and no record says into which",
     "SELECT label || ', ' || ended FROM colony c WHERE end_kind IN ('united', 'shaken-out') "
     "AND NOT EXISTS (SELECT 1 FROM lineage WHERE colony = c.id AND how <> 'divided')"},

    {"lineage-into", "A union or shake-out goes into a colony that does not live that day",
     "SELECT c.label || ' into ' || i.label || ', ' || l.day FROM lineage l JOIN colony c ON c.id = l.colony "
     "JOIN colony i ON i.id = l.into_colony "
     "WHERE l.how <> 'divided' AND (i.since > l.day OR i.ended < l.day)"},

    {"divide-birth", "A divide's new colony does not begin that day, or its mother does not live then",
     "SELECT c.label || ' into ' || i.label || ', ' || l.day FROM lineage l JOIN colony c ON c.id = l.colony "
     "JOIN colony i ON i.id = l.into_colony "
     "WHERE l.how = 'divided' AND (i.since <> l.day OR c.since > l.day OR c.ended < l.day)"},

    {"union-circle", "Unions and shake-outs of one day form a circle",
     "WITH RECURSIVE chain (start, at, day) AS (SELECT colony, into_colony, day FROM lineage WHERE how <> 'divided' "
     "UNION SELECT chain.start, l.into_colony, chain.day FROM chain JOIN lineage l ON l.colony = chain.at "
     "AND l.day = chain.day AND l.how <> 'divided') "
     "SELECT c.label || ', ' || chain.day FROM chain JOIN colony c ON c.id = chain.start WHERE chain.at = chain.start"},

    {"own-ancestor", "A colony is its own ancestor by divides",
     "WITH RECURSIVE line (start, at) AS (SELECT colony, into_colony FROM lineage WHERE how = 'divided' "
     "UNION SELECT line.start, l.into_colony FROM line JOIN lineage l ON l.colony = line.at AND l.how = 'divided') "
     "SELECT c.label || ', ' || c.since FROM line JOIN colony c ON c.id = line.start WHERE line.at = line.start"},

    {"visit-in-life", "A visit lies outside its colony's life",
     "SELECT c.label || ', ' || v.day FROM colony c JOIN visit v ON v.colony = c.id "
     "WHERE v.day < c.since OR v.day > c.ended"},

    {"transfer-in-life", "A transfer lies outside the life of its giver or receiver",
     "SELECT g.label || ' to ' || r.label || ', ' || t.day FROM transfer t JOIN colony g ON g.id = t.giver "
     "JOIN colony r ON r.id = t.receiver WHERE t.day < g.since OR t.day < r.since OR t.day > r.ended "
     "OR (t.day > g.ended AND t.what NOT IN ('frames', 'box', 'feed'))"},

    {"treatment-in-life", "A treatment lies outside its colony's life",
     "SELECT c.label || ', ' || t.day FROM treatment t JOIN colony c ON c.id = t.colony "
     "WHERE t.day < c.since OR t.day > c.ended"},

    {"result-too-early", "A result is dated before any colony of its label",
     "SELECT c.label || ', ' || r.day FROM result r JOIN colony c ON c.id = r.colony "
     "WHERE r.day < (SELECT min(since) FROM colony WHERE key = c.key)"},

    {"upper-box", "A visit counts an upper box of a colony in one box",
     "SELECT c.label || ', ' || v.day FROM visit v JOIN colony c ON c.id = v.colony "
     "LEFT JOIN visit w ON w.colony = v.colony AND w.day = (SELECT max(day) FROM visit "
     "WHERE colony = v.colony AND day <= v.day AND boxes IS NOT NULL) "
     "WHERE (v.upper_bees_top_q IS NOT NULL OR v.upper_bees_bottom_q IS NOT NULL OR v.upper_stores_q IS NOT NULL) "
     "AND coalesce(w.boxes, c.brood_boxes) = 1 AND NOT EXISTS (SELECT 1 FROM lineage WHERE into_colony = v.colony "
     "AND how = 'united' AND day <= v.day AND day >= coalesce(w.day, day))"},

    {"frames-of-box", "A visit counts more frames than the box holds",
     "SELECT c.label || ', ' || v.day FROM visit v JOIN colony c ON c.id = v.colony JOIN box_kind k ON k.id = c.box "
     "WHERE max(coalesce(v.bees_top_q, 0), coalesce(v.bees_bottom_q, 0), coalesce(v.upper_bees_top_q, 0), "
     "coalesce(v.upper_bees_bottom_q, 0), coalesce(v.stores_q, 0), coalesce(v.upper_stores_q, 0)) > 4 * k.frames"},

    {"feeding-in-life", "A feeding lies outside its colony's life",
     "SELECT c.label || ', ' || f.day FROM feeding f JOIN colony c ON c.id = f.colony "
     "WHERE f.day < c.since OR f.day > c.ended"},

    {"mite-fall-in-life", "A count of fallen mites, or the board's first day, lies outside its colony's life",
     "SELECT c.label || ', ' || f.day FROM mite_fall f JOIN colony c ON c.id = f.colony "
     "WHERE date(f.day, '-' || f.days || ' days') < c.since OR f.day > c.ended"},

    {"queen-in-life", "A queen begins or ends outside her colony's life",
     "SELECT c.label || ', ' || q.since FROM queen q JOIN colony c ON c.id = q.colony "
     "WHERE q.since < c.since OR q.since > c.ended OR q.until > c.ended"},

    {"queens-together", "A colony's queen ends after the next begins, or never",
     "SELECT c.label || ', ' || q.next FROM (SELECT colony, until, lead(since) OVER (PARTITION BY colony "
     "ORDER BY since, id) AS next FROM queen) q JOIN colony c ON c.id = q.colony "
     "WHERE q.next < coalesce(q.until, '9999-12-32')"},

    {"queen-born", "A queen heads a colony before the year that she was born in",
     "SELECT c.label || ', ' || q.since FROM queen q JOIN colony c ON c.id = q.colony "
     "WHERE q.born > CAST(substr(q.since, 1, 4) AS INTEGER)"},

    {"queen-mother", "A queen heads a colony before the one that she was raised from began",
     "SELECT c.label || ', ' || q.since FROM queen q JOIN colony c ON c.id = q.colony "
     "JOIN colony m ON m.id = q.mother WHERE q.since < m.since"},

    {"sample-too-early", "A sample is taken before its colony began",
     "SELECT c.label || ', ' || s.day FROM sample s JOIN colony c ON c.id = s.colony WHERE s.day < c.since"},

    {"sample-answer", "The answer to a sample is of another colony, disease or day, or no finding of a laboratory",
     "SELECT c.label || ', ' || s.day FROM sample s JOIN colony c ON c.id = s.colony JOIN result r ON r.id = s.result "
     "WHERE r.colony IS NOT s.colony OR r.disease <> s.disease OR r.day <> s.day OR r.method = 'field' "
     "OR r.verdict NOT IN ('positive', 'negative')"},

    {"strips-out", "Strips came out before they were put in, or out of another colony than the one treated",
     "SELECT c.label || ', ' || s.day FROM strips_out s JOIN colony c ON c.id = s.colony "
     "JOIN treatment t ON t.id = s.treatment WHERE s.day < t.day OR t.colony <> s.colony"},

    {"book-id", "The book's own row is not there", "SELECT 'book' WHERE (SELECT count(*) FROM book) <> 1"},

    // Each of the sixteen pairs of digits as a program makes them: 8-4-4-4-12.
    {"book-id", "The book's own id is none",
     "SELECT 'book' FROM book WHERE length(uuid) <> 36 OR substr(uuid, 9, 1) || substr(uuid, 14, 1) || "
     "substr(uuid, 19, 1) || substr(uuid, 24, 1) <> '----' OR replace(uuid, '-', '') GLOB '*[^0-9a-f]*' OR "
     "length(replace(uuid, '-', '')) <> 32"},

    {"history-numbers", "A line of the history is missing",
     "SELECT 'before line ' || seq FROM (SELECT seq, seq - row_number() OVER (ORDER BY seq) AS gap FROM history) "
     "WHERE gap <> 0"},

    {"history-undo", "A line of the history takes back or does again a line that is no edit",
     "SELECT 'line ' || u.seq FROM history u LEFT JOIN history d ON d.seq = u.of_seq "
     "WHERE u.kind <> 'do' AND d.kind IS NOT 'do'"},
};

/// The query names this table, not only one whose name is longer.
bool mentions(std::string_view sql, std::string_view table) {
    const auto letter = [&](size_t at) { return at < sql.size() && (std::isalnum(sql[at]) || sql[at] == '_'); };
    for (size_t at = sql.find(table); at != sql.npos; at = sql.find(table, at + 1))
        if ((at == 0 || !letter(at - 1)) && !letter(at + table.size())) return true;
    return false;
}

} // namespace

std::span<const Invariant> invariants() { return kInvariants; }

std::optional<QString> firstBroken(const Database& db, const std::set<Table>& tables) {
    for (const Invariant& invariant : kInvariants) {
        const auto reads = [&](Table table) { return mentions(invariant.sql, tableName(table)); };
        if (std::none_of(tables.begin(), tables.end(), reads)) continue;
        Statement row = db.prepare(invariant.sql);
        if (row.step()) return QStringLiteral("%1: %2.").arg(QString::fromUtf8(invariant.sentence), row.text(0));
    }
    return std::nullopt;
}

} // namespace core::store
