#include "core/edit/after_context.h"

#include "core/base/error.h"
#include "core/base/natural_order.h"
#include "core/edit/row_change.h"

#include <algorithm>
#include <tuple>

namespace core::edit {

namespace {

template <class T> std::vector<T> byDay(std::vector<T> rows) {
    std::sort(rows.begin(), rows.end(),
              [](const T& a, const T& b) { return std::tuple(a.day, a.id) < std::tuple(b.day, b.id); });
    return rows;
}

template <class T> std::vector<T> byName(std::vector<T> rows) {
    std::sort(rows.begin(), rows.end(), [](const T& a, const T& b) { return NaturalLess()(a.name, b.name); });
    return rows;
}

std::vector<Queen> bySince(std::vector<Queen> queens) {
    std::sort(queens.begin(), queens.end(),
              [](const Queen& a, const Queen& b) { return std::tuple(a.since, a.id) < std::tuple(b.since, b.id); });
    return queens;
}

} // namespace

void AfterContext::add(const std::vector<RowChange>& rows) {
    for (const RowChange& row : rows) m_written[static_cast<size_t>(row.table)][row.id] = row.after;
}

template <class T, class Match> std::vector<T> AfterContext::merged(std::vector<T> rows, Match match) const {
    const Written& now = written(tableOf<T>());
    std::erase_if(rows, [&](const T& row) { return now.contains(idValue(row.id)); });
    for (const auto& [id, cells] : now) {
        if (!cells) continue;
        T row = fromRow<T>(id, *cells);
        if (match(row)) rows.push_back(std::move(row));
    }
    return rows;
}

qint64 AfterContext::nextId(Table table) const {
    const Written& now = written(table);
    const auto last = std::find_if(now.rbegin(), now.rend(), [](const auto& row) { return row.second.has_value(); });
    return std::max(m_book.nextId(table), last == now.rend() ? 1 : last->first + 1);
}

std::optional<Row> AfterContext::row(Table table, qint64 id) const {
    const auto now = written(table).find(id);
    return now == written(table).end() ? m_book.row(table, id) : now->second;
}

std::vector<std::pair<qint64, Row>> AfterContext::signRows(VisitId visit) const {
    const Written& now = written(Table::VisitSign);
    auto rows = m_book.signRows(visit);
    std::erase_if(rows, [&](const auto& row) { return now.contains(row.first); });
    for (const auto& [id, cells] : now)
        if (cells && cells->at(0) == Value(visit.value)) rows.emplace_back(id, *cells);
    std::sort(rows.begin(), rows.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
    return rows;
}

Visit AfterContext::withSigns(Visit visit) const {
    visit.signs = {};
    for (const auto& [id, cells] : signRows(visit.id))
        if (const auto sign = fromWord<Sign>(std::get<QString>(cells.at(1)))) visit.signs.add(*sign);
    return visit;
}

std::optional<Visit> AfterContext::visit(VisitId id) const {
    const auto found = find<Visit>(id.value);
    return found ? std::optional(withSigns(*found)) : std::nullopt;
}

std::optional<Visit> AfterContext::visitOn(ColonyId colony, Day day) const {
    std::vector<Visit> visits;
    if (auto old = m_book.visitOn(colony, day)) visits.push_back(*std::move(old));
    visits = merged(std::move(visits), [&](const Visit& v) { return v.colony == colony && v.day == day; });
    return visits.empty() ? std::nullopt : std::optional(withSigns(visits.front()));
}

template <class T> std::optional<T> AfterContext::named(std::optional<T> found, const std::vector<T>& among) const {
    if (found && !written(tableOf<T>()).contains(idValue(found->id))) return found;
    return among.empty() ? std::nullopt : std::optional(among.front());
}

std::optional<Yard> AfterContext::yardNamed(QStringView name) const {
    return named(m_book.yardNamed(name),
                 merged(std::vector<Yard>(), [&](const Yard& y) { return folded(y.name) == folded(name); }));
}

std::optional<Stand> AfterContext::standNamed(YardId yard, QStringView name) const {
    return named(m_book.standNamed(yard, name), merged(std::vector<Stand>(), [&](const Stand& s) {
                     return s.yard == yard && folded(s.name) == folded(name);
                 }));
}

std::optional<BoxKind> AfterContext::boxKindNamed(QStringView name) const {
    return named(m_book.boxKindNamed(name),
                 merged(std::vector<BoxKind>(), [&](const BoxKind& k) { return folded(k.name) == folded(name); }));
}

std::vector<Colony> AfterContext::coloniesLabelled(QStringView label) const {
    auto colonies = merged(m_book.coloniesLabelled(label),
                           [&](const Colony& colony) { return folded(colony.label) == folded(label); });
    std::sort(colonies.begin(), colonies.end(), [](const Colony& a, const Colony& b) { return a.since < b.since; });
    return colonies;
}

std::optional<Colony> AfterContext::colonyNamed(QStringView name, Day on) const {
    const qsizetype at = name.lastIndexOf(u'@');
    const auto since = at < 0 ? std::optional(on) : parseIsoDay(name.mid(at + 1));
    if (!since) return std::nullopt;
    const auto colonies = coloniesLabelled(at < 0 ? name : name.left(at));
    const auto found = std::find_if(colonies.rbegin(), colonies.rend(), [&](const Colony& colony) {
        return at < 0 ? colony.since <= *since : colony.since == *since;
    });
    return found == colonies.rend() ? std::nullopt : std::optional(*found);
}

std::optional<Placement> AfterContext::openPlacement(ColonyId colony) const {
    const auto all = placementsOf(colony);
    return !all.empty() && !all.back().until ? std::optional(all.back()) : std::nullopt;
}

std::vector<Placement> AfterContext::placementsOf(ColonyId colony) const {
    auto all = merged(m_book.placementsOf(colony), [&](const Placement& p) { return p.colony == colony; });
    std::sort(all.begin(), all.end(), [](const Placement& a, const Placement& b) {
        return std::tuple(a.since, !a.first, a.id) < std::tuple(b.since, !b.first, b.id);
    });
    return all;
}

std::vector<Placement> AfterContext::placementsAt(StandId stand) const {
    auto all = merged(m_book.placementsAt(stand), [&](const Placement& p) { return p.stand == stand; });
    std::sort(all.begin(), all.end(), [](const Placement& a, const Placement& b) {
        return std::tuple(a.since, a.id) < std::tuple(b.since, b.id);
    });
    return all;
}

std::vector<Placement> AfterContext::placementsAt(StandId stand, Day day) const {
    auto all = placementsAt(stand);
    std::erase_if(all, [&](const Placement& p) { return p.since > day || (p.until && *p.until < day); });
    return all;
}

std::vector<Stand> AfterContext::standsOf(YardId yard) const {
    auto known = m_stands.find(yard);
    if (known == m_stands.end()) known = m_stands.emplace(yard, m_book.standsOf(yard)).first;
    if (written(Table::Stand).empty()) return known->second;
    return byName(merged(known->second, [&](const Stand& s) { return s.yard == yard; }));
}

std::vector<Yard> AfterContext::yards() const {
    return byName(merged(m_book.yards(), [](const Yard&) { return true; }));
}

std::vector<BoxKind> AfterContext::boxKinds() const {
    return byName(merged(m_book.boxKinds(), [](const BoxKind&) { return true; }));
}

std::vector<Colony> AfterContext::coloniesIn(BoxKindId kind) const {
    auto colonies = merged(m_book.coloniesIn(kind), [&](const Colony& colony) { return colony.box == kind; });
    std::sort(colonies.begin(), colonies.end(), [](const Colony& a, const Colony& b) { return a.id < b.id; });
    return colonies;
}

std::vector<Lineage> AfterContext::lineageOf(ColonyId colony) const {
    return byDay(
        merged(m_book.lineageOf(colony), [&](const Lineage& l) { return l.colony == colony || l.into == colony; }));
}

std::vector<Transfer> AfterContext::transfersOf(ColonyId colony) const {
    return byDay(
        merged(m_book.transfersOf(colony), [&](const Transfer& t) { return t.from == colony || t.to == colony; }));
}

std::vector<Treatment> AfterContext::treatmentsOf(ColonyId colony) const {
    return byDay(merged(m_book.treatmentsOf(colony), [&](const Treatment& t) { return t.colony == colony; }));
}

std::vector<Treatment> AfterContext::treatmentsOf(YardId yard) const {
    return byDay(merged(m_book.treatmentsOf(yard), [&](const Treatment& t) { return t.yard == yard; }));
}

std::vector<Result> AfterContext::resultsOf(ColonyId colony) const {
    return byDay(merged(m_book.resultsOf(colony), [&](const Result& r) { return r.colony == colony; }));
}

std::vector<Result> AfterContext::resultsOf(YardId yard) const {
    return byDay(merged(m_book.resultsOf(yard), [&](const Result& r) { return r.yard == yard; }));
}

std::vector<Feeding> AfterContext::feedingsOf(ColonyId colony) const {
    return byDay(merged(m_book.feedingsOf(colony), [&](const Feeding& f) { return f.colony == colony; }));
}

std::vector<Sample> AfterContext::samplesOf(ColonyId colony) const {
    return byDay(merged(m_book.samplesOf(colony), [&](const Sample& s) { return s.colony == colony; }));
}

std::optional<Sample> AfterContext::sampleAnsweredBy(ResultId result) const {
    std::vector<Sample> found;
    if (auto sample = m_book.sampleAnsweredBy(result)) found.push_back(*std::move(sample));
    found = merged(std::move(found), [&](const Sample& s) { return s.result == result; });
    return found.empty() ? std::nullopt : std::optional(found.front());
}

std::vector<MiteFall> AfterContext::miteFallsOf(ColonyId colony) const {
    return byDay(merged(m_book.miteFallsOf(colony), [&](const MiteFall& f) { return f.colony == colony; }));
}

std::vector<Queen> AfterContext::queensOf(ColonyId colony) const {
    return bySince(merged(m_book.queensOf(colony), [&](const Queen& q) { return q.colony == colony; }));
}

std::vector<Queen> AfterContext::queensRaisedFrom(ColonyId mother) const {
    return bySince(merged(m_book.queensRaisedFrom(mother), [&](const Queen& q) { return q.mother == mother; }));
}

std::vector<Visit> AfterContext::visitsOf(ColonyId colony, int most) const {
    const auto ofIt = [&](const Visit& v) { return v.colony == colony; };
    const Written& now = written(Table::Visit);
    if (now.empty() && written(Table::VisitSign).empty()) return m_book.visitsOf(colony, most);
    // As many more as may be gone.
    const int ask = most < 0 ? most : most + static_cast<int>(now.size());
    auto visits = merged(m_book.visitsOf(colony, ask), ofIt);
    std::sort(visits.begin(), visits.end(), [](const Visit& a, const Visit& b) { return a.day > b.day; });
    if (most >= 0 && visits.size() > static_cast<size_t>(most)) visits.resize(static_cast<size_t>(most));
    for (Visit& v : visits) v = withSigns(std::move(v));
    return visits;
}

std::pair<Day, int> AfterContext::boxEvent(ColonyId id, Day day, std::optional<int> visited) const {
    const auto own = colony(id);
    if (!own) throw Error(Error::Kind::Internal, QStringLiteral("No such colony."));
    std::pair<Day, int> last{own->since, own->broodBoxes};
    const auto visits = visitsOf(id, -1);
    const auto said =
        std::find_if(visits.begin(), visits.end(), [&](const Visit& v) { return v.boxes && v.day <= day; });
    if (said != visits.end()) last = {said->day, *said->boxes};
    if (visited) last = {day, *visited};
    for (const Lineage& l : lineageOf(id))
        if (l.how == LineageHow::United && l.into == id && l.day <= day && l.day >= last.first) last = {l.day, 2};
    return last;
}

int AfterContext::boxesAt(ColonyId colony, Day day, std::optional<int> visited) const {
    return boxEvent(colony, day, visited).second;
}

Day AfterContext::boxesSince(ColonyId colony, Day day) const { return boxEvent(colony, day, {}).first; }

} // namespace core::edit
