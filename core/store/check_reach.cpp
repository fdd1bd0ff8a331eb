#include "core/store/check_reach.h"

#include <algorithm>

namespace core::store {

namespace {

/// No setting makes a check count for longer (rule 4.4: only downwards).
constexpr int kMostCheckAge = 150;

struct Gift {
    Day day;
    size_t from = 0;
    size_t to = 0;
    bool feed = false;
};

size_t at(ColonyIx ix) { return static_cast<size_t>(ix.value); }

/// Transfers and lineage as gifts (rule 4.4.1), by day.
std::vector<Gift> giftsOf(const Snapshot& s) {
    std::vector<Gift> gifts;
    gifts.reserve(s.transfers.size() + s.lineage.size());
    for (const SnapTransfer& t : s.transfers)
        gifts.push_back({t.day, at(t.from), at(t.to), t.what == TransferKind::Feed});
    for (const SnapLineage& l : s.lineage) gifts.push_back({l.day, at(l.colony), at(l.into), false});
    std::stable_sort(gifts.begin(), gifts.end(), [](const Gift& a, const Gift& b) { return a.day < b.day; });
    return gifts;
}

void lower(Day& day, Day to) { day = std::min(day, to); }

class Reach {
public:
    explicit Reach(const Snapshot& s)
        : m_s(s),
          m_gifts(giftsOf(s)),
          m_never(s.on + 1),
          m_linked(s.colonies.size(), m_never),
          m_needed(s.colonies.size(), m_never) {}

    std::vector<Day> run() {
        noteEvidence();
        linkGivers();
        linkYards();
        linkReceivers();
        needForUnchecked();
        for (size_t i = 0; i < m_needed.size(); ++i) lower(m_needed[i], m_linked[i]);
        return std::move(m_needed);
    }

private:
    /// The earliest afb, efb and doubt records of each colony, set back by all that the rules look back from them.
    void noteEvidence() {
        const Settings& set = m_s.settings;
        const int afb = std::max(set.traceDays, set.traceMaskedDays);
        m_sources.assign(m_s.colonies.size(), m_never);
        const auto note = [&](ColonyIx colony, Day day, bool afbSign, bool efb, bool doubt) {
            if (afbSign) lower(m_sources[at(colony)], day - afb);
            if (efb) lower(m_linked[at(colony)], day - set.efbBackDays);
            if (doubt) lower(m_linked[at(colony)], day - set.doubtBackDays);
        };
        for (const SnapSign& x : m_s.signs)
            note(x.colony, x.day, x.signs.has(Sign::Afb), x.signs.has(Sign::Efb), x.signs.has(Sign::BroodDoubt));
        for (const SnapResult& r : m_s.results)
            if (r.colony.value >= 0 && r.verdict == Verdict::Positive)
                note(r.colony, r.day, r.disease == Disease::Afb, r.disease == Disease::Efb, false);
        for (size_t i = 0; i < m_sources.size(); ++i) lower(m_linked[i], m_sources[i]);
    }

    /// Who gave to a source, or to a colony that went into it or that it was divided from (rule 4.4.7).
    void linkGivers() {
        std::vector<Day> heirs = m_sources;
        bool again = true;
        while (again) {
            again = false;
            for (const SnapLineage& l : m_s.lineage) {
                if (heirs[at(l.into)] >= heirs[at(l.colony)]) continue;
                heirs[at(l.colony)] = heirs[at(l.into)];
                again = true;
            }
        }
        for (const Gift& g : m_gifts)
            if (g.day >= heirs[g.to]) lower(m_linked[g.from], heirs[g.to]);
    }

    /// Who stood in a yard where a source ever stood (rule 4.4.9).
    void linkYards() {
        std::vector<Day> yards(m_s.yards.size(), m_never);
        for (const SnapStay& stay : m_s.stays)
            lower(yards[static_cast<size_t>(stay.yard.value)], m_sources[at(stay.colony)]);
        for (const SnapStay& stay : m_s.stays)
            lower(m_linked[at(stay.colony)], yards[static_cast<size_t>(stay.yard.value)]);
    }

    /// Who received, in the order of days, from one linked by then; gifts of one day in any order.
    void linkReceivers() {
        for (auto first = m_gifts.cbegin(); first != m_gifts.cend();) {
            const auto last = std::find_if(first, m_gifts.cend(), [&](const Gift& g) { return g.day != first->day; });
            bool again = true;
            while (again) {
                again = false;
                for (auto g = first; g != last; ++g) {
                    if (m_linked[g->from] > g->day || m_linked[g->to] <= g->day) continue;
                    m_linked[g->to] = g->day;
                    again = true;
                }
            }
            first = last;
        }
    }

    /// Backwards from the day: a gift that may spoil a check asks whether its giver was checked (rule 4.4.10).
    void needForUnchecked() {
        for (size_t i = 0; i < m_needed.size(); ++i)
            if (m_s.colonies[i].living()) m_needed[i] = m_s.on - kMostCheckAge;
        for (auto last = m_gifts.crbegin(); last != m_gifts.crend();) {
            const auto first = std::find_if(last, m_gifts.crend(), [&](const Gift& g) { return g.day != last->day; });
            bool again = true;
            while (again) {
                again = false;
                for (auto g = last; g != first; ++g) {
                    const Day asked = g->day - kMostCheckAge;
                    if (g->feed || g->day < m_needed[g->to] || m_needed[g->from] <= asked) continue;
                    m_needed[g->from] = asked;
                    again = true;
                }
            }
            last = first;
        }
    }

    const Snapshot& m_s;
    std::vector<Gift> m_gifts;
    Day m_never;
    std::vector<Day> m_sources; ///< of colonies with afb records: the day from which their window may be open
    std::vector<Day> m_linked;
    std::vector<Day> m_needed;
};

} // namespace

std::vector<Day> checksNeededFrom(const Snapshot& s) { return Reach(s).run(); }

} // namespace core::store
