#include "core/rules/season_strength.h"

#include "core/rules/strength.h"

#include <algorithm>

namespace core::rules {

namespace {

/// What is known of one colony over the period.
struct Line {
    std::vector<std::pair<Day, int>> boxes; ///< brood boxes from that day on; the last of a day is right
    std::vector<SnapCount> counts;          ///< by day
    std::vector<Day> freshStarts;           ///< by day (rule 4.0)

    int boxesOn(Day day) const {
        const auto after = std::ranges::upper_bound(boxes, day, {}, &std::pair<Day, int>::first);
        return (after - 1)->second;
    }
    /// The latest count on or before the day, where it is still valid.
    const SnapCount* validOn(Day day) const {
        const auto after = std::ranges::upper_bound(counts, day, {}, &SnapCount::day);
        if (after == counts.begin()) return nullptr;
        const SnapCount& last = *(after - 1);
        const auto fresh = std::ranges::upper_bound(freshStarts, day);
        return fresh == freshStarts.begin() || last.day > *(fresh - 1) ? &last : nullptr;
    }
};

bool counts(const Visit& v) { return v.beesTop || v.beesBottom || v.upperBeesTop || v.upperBeesBottom; }

SnapCount countOf(const Visit& v) {
    return {v.day,         v.beesTop, v.beesBottom, v.upperBeesTop, v.upperBeesBottom, v.stores, v.upperStores,
            v.broodFrames, 1};
}

class Lines {
public:
    explicit Lines(const SeasonBook& book) : m_lines(book.s.colonies.size()) {
        const ColonyPlaces places(book.s);
        begin(book, places);
        for (const Visit& v : book.visits)
            if (const auto c = places.find(v.colony)) take(of(*c), v);
        for (const SnapLineage& row : book.s.lineage) take(row, book.from);
        for (Line& line : m_lines) settle(line, book.from);
    }

    const Line& of(ColonyIx c) const { return m_lines[static_cast<size_t>(c.value)]; }

private:
    Line& of(ColonyIx c) { return m_lines[static_cast<size_t>(c.value)]; }

    /// How each stood when the period began.
    void begin(const SeasonBook& book, const ColonyPlaces& places) {
        for (size_t i = 0; i < m_lines.size(); ++i) m_lines[i].boxes.push_back({Day{0}, book.s.colonies[i].broodBoxes});
        for (size_t i = 0; i < book.before.colonies.size(); ++i) {
            const SnapColony& colony = book.before.colonies[i];
            const auto c = places.find(colony.id);
            if (!c || !colony.living()) continue;
            const SnapLatest& latest = book.before.latest[i];
            of(*c).boxes = {{Day{0}, latest.boxes}};
            if (latest.count) of(*c).counts.push_back(*latest.count);
        }
    }
    static void take(Line& line, const Visit& v) {
        if (v.boxes) line.boxes.push_back({v.day, *v.boxes});
        if (counts(v)) line.counts.push_back(countOf(v));
    }
    void take(const SnapLineage& row, Day from) {
        if (row.how == LineageHow::ShakenOut) return;
        of(row.into).freshStarts.push_back(row.day);
        if (row.how == LineageHow::Divided) of(row.colony).freshStarts.push_back(row.day);
        // Of a day with a visit too the union is right: it comes after it here.
        if (row.how == LineageHow::United && row.day >= from) of(row.into).boxes.push_back({row.day, 2});
    }
    static void settle(Line& line, Day from) {
        std::ranges::stable_sort(line.boxes, {}, &std::pair<Day, int>::first);
        std::ranges::stable_sort(line.counts, {}, &SnapCount::day);
        std::ranges::sort(line.freshStarts);
        for (SnapCount& count : line.counts)
            if (count.day >= from) count.boxes = line.boxesOn(count.day);
    }

    std::vector<Line> m_lines;
};

void add(StrengthWeek& week, const Strength& strength, const Settings& settings) {
    ++week.living;
    if (!strength.quarters) {
        ++(strength.why == NoStrength::NoBees     ? week.noBees
           : strength.why == NoStrength::CountOld ? week.countOld
                                                  : week.noCount);
        return;
    }
    ++week.counted;
    week.sum = week.sum + *strength.quarters;
    ++week.ofClass[static_cast<size_t>(classOf(*strength.quarters, settings))];
}

} // namespace

std::optional<double> StrengthWeek::mean() const {
    if (counted == 0) return std::nullopt;
    return sum.frames() / counted;
}

std::vector<StrengthWeek> strengthByWeek(const SeasonBook& book) {
    const auto weeks = weeksBetween(book.from, book.s.on);
    std::vector<StrengthWeek> out(weeks.size());
    for (size_t w = 0; w < weeks.size(); ++w) out[w].days = weeks[w];
    const Lines lines(book);
    const ColonyPlaces places(book.s);
    for (size_t i = 0; i < book.s.colonies.size(); ++i) {
        const ColonyIx c{static_cast<qint32>(i)};
        const auto& ended = book.s.colonies[i].ended;
        if ((ended && *ended < book.from) || !stoodThere(book, c)) continue;
        for (StrengthWeek& week : out) {
            const auto yard = places.livingIn(c, week.days.last);
            if (!yard || (book.yard && yard != book.yard)) continue;
            const Day end = week.days.last;
            add(week, strengthOn(end, lines.of(c).validOn(end), book.s.settings), book.s.settings);
        }
    }
    return out;
}

} // namespace core::rules
