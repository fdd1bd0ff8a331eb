#include "core/rules/due.h"

#include "core/base/natural_order.h"
#include "core/rules/hold_sources.h"
#include "core/rules/limits.h"

#include <algorithm>
#include <map>
#include <optional>

namespace core::rules {

namespace {

constexpr int kListedBefore = fixed::kListedBefore;
constexpr int kUnionCheckFor = fixed::kUnionCheckFor;
constexpr int kTakeOutFor = fixed::kTakeOutFor;
constexpr int kResultFor = fixed::kResultFor;

class DueList {
public:
    DueList(const DayView& view, const std::vector<YardIx>& yards) : m_view(view), m_s(view.s), m_yards(yards) {}

    std::vector<Due> all() {
        addUnionChecks();
        addTakeOuts();
        addResultsAwaited();
        sortAndUnique();
        return std::move(m_due);
    }

private:
    void add(ColonyIx colony, DueKind what, Day on, Reason why) {
        const SnapStay* place = m_s.placeOf(colony);
        if (place && std::binary_search(m_yards.begin(), m_yards.end(), place->yard))
            m_due.push_back({colony, what, on, std::move(why)});
    }

    static Reason reason(const char* window) { return Reason{"4.14"}.limit("4.14 listed_before").limit(window); }

    Reason awaited(ColonyIx colony) const {
        Reason why{"4.14"};
        if (const auto sign = latestUpTo(m_view.evidence->findings.signs.of(colony.value), m_s.on))
            why.fact("sign", *sign);
        if (const auto& ended = m_s.colony(colony).ended) why.fact("ended", *ended).limit("4.14 result_for");
        return why;
    }

    /// `day` is the check's own; it is listed to `last`.
    bool listed(Day day, Day last) const { return m_s.on >= day - kListedBefore && m_s.on <= last; }

    void addUnionChecks() {
        for (const SnapLineage& row : m_s.lineage) {
            if (row.how != LineageHow::United || !m_s.colony(row.into).living()) continue;
            const Day day = row.day + m_s.settings.followUnionDays;
            const auto& visit = m_s.latestOf(row.into).visit;
            if ((!visit || *visit <= row.day) && listed(day, row.day + kUnionCheckFor))
                add(row.into, DueKind::UnionCheck, day,
                    reason("4.14 union_check_for").fact("united", row.day).limit("follow.union_days"));
        }
    }

    /// The living colony that the hive of `colony` went into by unions, or itself.
    std::optional<ColonyIx> livingHeir(ColonyIx colony) {
        if (m_unitedInto.empty())
            for (const SnapLineage& row : m_s.lineage)
                if (row.how == LineageHow::United) m_unitedInto.emplace(row.colony, row.into);
        for (size_t steps = 0; steps <= m_unitedInto.size(); ++steps) {
            if (m_s.colony(colony).living()) return colony;
            const auto heir = m_unitedInto.find(colony);
            if (heir == m_unitedInto.end()) return std::nullopt;
            colony = heir->second;
        }
        return std::nullopt;
    }

    void addTakeOut(ColonyIx treated, const SnapTreatment& t) {
        if (const auto heir = livingHeir(treated))
            add(*heir, DueKind::TakeOut, t.day + *t.days,
                reason("4.14 take_out_for")
                    .fact("treated", t.day)
                    .fact("product", t.product)
                    .fact("days", qint64(*t.days)));
    }

    void addTakeOuts() {
        std::multimap<YardIx, const SnapTreatment*> ofYards;
        for (const SnapTreatment& t : m_s.treatments) {
            if (!t.days || !listed(t.day + *t.days, t.day + *t.days + kTakeOutFor)) continue;
            if (t.colony.value >= 0)
                addTakeOut(t.colony, t);
            else
                ofYards.emplace(t.yard, &t);
        }
        if (ofYards.empty()) return;
        for (size_t i = 0; i < m_s.stays.size(); ++i) {
            const SnapStay& stay = m_s.stays[i];
            const auto [first, last] = ofYards.equal_range(stay.yard);
            for (auto it = first; it != last; ++it)
                if (stoodAt(i, it->second->day)) addTakeOut(stay.colony, *it->second);
        }
    }

    /// Whether the stay counts on that day: on the day of a carry only the new place does.
    bool stoodAt(size_t stay, Day day) const {
        const SnapStay& here = m_s.stays[stay];
        if (day < here.since || (here.until && day > *here.until)) return false;
        const bool carriedThatDay = stay + 1 < m_s.stays.size() && m_s.stays[stay + 1].colony == here.colony &&
                                    m_s.stays[stay + 1].since <= day;
        return !carriedThatDay;
    }

    void addResultsAwaited() {
        for (size_t i = 0; i < m_s.colonies.size(); ++i) {
            const ColonyIx colony{static_cast<qint32>(i)};
            const auto& ended = m_s.colony(colony).ended;
            if (isSuspected(*m_view.evidence, colony) && (!ended || m_s.on <= *ended + kResultFor))
                add(colony, DueKind::ResultAwaited, m_s.on, awaited(colony));
        }
    }

    void sortAndUnique() {
        std::sort(m_due.begin(), m_due.end(), [&](const Due& a, const Due& b) {
            if (a.on != b.on) return a.on < b.on;
            if (a.colony != b.colony) return naturalCompare(m_view.name(a.colony), m_view.name(b.colony)) < 0;
            return a.what < b.what;
        });
        const auto same = [](const Due& a, const Due& b) {
            return a.on == b.on && a.colony == b.colony && a.what == b.what;
        };
        m_due.erase(std::unique(m_due.begin(), m_due.end(), same), m_due.end());
    }

    const DayView& m_view;
    const Snapshot& m_s;
    const std::vector<YardIx>& m_yards;
    std::vector<Due> m_due;
    std::map<ColonyIx, ColonyIx> m_unitedInto;
};

} // namespace

std::vector<Due> dueChecks(const DayView& view, const std::vector<YardIx>& yards) { return DueList(view, yards).all(); }

} // namespace core::rules
