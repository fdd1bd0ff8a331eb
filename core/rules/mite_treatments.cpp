#include "core/rules/mite_treatments.h"

#include "core/rules/season_book.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace core::rules {

namespace {

/// One colony's treatment, of a round.
struct TreatedSpan {
    ColonyIx colony;
    TreatedDays days;
    bool known = false;
    size_t round = 0;
};

struct TreatingRound {
    const Treatment* first = nullptr;
    YardIx yard;
    std::vector<size_t> spans; ///< positions
};

struct WashOn {
    Day day;
    calc::MiteSample counted;
};

/// Both days of a pair, with what was counted on them.
template <class T> struct CountedTwice {
    const T* before;
    const T* after;
};

std::vector<std::vector<ColonyIx>> coloniesByYard(const Snapshot& s) {
    std::vector<std::vector<ColonyIx>> out(s.yards.size());
    for (const SnapStay& stay : s.stays) {
        auto& there = out[static_cast<size_t>(stay.yard.value)];
        if (there.empty() || there.back() != stay.colony) there.push_back(stay.colony);
    }
    return out;
}

/// All treatments against mites, colony by colony, and how they belong together.
class TreatedColonies {
public:
    explicit TreatedColonies(const TreatmentBook& book)
        : m_book(book), m_places(book.s), m_byYard(coloniesByYard(book.s)) {
        for (size_t i = 0; i < book.s.yards.size(); ++i)
            m_yards.emplace(book.s.yards[i].id, YardIx{static_cast<qint32>(i)});
        for (const StripsOut& o : book.out) m_outs[o.treatment].push_back(o);
        for (const Treatment& t : book.treatments)
            if (againstMites(t) && t.day <= book.s.on) add(t);
        for (size_t i = 0; i < spans.size(); ++i) m_ofColony[spans[i].colony].push_back(i);
    }

    std::vector<TreatedSpan> spans;
    std::vector<TreatingRound> rounds;

    bool any(ColonyIx c, auto&& holds) const {
        const auto of = m_ofColony.find(c);
        return of != m_ofColony.end() && std::ranges::any_of(of->second, [&](size_t i) { return holds(spans[i]); });
    }
    /// It was treated, but not in that round, between the days of a pair.
    bool between(ColonyIx c, Day before, Day after, std::optional<size_t> but) const {
        return any(
            c, [&](const TreatedSpan& s) { return s.round != but && s.days.first < after && s.days.last >= before; });
    }
    std::vector<TreatedDays> daysOf(ColonyIx c) const {
        std::vector<TreatedDays> out;
        if (const auto of = m_ofColony.find(c); of != m_ofColony.end())
            for (const size_t i : of->second) out.push_back(spans[i].days);
        return out;
    }
    const std::map<ColonyIx, std::vector<size_t>>& byColony() const { return m_ofColony; }

private:
    void add(const Treatment& t) {
        if (t.colony) {
            if (const auto c = m_places.find(*t.colony)) add(t, *c);
            return;
        }
        const auto yard = m_yards.find(*t.yard);
        if (yard == m_yards.end()) return;
        for (const ColonyIx c : m_byYard[static_cast<size_t>(yard->second.value)])
            if (m_places.livingIn(c, t.day) == yard->second) add(t, c);
    }

    void add(const Treatment& t, ColonyIx c) {
        const auto yard = m_places.yardOn(c, t.day);
        if (!yard) return;
        const auto key = std::tuple(t.day, *yard, t.product.trimmed().toCaseFolded());
        const auto [at, fresh] = m_rounds.emplace(key, rounds.size());
        if (fresh) rounds.push_back({&t, *yard, {}});
        const ColonyId id = m_book.s.colony(c).id;
        const std::vector<StripsOut>& outs = m_outs[t.id];
        const bool out = std::ranges::any_of(outs, [&](const StripsOut& o) { return o.colony == id; });
        rounds[at->second].spans.push_back(spans.size());
        spans.push_back({c, treatedDays(t, id, outs), t.days || out, at->second});
    }

    const TreatmentBook& m_book;
    ColonyPlaces m_places;
    std::vector<std::vector<ColonyIx>> m_byYard;
    std::map<YardId, YardIx> m_yards;
    std::map<TreatmentId, std::vector<StripsOut>> m_outs;
    std::map<std::tuple<Day, YardIx, QString>, size_t> m_rounds;
    std::map<ColonyIx, std::vector<size_t>> m_ofColony;
};

/// What was counted in each colony, by day.
class CountedMites {
public:
    explicit CountedMites(const TreatmentBook& book) {
        const ColonyPlaces places(book.s);
        for (const Visit& v : book.visits)
            if (v.mites && v.miteSample && v.day <= book.s.on)
                if (const auto c = places.find(v.colony)) washes[*c].push_back({v.day, {*v.mites, *v.miteSample}});
        for (const MiteFall& f : book.falls)
            if (const auto c = places.find(f.colony); c && f.day <= book.s.on) falls[*c].push_back(f);
    }
    std::map<ColonyIx, std::vector<WashOn>> washes;
    std::map<ColonyIx, std::vector<MiteFall>> falls;
};

Day firstDay(const WashOn& w) { return w.day; }
Day firstDay(const MiteFall& f) { return boardSince(f); }

/// The latest before a treatment and the first after it, in their windows.
template <class T>
std::optional<CountedTwice<T>> pairOf(const std::vector<T>& counted, const TreatedDays& days, auto&& counts) {
    CountedTwice<T> pair{nullptr, nullptr};
    for (const T& one : counted) {
        if (!counts(one)) continue;
        if (one.day <= days.first && one.day >= days.first - kBeforeTreating) pair.before = &one;
        if (!pair.after && firstDay(one) >= days.last + kAfterFirst && one.day <= days.last + kAfterLast)
            pair.after = &one;
    }
    return pair.before && pair.after ? std::optional(pair) : std::nullopt;
}

bool always(const WashOn&) { return true; }

/// One treatment and what was counted around it.
class AroundTreatment {
public:
    AroundTreatment(const TreatedColonies& treated, const CountedMites& counted, size_t round)
        : m_treated(treated), m_counted(counted) {
        const TreatingRound& r = treated.rounds[round];
        m_out.treatment = *r.first;
        m_out.yard = r.yard;
        m_out.days = {r.first->day, r.first->day};
        m_out.treated = static_cast<int>(r.spans.size());
        for (const size_t i : r.spans) {
            const TreatedSpan& span = treated.spans[i];
            m_out.days.last = std::max(m_out.days.last, span.days.last);
            m_out.daysKnown = m_out.daysKnown || span.known;
            washed(span);
            fallen(span);
        }
        m_out.washes = calc::mitesChange(m_pairs);
        untreated(round);
        if (m_fallen.colonies > 0) m_out.fallen = mean();
        if (m_out.boardsDuring > 0) m_out.fallenDuring /= m_out.boardsDuring;
    }

    TreatmentSeen take() { return std::move(m_out); }

private:
    void washed(const TreatedSpan& span) {
        const auto of = m_counted.washes.find(span.colony);
        if (of == m_counted.washes.end()) return;
        const auto pair = pairOf(of->second, span.days, always);
        if (!pair) return;
        if (m_treated.between(span.colony, pair->before->day, pair->after->day, span.round))
            ++m_out.mixed;
        else
            m_pairs.push_back({pair->before->counted, pair->after->counted});
    }

    void untreated(size_t round) {
        std::vector<calc::WashedTwice> pairs;
        for (const auto& [colony, washes] : m_counted.washes) {
            if (m_treated.any(colony, [&](const TreatedSpan& s) { return s.round == round; })) continue;
            const auto pair = pairOf(washes, m_out.days, always);
            if (pair && !m_treated.between(colony, pair->before->day, pair->after->day, std::nullopt))
                pairs.push_back({pair->before->counted, pair->after->counted});
        }
        m_out.untreated = calc::mitesChange(pairs);
    }

    void fallen(const TreatedSpan& span) {
        const auto of = m_counted.falls.find(span.colony);
        if (of == m_counted.falls.end()) return;
        const auto all = m_treated.daysOf(span.colony);
        const auto pair = pairOf(of->second, span.days, [&](const MiteFall& f) { return !whileTreated(f, all); });
        if (pair && !m_treated.between(span.colony, pair->before->day, pair->after->day, span.round)) {
            ++m_fallen.colonies;
            m_fallen.before += mitesADay(*pair->before);
            m_fallen.after += mitesADay(*pair->after);
        }
        for (const MiteFall& f : of->second) {
            if (!whileTreated(f, std::span(&span.days, 1))) continue;
            ++m_out.boardsDuring;
            m_out.fallenDuring += mitesADay(f);
        }
    }

    FallenTwice mean() const {
        return {m_fallen.colonies, m_fallen.before / m_fallen.colonies, m_fallen.after / m_fallen.colonies};
    }

    const TreatedColonies& m_treated;
    const CountedMites& m_counted;
    TreatmentSeen m_out;
    std::vector<calc::WashedTwice> m_pairs;
    FallenTwice m_fallen;
};

} // namespace

std::vector<TreatmentSeen> treatmentsSeen(const TreatmentBook& book) {
    const TreatedColonies treated(book);
    const CountedMites counted(book);
    std::vector<TreatmentSeen> out;
    for (size_t i = 0; i < treated.rounds.size(); ++i) {
        const TreatingRound& round = treated.rounds[i];
        if (round.first->day < book.from || (book.yard && round.yard != *book.yard)) continue;
        out.push_back(AroundTreatment(treated, counted, i).take());
    }
    std::ranges::stable_sort(out, [](const TreatmentSeen& a, const TreatmentSeen& b) {
        return std::tuple(b.treatment.day, a.yard) < std::tuple(a.treatment.day, b.yard);
    });
    return out;
}

std::map<ColonyId, std::vector<TreatedDays>> treatedByColony(const TreatmentBook& book) {
    const TreatedColonies treated(book);
    std::map<ColonyId, std::vector<TreatedDays>> out;
    for (const auto& [colony, spans] : treated.byColony()) out[book.s.colony(colony).id] = treated.daysOf(colony);
    return out;
}

} // namespace core::rules
