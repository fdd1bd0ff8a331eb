#include "core/store/reads.h"

#include "core/base/damaged.h"
#include "core/base/natural_order.h"
#include "core/model/setting_table.h"

#include <algorithm>
#include <string>
#include <unordered_map>

namespace core::store {

namespace {

/// "SELECT id, <columns> FROM <table> <rest>"
template <class T> Statement select(const Database& db, const char* rest) {
    std::string sql = "SELECT id";
    for (const char* column : columnsOf(tableOf<T>())) sql += std::string(", ") + column;
    return db.prepare(sql + " FROM " + tableName(tableOf<T>()) + " " + rest);
}

template <class T> T rowAt(const Statement& s) {
    return fromRow<T>(s.integer(0), s.row(1, static_cast<int>(columnsOf(tableOf<T>()).size())));
}

template <class T> std::vector<T> all(Statement s) {
    std::vector<T> rows;
    while (s.step()) rows.push_back(rowAt<T>(s));
    return rows;
}

template <class T> std::optional<T> first(Statement s) {
    return s.step() ? std::optional<T>(rowAt<T>(s)) : std::nullopt;
}

template <class T> std::vector<T> byName(std::vector<T> rows) {
    std::sort(rows.begin(), rows.end(), [](const T& a, const T& b) { return NaturalLess()(a.name, b.name); });
    return rows;
}

template <class T, class Id> std::vector<T> ofOne(const Database& db, const char* rest, Id id) {
    Statement s = select<T>(db, rest);
    s.bind(1, id.value);
    return all<T>(std::move(s));
}

Sign signAt(const Statement& s, int column) {
    const auto sign = fromWord<Sign>(s.text(column));
    if (!sign) throw Damaged(QStringLiteral("The book is damaged: a sign in it is not known."), s.text(column));
    return *sign;
}

/// One statement for many visits: few of them have signs.
std::unordered_map<qint64, Signs> signsBetween(const Database& db, Day from, Day until) {
    Statement s = db.prepare("SELECT s.visit, s.sign FROM visit_sign s JOIN visit v ON v.id = s.visit "
                             "WHERE v.day BETWEEN ? AND ?");
    s.bind(1, from).bind(2, until);
    std::unordered_map<qint64, Signs> signs;
    while (s.step()) signs[s.integer(0)].add(signAt(s, 1));
    return signs;
}

void addSigns(const Database& db, Visit& visit) {
    for (const auto& [id, sign] : signRowsOf(db, visit.id)) visit.signs.add(sign);
}

std::optional<Visit> withSigns(const Database& db, std::optional<Visit> visit) {
    if (visit) addSigns(db, *visit);
    return visit;
}

} // namespace

std::vector<std::pair<qint64, Sign>> signRowsOf(const Database& db, VisitId visit) {
    std::vector<std::pair<qint64, Sign>> rows;
    Statement s = db.prepare("SELECT id, sign FROM visit_sign WHERE visit = ? ORDER BY id");
    s.bind(1, visit.value);
    while (s.step()) rows.emplace_back(s.integer(0), signAt(s, 1));
    return rows;
}

std::optional<Visit> visit(const Database& db, VisitId id) { return withSigns(db, find<Visit>(db, id.value)); }

std::optional<Visit> visitOn(const Database& db, ColonyId colony, Day day) {
    Statement s = select<Visit>(db, "WHERE colony = ? AND day = ?");
    s.bind(1, colony.value).bind(2, day);
    return withSigns(db, first<Visit>(std::move(s)));
}

std::vector<Visit> visitsOf(const Database& db, ColonyId colony, int most) {
    Statement s = select<Visit>(db, "WHERE colony = ? ORDER BY day DESC LIMIT ?");
    s.bind(1, colony.value).bind(2, qint64(most));
    std::vector<Visit> visits = all<Visit>(std::move(s));
    for (Visit& v : visits) addSigns(db, v);
    return visits;
}

std::optional<Yard> yardNamed(const Database& db, QStringView name) {
    Statement s = select<Yard>(db, "WHERE key = ?");
    s.bind(1, folded(name));
    return first<Yard>(std::move(s));
}

std::optional<Stand> standNamed(const Database& db, YardId yard, QStringView name) {
    Statement s = select<Stand>(db, "WHERE yard = ? AND key = ?");
    s.bind(1, yard.value).bind(2, folded(name));
    return first<Stand>(std::move(s));
}

std::optional<BoxKind> boxKindNamed(const Database& db, QStringView name) {
    Statement s = select<BoxKind>(db, "WHERE key = ?");
    s.bind(1, folded(name));
    return first<BoxKind>(std::move(s));
}

std::vector<Colony> coloniesLabelled(const Database& db, QStringView label) {
    Statement s = select<Colony>(db, "WHERE key = ? ORDER BY since");
    s.bind(1, folded(label));
    return all<Colony>(std::move(s));
}

std::vector<Colony> coloniesIn(const Database& db, BoxKindId kind) {
    return ofOne<Colony>(db, "WHERE box = ? ORDER BY id", kind);
}

std::optional<Colony> colonyNamed(const Database& db, QStringView name, Day on) {
    const qsizetype at = name.lastIndexOf(u'@');
    const auto since = at < 0 ? std::optional<Day>(on) : parseIsoDay(name.mid(at + 1));
    if (!since) return std::nullopt;
    Statement s = select<Colony>(db, at < 0 ? "WHERE key = ? AND since <= ? ORDER BY since DESC LIMIT 1"
                                            : "WHERE key = ? AND since = ?");
    s.bind(1, folded(at < 0 ? name : name.left(at))).bind(2, *since);
    return first<Colony>(std::move(s));
}

std::vector<Yard> yards(const Database& db) { return byName(all<Yard>(select<Yard>(db, ""))); }

std::vector<BoxKind> boxKinds(const Database& db) { return byName(all<BoxKind>(select<BoxKind>(db, ""))); }

std::vector<Person> people(const Database& db) { return byName(all<Person>(select<Person>(db, ""))); }

std::vector<FixedThing> fixedThingsOf(const Database& db, YardId yard) {
    return ofOne<FixedThing>(db, "WHERE yard = ? ORDER BY id", yard);
}

std::vector<MergeDay> mergeDaysOf(const Database& db, YardId yard) {
    return ofOne<MergeDay>(db, "WHERE yard = ? ORDER BY day, variant", yard);
}

std::vector<MergeDay> mergeDaysOn(const Database& db, Day day) {
    Statement s = select<MergeDay>(db, "WHERE day = ? ORDER BY yard, variant");
    s.bind(1, day);
    return all<MergeDay>(std::move(s));
}

std::vector<MergeChoice> choicesOf(const Database& db, MergeDayId mergeDay) {
    return ofOne<MergeChoice>(db, "WHERE merge_day = ? ORDER BY id", mergeDay);
}

std::vector<MergeStrip> stripsOf(const Database& db, MergeDayId mergeDay) {
    return ofOne<MergeStrip>(db, "WHERE merge_day = ? ORDER BY position", mergeDay);
}

std::vector<DivideChoice> divideChoicesOf(const Database& db, MergeDayId day) {
    return ofOne<DivideChoice>(db, "WHERE merge_day = ? ORDER BY id", day);
}

std::vector<DivideStrip> divideStripsOf(const Database& db, MergeDayId day) {
    return ofOne<DivideStrip>(db, "WHERE merge_day = ? ORDER BY position", day);
}

std::vector<Stand> standsOf(const Database& db, YardId yard) {
    return byName(ofOne<Stand>(db, "WHERE yard = ?", yard));
}

std::optional<Placement> openPlacement(const Database& db, ColonyId colony) {
    Statement s = select<Placement>(db, "WHERE colony = ? AND until IS NULL");
    s.bind(1, colony.value);
    return first<Placement>(std::move(s));
}

std::vector<Placement> placementsOf(const Database& db, ColonyId colony) {
    // Said in two, so that the two indexes of a colony's placements are used.
    return ofOne<Placement>(
        db, "WHERE (colony = ?1 AND first = 1) OR (colony = ?1 AND first = 0) ORDER BY since, first DESC, id", colony);
}

std::vector<Placement> placementsAt(const Database& db, StandId stand) {
    return ofOne<Placement>(db, "WHERE stand = ? ORDER BY since, id", stand);
}

std::vector<Placement> placementsAt(const Database& db, StandId stand, Day day) {
    Statement s = select<Placement>(db, "WHERE stand = ?1 AND since <= ?2 AND (until IS NULL OR until >= ?2) "
                                        "ORDER BY since, id");
    s.bind(1, stand.value).bind(2, day);
    return all<Placement>(std::move(s));
}

std::vector<Lineage> lineageOf(const Database& db, ColonyId colony) {
    return ofOne<Lineage>(db, "WHERE colony = ?1 OR into_colony = ?1 ORDER BY day, id", colony);
}

std::vector<Transfer> transfersOf(const Database& db, ColonyId colony) {
    return ofOne<Transfer>(db, "WHERE giver = ?1 OR receiver = ?1 ORDER BY day, id", colony);
}

std::vector<Result> resultsOf(const Database& db, ColonyId colony) {
    return ofOne<Result>(db, "WHERE colony = ? ORDER BY day, id", colony);
}

std::vector<Treatment> treatmentsOf(const Database& db, ColonyId colony) {
    return ofOne<Treatment>(db, "WHERE colony = ? ORDER BY day, id", colony);
}

std::vector<Result> resultsOf(const Database& db, YardId yard) {
    return ofOne<Result>(db, "WHERE yard = ? ORDER BY day, id", yard);
}

std::vector<Treatment> treatmentsOf(const Database& db, YardId yard) {
    return ofOne<Treatment>(db, "WHERE yard = ? ORDER BY day, id", yard);
}

Settings settings(const Database& db) {
    Settings settings;
    Statement s = db.prepare("SELECT name, value FROM setting ORDER BY id");
    while (s.step())
        if (!applySetting(settings, s.text(0), s.text(1)))
            throw Damaged(
                QStringLiteral("The book is damaged: its setting %1 has a value that cannot be.").arg(s.text(0)));
    return settings;
}

std::optional<std::pair<qint64, Row>> settingRow(const Database& db, QStringView name) {
    Statement s = db.prepare("SELECT id, name, value FROM setting WHERE name = ?");
    s.bind(1, name.toString());
    if (!s.step()) return std::nullopt;
    return std::pair(s.integer(0), s.row(1, 2));
}

std::vector<Feeding> feedingsOf(const Database& db, ColonyId colony) {
    return ofOne<Feeding>(db, "WHERE colony = ? ORDER BY day, id", colony);
}

std::vector<Feeding> feedingsBetween(const Database& db, Day from, Day until) {
    Statement s = select<Feeding>(db, "WHERE day BETWEEN ? AND ? ORDER BY day, id");
    s.bind(1, from).bind(2, until);
    return all<Feeding>(std::move(s));
}

std::vector<Queen> queensOf(const Database& db, ColonyId colony) {
    return ofOne<Queen>(db, "WHERE colony = ? ORDER BY since", colony);
}

std::vector<Queen> queensRaisedFrom(const Database& db, ColonyId mother) {
    return ofOne<Queen>(db, "WHERE mother = ? ORDER BY since, id", mother);
}

std::vector<Queen> queens(const Database& db) { return all<Queen>(select<Queen>(db, "ORDER BY colony, since")); }

std::vector<FileMapping> fileMappings(const Database& db) {
    return byName(all<FileMapping>(select<FileMapping>(db, "")));
}

std::vector<Phrase> phrases(const Database& db) {
    std::vector<Phrase> rows = all<Phrase>(select<Phrase>(db, ""));
    std::ranges::sort(rows, NaturalLess(), &Phrase::brief);
    return rows;
}

std::vector<Question> questions(const Database& db) { return byName(all<Question>(select<Question>(db, ""))); }

std::vector<Result> results(const Database& db) { return all<Result>(select<Result>(db, "ORDER BY day, id")); }

std::vector<Treatment> treatments(const Database& db) {
    return all<Treatment>(select<Treatment>(db, "ORDER BY day, id"));
}

std::vector<Sample> samples(const Database& db) { return all<Sample>(select<Sample>(db, "ORDER BY day, id")); }

std::vector<Sample> samplesOf(const Database& db, ColonyId colony) {
    return ofOne<Sample>(db, "WHERE colony = ? ORDER BY day, id", colony);
}

std::optional<Sample> sampleAnsweredBy(const Database& db, ResultId result) {
    Statement s = select<Sample>(db, "WHERE result = ?");
    s.bind(1, result.value);
    const auto rows = all<Sample>(std::move(s));
    return rows.empty() ? std::nullopt : std::optional(rows.front());
}

std::vector<MiteFall> miteFalls(const Database& db, Day from, Day until) {
    Statement s = select<MiteFall>(db, "WHERE day BETWEEN ? AND ? ORDER BY day, id");
    s.bind(1, from).bind(2, until);
    return all<MiteFall>(std::move(s));
}

std::vector<MiteFall> miteFallsOf(const Database& db, ColonyId colony) {
    return ofOne<MiteFall>(db, "WHERE colony = ? ORDER BY day", colony);
}

std::vector<StripsOut> stripsOut(const Database& db) {
    return all<StripsOut>(select<StripsOut>(db, "ORDER BY day, id"));
}

std::vector<KitEnd> kitEnds(const Database& db) { return all<KitEnd>(select<KitEnd>(db, "ORDER BY day, id")); }

std::vector<Notifiable> notifiables(const Database& db) {
    return all<Notifiable>(select<Notifiable>(db, "ORDER BY key, disease"));
}

std::optional<Keeper> keeper(const Database& db) {
    const auto rows = all<Keeper>(select<Keeper>(db, "ORDER BY id LIMIT 1"));
    return rows.empty() ? std::nullopt : std::optional(rows.front());
}

std::vector<Visit> visitsBetween(const Database& db, Day from, Day until, std::optional<YardId> yard) {
    constexpr const char* kThere = "WHERE day BETWEEN ?1 AND ?2 AND id IN (SELECT v.id FROM stand s "
                                   "JOIN placement p ON p.stand = s.id JOIN visit v ON v.colony = p.colony "
                                   "AND v.day BETWEEN max(p.since, ?1) AND min(coalesce(p.until, ?2), ?2) "
                                   "WHERE s.yard = ?3) ORDER BY day, colony";
    Statement s = select<Visit>(db, yard ? kThere : "WHERE day BETWEEN ?1 AND ?2 ORDER BY day, colony");
    s.bind(1, from).bind(2, until);
    if (yard) s.bind(3, yard->value);
    std::vector<Visit> visits = all<Visit>(std::move(s));
    const auto signs = signsBetween(db, from, until);
    for (Visit& v : visits)
        if (const auto at = signs.find(v.id.value); at != signs.end()) v.signs = at->second;
    return visits;
}

std::vector<Day> visitDays(const Database& db, YardId yard) {
    Statement s = db.prepare("SELECT DISTINCT v.day FROM stand s JOIN placement p ON p.stand = s.id "
                             "JOIN visit v ON v.colony = p.colony AND v.day >= p.since "
                             "AND (p.until IS NULL OR v.day <= p.until) WHERE s.yard = ? ORDER BY v.day");
    s.bind(1, yard.value);
    std::vector<Day> days;
    while (s.step()) days.push_back(s.day(0));
    return days;
}

std::optional<Day> lastDay(const Database& db) {
    // Visits have no index by day alone: one seek a colony.
    Statement s = db.prepare("SELECT max(day) FROM (SELECT max((SELECT max(day) FROM visit WHERE colony = colony.id)) "
                             "AS day FROM colony UNION ALL "
                             "SELECT max(day) FROM transfer UNION ALL SELECT max(day) FROM result UNION ALL "
                             "SELECT max(day) FROM treatment UNION ALL SELECT max(day) FROM lineage UNION ALL "
                             "SELECT max(since) FROM placement UNION ALL SELECT max(since) FROM colony UNION ALL "
                             "SELECT max(ended) FROM colony)");
    return s.step() ? s.optionalDay(0) : std::nullopt;
}

void eachVisitKey(const Database& db, const std::function<void(VisitId, ColonyId, Day)>& take) {
    Statement s = db.prepare("SELECT id, colony, day FROM visit INDEXED BY visit_day");
    while (s.step()) take({s.integer(0)}, {s.integer(1)}, s.day(2));
}

} // namespace core::store
