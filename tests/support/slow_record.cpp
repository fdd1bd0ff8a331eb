#include "tests/support/slow_record.h"

#include <algorithm>
#include <iterator>
#include <limits>

namespace tests::support {

const std::map<std::string, int> kUpwards = {
    {"check.min_frames", 3},     {"check.full_frames", 3}, {"trace.masked_days", 548}, {"trace.days", 365},
    {"afb.own_result_days", 42}, {"afb.recheck_days", 60}, {"afb.yard_back_days", 60}, {"afb.yard_after_days", 365},
    {"efb.clear_days", 42},      {"efb.back_days", 42},    {"doubt.recheck_days", 21}, {"doubt.back_days", 42}};
const std::map<std::string, int> kDownwards = {{"check.max_age_days", 150}, {"check.grace_days", 30}};

namespace {

SlowBook upToDay(SlowBook book, int day) {
    const auto later = [day](const auto& row) { return row.day > day; };
    std::erase_if(book.visits, later);
    std::erase_if(book.transfers, later);
    std::erase_if(book.results, later);
    std::erase_if(book.treatments, later);
    std::erase_if(book.lineage, later);
    std::erase_if(book.placements, later);
    for (SlowColony& c : book.colonies) {
        if (c.ended && *c.ended > day) {
            c.ended.reset();
            c.end.clear();
        }
    }
    for (const SlowLineage& l : book.lineage) {
        if (l.how != "divided") {
            book.colonies[l.colony].ended = l.day;
            book.colonies[l.colony].end = l.how;
        }
    }
    return book;
}

void noteIf(bool so, Days& days, int day) {
    if (so) {
        days.insert(day);
    }
}

} // namespace

std::optional<int> latestUpTo(const Days& days, int day) {
    const auto after = days.upper_bound(day);
    return after == days.begin() ? std::nullopt : std::optional<int>(*std::prev(after));
}

bool anyIn(const Days& days, int first, int last) {
    const auto it = days.lower_bound(first);
    return it != days.end() && *it <= last;
}

SlowRecord::SlowRecord(const SlowBook& whole, int onDay)
    : book(upToDay(whole, onDay)), today(onDay), count(book.colonies.size()) {
    for (auto* days : {&clean, &full, &lifting, &signs, &positives, &negatives, &afbReleases, &efbReleases, &efbOwn,
                       &efbNegatives, &doubtSigns}) {
        days->resize(count);
    }
    collectGifts();
    collectStays();
    collectVisits();
    collectResults();
    collectTreated();
    for (std::size_t c = 0; c < count; ++c) {
        for (const int day : full[c]) {
            if (!treatedIn(c, day - limit("trace.masked_days"), day, day)) {
                lifting[c].insert(day);
            }
        }
    }
}

int SlowRecord::limit(const std::string& name) const {
    const auto given = book.settings.find(name);
    const bool upwards = kUpwards.contains(name);
    const int byDefault = upwards ? kUpwards.at(name) : kDownwards.at(name);
    if (given == book.settings.end()) {
        return byDefault;
    }
    return upwards ? std::max(byDefault, given->second) : std::min(byDefault, given->second);
}

bool SlowRecord::lives(std::size_t c) const { return book.colonies[c].since <= today && !book.colonies[c].ended; }

void SlowRecord::throughGifts(int first, const std::function<bool(const Gift&)>& passes) const {
    for (int day = first; day <= today; ++day) {
        for (bool news = true; news;) {
            news = false;
            for (const Gift& g : gifts) {
                news = (g.day == day && passes(g)) || news;
            }
        }
    }
}

int SlowRecord::firstGift() const {
    int first = today;
    for (const Gift& g : gifts) {
        first = std::min(first, g.day);
    }
    return first;
}

void SlowRecord::collectGifts() {
    for (const SlowTransfer& t : book.transfers) {
        gifts.push_back({t.day, t.from, t.to, t.what != "feed", false});
    }
    for (const SlowLineage& l : book.lineage) {
        gifts.push_back({l.day, l.colony, l.into, true, true});
    }
}

std::optional<int> SlowRecord::lastGiftFrom(std::size_t c) const {
    std::optional<int> last;
    for (const Gift& g : gifts) {
        if (g.from == c) {
            last = std::max(last.value_or(g.day), g.day);
        }
    }
    return last;
}

int SlowRecord::standsUntil(std::size_t c) const {
    const SlowColony& colony = book.colonies[c];
    if (!colony.ended) {
        return today;
    }
    return colony.end == "united" ? *colony.ended : std::max(*colony.ended, lastGiftFrom(c).value_or(*colony.ended));
}

void SlowRecord::collectStays() {
    stays.resize(count);
    for (std::size_t c = 0; c < count; ++c) {
        std::map<int, std::size_t> carries;
        for (const SlowPlacement& p : book.placements) {
            if (p.colony == c) {
                carries[p.day] = p.yard;
            }
        }
        stays[c].push_back({book.colonies[c].yard, book.colonies[c].since, standsUntil(c)});
        for (const auto& [day, yard] : carries) {
            if (stays[c].back().yard != yard) {
                stays[c].back().to = day;
                stays[c].push_back({yard, day, standsUntil(c)});
            }
        }
    }
}

bool SlowRecord::stood(std::size_t c, std::size_t yard, int first, int last) const {
    return std::any_of(stays[c].begin(), stays[c].end(), [&](const Stay& s) {
        return s.yard == yard && s.from <= last && first <= s.to && first <= last;
    });
}

void SlowRecord::collectVisits() {
    for (const SlowVisit& v : book.visits) {
        const bool afb = v.signs.contains("afb");
        const bool efb = v.signs.contains("efb");
        const bool doubt = v.signs.contains("brood-doubt");
        const int enough = std::min(limit("check.min_frames"), v.broodFrames.value_or(std::numeric_limits<int>::max()));
        const int checked = v.broodChecked.value_or(0);
        if (checked >= 1 && checked >= enough && !afb && !efb && !doubt) {
            clean[v.colony].insert(v.day);
            if (v.broodFrames == checked && checked >= limit("check.full_frames")) {
                full[v.colony].insert(v.day);
            }
        }
        noteIf(afb, signs[v.colony], v.day);
        noteIf(efb, efbOwn[v.colony], v.day);
        noteIf(doubt, doubtSigns[v.colony], v.day);
    }
}

void SlowRecord::collectResults() {
    for (const SlowResult& r : book.results) {
        if (!r.colony) {
            continue;
        }
        const bool afb = r.disease == "afb";
        const bool field = r.method == "field";
        const bool positive = r.result == "positive";
        const bool negative = r.result == "negative" && !field;
        noteIf(afb && positive && field, signs[*r.colony], r.day);
        noteIf(afb && positive && !field, positives[*r.colony], r.day);
        noteIf(afb && negative, negatives[*r.colony], r.day);
        noteIf(afb && r.result == "release", afbReleases[*r.colony], r.day);
        noteIf(!afb && positive, efbOwn[*r.colony], r.day);
        noteIf(!afb && negative, efbNegatives[*r.colony], r.day);
        noteIf(!afb && r.result == "release", efbReleases[*r.colony], r.day);
    }
}

/// Treated (4.4.3). Who receives treated bees or comb counts as treated on that earlier day, once it has them.
void SlowRecord::collectTreated() {
    treated.resize(count);
    for (const SlowTreatment& t : book.treatments) {
        for (std::size_t c = 0; c < count; ++c) {
            if (t.antibiotic && (t.colony == c || (t.yard && stood(c, *t.yard, t.day, t.day)))) {
                treated[c][t.day] = t.day;
            }
        }
    }
    throughGifts(firstGift(), [this](const Gift& g) {
        bool news = false;
        for (const auto& [day, known] : std::map<int, int>(treated[g.from])) {
            if (g.beesOrComb && day <= g.day && known <= g.day && !treated[g.to].contains(day)) {
                treated[g.to][day] = g.day;
                news = true;
            }
        }
        return news;
    });
}

bool SlowRecord::treatedIn(std::size_t c, int first, int last, int knownBy) const {
    return std::any_of(treated[c].begin(), treated[c].end(), [&](const auto& entry) {
        return entry.first >= first && entry.first <= last && entry.second <= knownBy;
    });
}

} // namespace tests::support
