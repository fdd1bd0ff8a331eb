#include "core/rules/ledger.h"

#include "core/rules/calc/loss.h"
#include "core/rules/limits.h"
#include "core/rules/season.h"

#include <algorithm>
#include <map>

namespace core::rules {

namespace {

/// One thing that happened to the number of colonies of a yard.
struct Event {
    Day day;
    int LedgerCount::*what;
};

int LedgerCount::*slotOf(EndKind end) {
    switch (end) {
    case EndKind::Dead:
        return &LedgerCount::dead;
    case EndKind::Destroyed:
        return &LedgerCount::destroyed;
    case EndKind::United:
        return &LedgerCount::united;
    case EndKind::ShakenOut:
        return &LedgerCount::shakenOut;
    case EndKind::Sold:
        break;
    }
    return &LedgerCount::sold;
}

/// The first such day of the year on or after `from`.
Day nextOn(Day from, MonthDay md, bool southern) {
    const int year = toDate(from).year();
    for (int y = year - 1;; ++y)
        if (const Day day = dayInYear(y, md, southern); day >= from) return day;
}

/// The events of each yard, and where colonies stood, from the stays alone.
class Book {
public:
    explicit Book(const Snapshot& s)
        : m_s(s), m_events(s.yards.size()), m_first(s.yards.size()), m_who(s.yards.size()) {
        std::vector<bool> ofDivide(s.colonies.size(), false);
        for (const SnapLineage& l : s.lineage)
            if (l.how == LineageHow::Divided) ofDivide[static_cast<size_t>(l.into.value)] = true;
        for (size_t i = 0; i < s.colonies.size(); ++i) take({static_cast<qint32>(i)}, ofDivide[i]);
    }

    std::optional<Day> first(YardIx yard) const { return m_first[at(yard)]; }

    /// Living there as the day begins.
    int countAt(YardIx yard, Day day) const {
        int count = 0;
        for (const ColonyIx c : m_who[at(yard)]) {
            const SnapColony& colony = m_s.colony(c);
            if (colony.since >= day || (colony.ended && *colony.ended < day)) continue;
            if (const SnapStay* stay = stayBefore(c, day); stay && stay->yard == yard) ++count;
        }
        return count;
    }
    LedgerCount count(YardIx yard, Day from, Day next) const {
        LedgerCount count;
        count.start = countAt(yard, from);
        for (const Event& e : m_events[at(yard)])
            if (e.day >= from && e.day < next) ++(count.*e.what);
        count.end = countAt(yard, next);
        return count;
    }

private:
    static size_t at(YardIx yard) { return static_cast<size_t>(yard.value); }

    /// The last stay that began before the day.
    const SnapStay* stayBefore(ColonyIx c, Day day) const {
        const SnapStay* last = nullptr;
        for (const SnapStay& stay : m_s.staysOf(c))
            if (stay.since < day) last = &stay;
        return last;
    }
    void add(YardIx yard, Day day, int LedgerCount::*what) { m_events[at(yard)].push_back({day, what}); }

    void take(ColonyIx c, bool ofDivide) {
        const SnapColony& colony = m_s.colony(c);
        const auto stays = m_s.staysOf(c);
        if (stays.empty()) return;
        add(stays.front().yard, colony.since, ofDivide ? &LedgerCount::divided : &LedgerCount::begun);
        for (const SnapStay& stay : stays) {
            auto& first = m_first[at(stay.yard)];
            first = first ? std::min(*first, stay.since) : stay.since;
            auto& who = m_who[at(stay.yard)];
            if (who.empty() || who.back() != c) who.push_back(c);
        }
        for (size_t i = 1; i < stays.size(); ++i) {
            if (stays[i].yard == stays[i - 1].yard) continue;
            add(stays[i - 1].yard, stays[i].since, &LedgerCount::movedOut);
            add(stays[i].yard, stays[i].since, &LedgerCount::movedIn);
        }
        if (colony.ended) add(stays.back().yard, *colony.ended, slotOf(colony.end));
    }

    const Snapshot& m_s;
    std::vector<std::vector<Event>> m_events; ///< by yard
    std::vector<std::optional<Day>> m_first;  ///< by yard: the first day of a hive
    std::vector<std::vector<ColonyIx>> m_who; ///< by yard: those that ever stood there, each once
};

/// The first days of fall, winter, summer and the next fall; seasons that settings turn round are empty.
std::array<Day, 4> daysOf(Day fall, const Settings& settings, bool southern) {
    const Day next = nextOn(fall + 1, settings.fallStart, southern);
    const Day spring = std::min(nextOn(fall, fixed::kDivideFrom, southern), next);
    const Day winter = std::min(nextOn(fall, settings.fallEnd, southern) + 1, spring);
    return {fall, winter, spring, next};
}

std::optional<calc::Counted> winterOf(const LedgerYear& year) {
    const LedgerPeriod* winter = year.of(LedgerSeason::Winter);
    if (!winter || !winter->over) return std::nullopt;
    const LedgerCount& c = winter->count;
    return calc::lossOf({c.start, c.divided, c.begun + c.movedIn, c.givenUp() + c.sold + c.movedOut, c.end});
}

LedgerYear yearOf(const Book& book, const Snapshot& s, YardIx yard, Day fall) {
    LedgerYear year{yard, s.yard(yard).southern(), toDate(fall).year(), {}, {}};
    const auto days = daysOf(fall, s.settings, year.southern);
    for (int season = 0; season < 3; ++season) {
        const Day from = days[static_cast<size_t>(season)], next = days[static_cast<size_t>(season) + 1];
        if (from > s.on) break;
        const bool over = next - 1 < s.on; // its last day is behind
        const Day until = std::min(next, s.on + 1);
        year.periods.push_back(
            {static_cast<LedgerSeason>(season), from, next - 1, over, book.count(yard, from, until)});
    }
    if (const auto lost = winterOf(year)) year.winterLoss = calc::clusteredShare({&*lost, 1});
    return year;
}

/// All yards of one half of the earth, year by year.
std::vector<LedgerYear> together(const std::vector<LedgerYear>& yards, bool southern) {
    std::map<int, LedgerYear> years;
    std::map<int, std::vector<calc::Counted>> lost;
    for (const LedgerYear& one : yards) {
        if (one.southern != southern) continue;
        LedgerYear& all = years.try_emplace(one.year, LedgerYear{{}, southern, one.year, {}, {}}).first->second;
        if (all.periods.size() < one.periods.size())
            all.periods = [&] {
                auto periods = one.periods;
                for (size_t i = 0; i < periods.size(); ++i)
                    periods[i].count = i < all.periods.size() ? all.periods[i].count : LedgerCount{};
                return periods;
            }();
        for (size_t i = 0; i < one.periods.size(); ++i) all.periods[i].count += one.periods[i].count;
        if (const auto counted = winterOf(one)) lost[one.year].push_back(*counted);
    }
    std::vector<LedgerYear> out;
    for (auto& [number, year] : years) {
        if (const auto& counted = lost[number]; !counted.empty()) year.winterLoss = calc::clusteredShare(counted);
        out.push_back(std::move(year));
    }
    return out;
}

} // namespace

LedgerCount& LedgerCount::operator+=(const LedgerCount& other) {
    for (int LedgerCount::*slot :
         {&LedgerCount::start, &LedgerCount::divided, &LedgerCount::begun, &LedgerCount::movedIn, &LedgerCount::united,
          &LedgerCount::shakenOut, &LedgerCount::dead, &LedgerCount::destroyed, &LedgerCount::sold,
          &LedgerCount::movedOut, &LedgerCount::end})
        this->*slot += other.*slot;
    return *this;
}

const LedgerPeriod* LedgerYear::of(LedgerSeason season) const {
    const auto at = std::ranges::find(periods, season, &LedgerPeriod::season);
    return at == periods.end() ? nullptr : &*at;
}

std::vector<LedgerCount> ledgerCounts(const Snapshot& s, Day from, Day next) {
    const Book book(s);
    std::vector<LedgerCount> counts;
    for (size_t i = 0; i < s.yards.size(); ++i) counts.push_back(book.count({static_cast<qint32>(i)}, from, next));
    return counts;
}

std::vector<LedgerYear> ledger(const Snapshot& s) {
    const Book book(s);
    std::vector<LedgerYear> all;
    std::array<int, 2> yards{};
    for (size_t i = 0; i < s.yards.size(); ++i) {
        const YardIx yard{static_cast<qint32>(i)};
        const auto first = book.first(yard);
        if (!first) continue;
        const bool southern = s.yard(yard).southern();
        ++yards[southern];
        // Years run from the fall count on: the first is that in whose year the first colony came.
        for (Day fall = latestStart(*first, s.settings.fallStart, southern); fall <= s.on;
             fall = nextOn(fall + 1, s.settings.fallStart, southern))
            all.push_back(yearOf(book, s, yard, fall));
    }
    const size_t ofYards = all.size();
    for (const bool southern : {false, true}) {
        if (yards[southern] < 2) continue;
        auto sums = together({all.begin(), all.begin() + static_cast<std::ptrdiff_t>(ofYards)}, southern);
        all.insert(all.end(), std::make_move_iterator(sums.begin()), std::make_move_iterator(sums.end()));
    }
    return all;
}

} // namespace core::rules
