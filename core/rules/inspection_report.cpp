#include "core/rules/inspection_report.h"

#include "core/rules/calc/loss.h"
#include "core/rules/season_book.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

namespace core::rules {

namespace {

std::optional<calc::Counted> lostOf(const LedgerCount& c) {
    return calc::lossOf({c.start, c.divided, c.begun + c.movedIn, c.givenUp() + c.sold + c.movedOut, c.end});
}

/// Reads one book row by row. Ranks of colonies are the snapshot's: natural order.
class Reader {
public:
    explicit Reader(const InspectionBook& book)
        : m_book(book),
          m_s(book.s),
          m_places(book.s),
          m_dividedFrom(book.s.colonies.size()),
          m_asked(book.yards.begin(), book.yards.end()) {
        for (const SnapLineage& l : m_s.lineage)
            if (l.how == LineageHow::Divided) m_dividedFrom[static_cast<size_t>(l.into.value)] = l.colony;
    }

    Inspection read() {
        countYards();
        readVisits();
        readRecords();
        readLives();
        readMoves();
        sortAll();
        return std::move(m_out);
    }

private:
    bool asked(std::optional<YardIx> yard) const { return yard && m_asked.contains(*yard); }
    bool within(Day day) const { return day >= m_book.from && day <= m_s.on; }
    ColonyIx at(size_t i) const { return {static_cast<qint32>(i)}; }

    /// Where the colony stood, or had stood last, that day, where that is a yard asked for.
    std::optional<SeenAt> seen(ColonyId id, Day day, size_t row) const {
        const auto colony = m_places.find(id);
        const auto yard = colony ? m_places.yardOn(*colony, day) : std::nullopt;
        if (!asked(yard)) return std::nullopt;
        return SeenAt{*colony, *yard, row};
    }

    /// Colonies a day, each counted in the yard where it stands as the day ends.
    double meanIn(YardIx yard) const {
        const Day next = m_s.on + 1;
        qint64 days = 0;
        for (size_t i = 0; i < m_s.colonies.size(); ++i) {
            const SnapColony& colony = m_s.colonies[i];
            const auto stays = m_s.staysOf(at(i));
            for (size_t k = 0; k < stays.size(); ++k) {
                if (stays[k].yard != yard) continue;
                Day left = k + 1 < stays.size() ? stays[k + 1].since : next;
                if (colony.ended) left = std::min(left, *colony.ended);
                days += std::max(0, std::min(left, next) - std::max(stays[k].since, m_book.from));
            }
        }
        return static_cast<double>(days) / (next - m_book.from);
    }

    void countYards() {
        const auto counts = ledgerCounts(m_s, m_book.from, m_s.on + 1);
        YardOverTime all;
        for (const YardIx yard : m_book.yards) {
            YardOverTime one{yard, counts[static_cast<size_t>(yard.value)], meanIn(yard), {}};
            one.lost = lostOf(one.count);
            all.count += one.count;
            all.mean += one.mean;
            m_out.yards.push_back(std::move(one));
        }
        all.lost = lostOf(all.count);
        if (m_book.yards.size() > 1) m_out.yards.push_back(std::move(all));
    }

    void readVisits() {
        std::map<std::pair<Day, YardIx>, VisitDay> days;
        std::set<ColonyIx> examined;
        for (size_t i = 0; i < m_book.visits.size(); ++i) {
            const Visit& v = m_book.visits[i];
            const bool brood = v.broodChecked.value_or(0) >= 1;
            if (const auto colony = brood ? m_places.find(v.colony) : std::nullopt) examined.insert(*colony);
            const auto at = seen(v.colony, v.day, i);
            if (!at) continue;
            VisitDay& day = days.try_emplace({v.day, at->yard}, VisitDay{v.day, at->yard, 0, 0, {}}).first->second;
            ++day.visited;
            day.checked += brood;
            if (!v.by.isEmpty() && !day.by.contains(v.by)) day.by << v.by;
            m_out.visits.push_back(*at);
            if (brood) m_out.checks.push_back(*at);
            if (!v.signs.empty()) m_out.signs.push_back(*at);
            if (v.signs.has(Sign::Afb)) find(v.day, *at, Disease::Afb, {});
            if (v.signs.has(Sign::Efb)) find(v.day, *at, Disease::Efb, {});
            if (v.mites && v.miteSample) m_out.miteSamples.push_back(*at);
        }
        for (auto& [key, day] : days) m_out.visitDays.push_back(std::move(day));
        for (size_t i = 0; i < m_s.colonies.size(); ++i) {
            if (!m_s.colonies[i].living() || !asked(m_places.livingIn(at(i), m_s.on))) continue;
            m_out.living.push_back(at(i));
            if (!examined.contains(at(i))) m_out.unchecked.push_back(at(i));
        }
    }

    void find(Day day, const SeenAt& where, Disease disease, std::optional<Method> method) {
        FoulbroodFind found{day, where.colony, where.yard, disease, method, 0};
        for (size_t i = 0; i < m_s.colonies.size(); ++i) {
            const SnapColony& c = m_s.colonies[i];
            const bool lives = c.since <= day && (!c.ended || *c.ended >= day);
            if (lives && m_places.yardOn(at(i), day) == where.yard) ++found.hives;
        }
        m_out.finds.push_back(found);
    }

    /// Whether a row about a colony or a yard is about what was asked for; of a colony where it stood.
    template <class T> bool about(const T& row) const {
        if (row.colony) return seen(*row.colony, row.day, 0).has_value();
        return std::ranges::any_of(m_book.yards, [&](YardIx yard) { return m_s.yard(yard).id == row.yard; });
    }

    template <class T>
    void readBetween(const std::vector<T>& rows, ColonyId T::*from, ColonyId T::*to, std::vector<Between>& out) const {
        for (size_t i = 0; i < rows.size(); ++i) {
            const auto one = m_places.find(rows[i].*from), other = m_places.find(rows[i].*to);
            if (!one || !other) continue;
            if (asked(m_places.yardOn(*one, rows[i].day)) || asked(m_places.yardOn(*other, rows[i].day)))
                out.push_back({i, *one, *other});
        }
    }

    void readRecords() {
        for (size_t i = 0; i < m_book.results.size(); ++i) {
            const Result& r = m_book.results[i];
            if (!about(r)) continue;
            m_out.results.push_back(i);
            if (r.verdict == Verdict::Positive && r.colony)
                if (const auto at = seen(*r.colony, r.day, i)) find(r.day, *at, r.disease, r.method);
        }
        for (size_t i = 0; i < m_book.treatments.size(); ++i)
            if (about(m_book.treatments[i])) m_out.treatments.push_back(i);
        readBetween(m_book.transfers, &Transfer::from, &Transfer::to, m_out.transfers);
        readBetween(m_book.lineage, &Lineage::colony, &Lineage::into, m_out.lineage);
        for (size_t i = 0; i < m_book.falls.size(); ++i)
            if (const auto at = seen(m_book.falls[i].colony, m_book.falls[i].day, i)) m_out.falls.push_back(*at);
        for (size_t i = 0; i < m_book.samples.size(); ++i)
            if (const auto at = seen(m_book.samples[i].colony, m_book.samples[i].day, i)) m_out.samples.push_back(*at);
    }

    void readLives() {
        for (size_t i = 0; i < m_s.colonies.size(); ++i) {
            const SnapColony& c = m_s.colonies[i];
            const auto stays = m_s.staysOf(at(i));
            if (stays.empty()) continue;
            if (within(c.since) && asked(stays.front().yard))
                m_out.began.push_back({c.since, at(i), stays.front().yard, m_dividedFrom[i]});
            if (c.ended && within(*c.ended) && asked(stays.back().yard))
                m_out.ended.push_back({*c.ended, at(i), stays.back().yard, c.end});
        }
    }

    void readMoves() {
        std::map<std::tuple<Day, YardIx, YardIx>, HiveMove> moves;
        for (size_t i = 0; i < m_s.colonies.size(); ++i) {
            const auto stays = m_s.staysOf(at(i));
            for (size_t k = 1; k < stays.size(); ++k) {
                const YardIx from = stays[k - 1].yard, to = stays[k].yard;
                const Day day = stays[k].since;
                if (from == to || !within(day) || (!asked(from) && !asked(to))) continue;
                auto& move = moves.try_emplace({day, from, to}, HiveMove{day, from, to, {}}).first->second;
                move.colonies.push_back(at(i));
            }
        }
        for (auto& [key, move] : moves) m_out.moves.push_back(std::move(move));
    }

    template <class Rows> void sortSeen(std::vector<SeenAt>& seen, const Rows& rows) {
        std::ranges::stable_sort(seen, {},
                                 [&](const SeenAt& s) { return std::tuple(rows[s.row].day, s.yard, s.colony); });
    }

    void sortAll() {
        for (auto* seen : {&m_out.visits, &m_out.checks, &m_out.signs, &m_out.miteSamples})
            sortSeen(*seen, m_book.visits);
        sortSeen(m_out.falls, m_book.falls);
        sortSeen(m_out.samples, m_book.samples);
        const auto byPlace = [](const auto& row) { return std::tuple(row.day, row.yard, row.colony); };
        std::ranges::stable_sort(m_out.finds, {}, byPlace);
        std::ranges::stable_sort(m_out.began, {}, byPlace);
        std::ranges::stable_sort(m_out.ended, {}, byPlace);
        const auto byYard = [&](ColonyIx c) { return std::pair(*m_places.yardOn(c, m_s.on), c); };
        std::ranges::stable_sort(m_out.living, {}, byYard);
        std::ranges::stable_sort(m_out.unchecked, {}, byYard);
        m_out.holds = holds(m_s);
        std::erase_if(m_out.holds, [&](const Hold& h) { return !asked(m_places.livingIn(h.colony, m_s.on)); });
        std::ranges::stable_sort(m_out.holds, {}, [&](const Hold& h) { return byYard(h.colony); });
        m_out.facts = colonyFacts(m_s);
    }

    const InspectionBook& m_book;
    const Snapshot& m_s;
    ColonyPlaces m_places;
    std::vector<std::optional<ColonyIx>> m_dividedFrom; ///< by colony
    std::set<YardIx> m_asked;
    Inspection m_out;
};

} // namespace

Inspection inspect(const InspectionBook& book) { return Reader(book).read(); }

} // namespace core::rules
