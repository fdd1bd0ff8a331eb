#include "core/edit/correction_days.h"

#include <algorithm>
#include <limits>
#include <map>
#include <queue>

namespace core::edit {

namespace {

constexpr int kUnlinked = std::numeric_limits<int>::max();
constexpr size_t kMostDaysOfRecords = 4;
constexpr size_t kMostAnswers = 2;

size_t at(ColonyIx ix) { return static_cast<size_t>(ix.value); }
size_t at(YardIx ix) { return static_cast<size_t>(ix.value); }

/// How many gifts or shared yards, at any time and in either direction, lie between what is touched and each colony
/// and yard. No hold reaches further than such links do.
class Links {
public:
    Links(const Snapshot& s, const Touched& touched)
        : m_s(s),
          m_colonies(s.colonies.size(), kUnlinked),
          m_yards(s.yards.size(), kUnlinked),
          m_gifts(s.colonies.size()),
          m_stays(s.yards.size()) {
        for (const SnapTransfer& t : s.transfers) addGift(t.from, t.to);
        for (const SnapLineage& l : s.lineage) addGift(l.colony, l.into);
        for (const SnapStay& stay : s.stays) m_stays[at(stay.yard)].push_back(stay.colony);
        for (size_t i = 0; i < s.colonies.size(); ++i)
            if (touched.colonies.contains(s.colonies[i].id)) reach(ColonyIx{static_cast<qint32>(i)}, 0);
        for (size_t i = 0; i < s.yards.size(); ++i)
            if (touched.yards.contains(s.yards[i].id)) reach(YardIx{static_cast<qint32>(i)}, 0);
        walk();
    }
    int to(ColonyIx colony) const { return m_colonies[at(colony)]; }
    int to(YardIx yard) const { return m_yards[at(yard)]; }

private:
    void addGift(ColonyIx a, ColonyIx b) {
        m_gifts[at(a)].push_back(b);
        m_gifts[at(b)].push_back(a);
    }
    void reach(ColonyIx colony, int steps) {
        if (m_colonies[at(colony)] != kUnlinked) return;
        m_colonies[at(colony)] = steps;
        m_queue.push(colony);
    }
    void reach(YardIx yard, int steps) {
        if (m_yards[at(yard)] != kUnlinked) return;
        m_yards[at(yard)] = steps;
        for (const ColonyIx colony : m_stays[at(yard)]) reach(colony, steps);
    }
    void walk() {
        while (!m_queue.empty()) {
            const ColonyIx colony = m_queue.front();
            m_queue.pop();
            const int next = m_colonies[at(colony)] + 1;
            for (const ColonyIx other : m_gifts[at(colony)]) reach(other, next);
            for (const SnapStay& stay : m_s.staysOf(colony)) reach(stay.yard, next);
        }
    }

    const Snapshot& m_s;
    std::vector<int> m_colonies;
    std::vector<int> m_yards;
    std::vector<std::vector<ColonyIx>> m_gifts;
    std::vector<std::vector<ColonyIx>> m_stays; ///< of each yard, at any time
    std::queue<ColonyIx> m_queue;
};

class Picker {
public:
    Picker(const Snapshot& s, const Touched& touched) : m_s(s), m_touched(touched), m_links(s, touched) {}

    std::set<Day> pick(Day today) {
        const std::vector<Day> trouble = troubleDays();
        if (!m_linked) return {};
        m_days = {today, m_s.on};
        addLatest(m_touched.days);
        if (m_firstTrouble) add(*m_firstTrouble);
        addLatest(m_touched.edges);
        const std::vector<Day> answers = answerDays();
        // The nearest trouble first; of what is left, one of each in turn.
        for (size_t i = 0; i < std::max(trouble.size(), answers.size()); ++i) {
            if (i < trouble.size()) add(trouble[i]);
            if (i < std::min(answers.size(), kMostAnswers)) add(answers[i]);
        }
        return m_days;
    }

private:
    void add(Day day) {
        if (m_days.size() < kMostJudgedDays) m_days.insert(day);
    }
    void addLatest(const std::set<Day>& days) {
        size_t taken = 0;
        for (auto day = days.rbegin(); day != days.rend() && taken < kMostDaysOfRecords; ++day, ++taken) add(*day);
    }
    void note(int steps, Day day) {
        const auto& own = m_touched.days;
        if (!own.empty() && day >= *own.begin()) m_firstTrouble = std::min(m_firstTrouble.value_or(day), day);
        if (m_touched.wholeBook) steps = 0;
        if (steps == kUnlinked) return;
        m_linked = true;
        if (day < m_touched.first().value_or(day)) return; // where no day is touched, all are
        const auto known = m_near.try_emplace(day, steps).first;
        known->second = std::min(known->second, steps);
    }
    /// After the first touched day, nearest first.
    std::vector<Day> troubleDays() {
        for (const SnapSign& sign : m_s.signs)
            if (sign.signs.broodTrouble()) note(m_links.to(sign.colony), sign.day);
        for (const SnapResult& r : m_s.results)
            if (r.verdict == Verdict::Positive || r.verdict == Verdict::Order)
                note(r.colony.value >= 0 ? m_links.to(r.colony) : m_links.to(r.yard), r.day);
        std::vector<std::pair<int, Day>> byDistance;
        for (const auto& [day, steps] : m_near) byDistance.emplace_back(steps, day);
        std::sort(byDistance.begin(), byDistance.end());
        std::vector<Day> days;
        for (const auto& [steps, day] : byDistance) days.push_back(day);
        return days;
    }
    /// On which a touched colony had a negative, a release or a full look at its brood, or gave on, after the first
    /// touched day: without the record it may have been answered then.
    std::vector<Day> answerDays() const {
        std::set<Day> days;
        const auto first = m_touched.first();
        const auto take = [&](int steps, Day day) {
            if (steps == 0 && first && day > *first) days.insert(day);
        };
        for (const SnapResult& r : m_s.results)
            if (r.verdict == Verdict::Negative || r.verdict == Verdict::Release)
                take(r.colony.value >= 0 ? m_links.to(r.colony) : m_links.to(r.yard), r.day);
        for (const SnapCheck& check : m_s.checks)
            if (check.checked == check.broodFrames && check.checked > 0) take(m_links.to(check.colony), check.day);
        for (const SnapTransfer& t : m_s.transfers) take(m_links.to(t.from), t.day);
        return {days.begin(), days.end()};
    }

    const Snapshot& m_s;
    const Touched& m_touched;
    Links m_links;
    bool m_linked = false;
    std::optional<Day> m_firstTrouble;
    std::map<Day, int> m_near;
    std::set<Day> m_days;
};

} // namespace

std::set<Day> daysToJudge(const Snapshot& latest, const Touched& touched, Day today) {
    return Picker(latest, touched).pick(today);
}

} // namespace core::edit
