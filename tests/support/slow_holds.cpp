#include "tests/support/slow_holds.h"

#include <algorithm>
#include <optional>
#include <vector>

#include "tests/support/slow_record.h"

namespace tests::support {

namespace {

struct Source {
    std::size_t colony;
    bool past;
    int date;
    int lastDay;
    int opens = 0; ///< its window, 4.4.7
    int closes = 0;
    int opensByDefaults = 0; ///< the window under the default settings
};

struct Judge : SlowRecord {
    using SlowRecord::SlowRecord;

    std::map<std::size_t, std::set<std::string>> found;

    std::map<std::string, std::set<std::string>> holds() {
        judgeOrders();
        for (std::size_t c = 0; c < count; ++c) {
            holdIf(confirmed(c), c, "afb-confirmed");
            holdIf(suspected(c), c, "afb-suspected");
        }
        for (const Source& s : sources()) {
            judgeContacts(s);
            judgeReach(s);
        }
        judgeEfb();
        judgeDoubt();
        judgeUnchecked();
        std::map<std::string, std::set<std::string>> shown;
        for (std::size_t c = 0; c < count; ++c) {
            if (lives(c)) {
                shown[book.colonies[c].label] = found[c];
            }
        }
        return shown;
    }

    void holdIf(bool held, std::size_t c, const std::string& kind) {
        if (held) {
            found[c].insert(kind);
        }
    }

    // -------------------------------------------------------------------------------------------------- orders

    void judgeOrders() {
        for (const SlowResult& order : book.results) {
            if (order.result != "order") {
                continue;
            }
            const bool lifted = std::any_of(book.results.begin(), book.results.end(), [&](const SlowResult& r) {
                return r.result == "release" && r.disease == order.disease && r.colony == order.colony &&
                       r.yard == order.yard && r.day >= order.day;
            });
            if (!lifted) {
                holdByOrder(order);
            }
        }
    }

    void holdByOrder(const SlowResult& order) {
        std::map<std::size_t, int> under; // colony → the day from which it is under the order
        if (order.colony) {
            under[*order.colony] = std::min(order.day, book.colonies[*order.colony].ended.value_or(order.day));
        }
        for (std::size_t c = 0; order.yard && c < count; ++c) {
            for (const Stay& s : stays[c]) {
                if (s.yard == *order.yard && s.to >= order.day && s.from <= today && !under.contains(c)) {
                    under[c] = std::max(s.from, order.day);
                }
            }
        }
        throughGifts(firstGift(), [&](const Gift& g) {
            const auto giver = under.find(g.from);
            if (!g.beesOrComb || giver == under.end() || giver->second > g.day) {
                return false;
            }
            const auto receiver = under.find(g.to);
            if (receiver != under.end() && receiver->second <= g.day) {
                return false;
            }
            under[g.to] = g.day;
            return true;
        });
        for (const auto& [c, since] : under) {
            found[c].insert("order");
        }
    }

    // ------------------------------------------------------------------------------------------------- sources

    bool confirmed(std::size_t c) const {
        return anyIn(positives[c], latestUpTo(afbReleases[c], today).value_or(kBefore), today);
    }

    bool suspected(std::size_t c) const { return !confirmed(c) && firstOpenSign(c, today).has_value(); }

    /// The earliest sign up to `last`, on or after the latest release up to then and after the last negative up to
    /// then.
    std::optional<int> firstOpenSign(std::size_t c, int last) const {
        const int release = latestUpTo(afbReleases[c], last).value_or(kBefore);
        const int negative = latestUpTo(negatives[c], last).value_or(kBefore);
        const auto sign = signs[c].lower_bound(std::max(release, negative + 1));
        return sign == signs[c].end() || *sign > last ? std::nullopt : std::optional<int>(*sign);
    }

    /// The date of the source that `c` was or is on `last`, judged by what is dated up to then; none where it is none.
    std::optional<int> sourceDate(std::size_t c, int last) const {
        const int release = latestUpTo(afbReleases[c], last).value_or(kBefore);
        const auto positive = positives[c].lower_bound(release);
        if (positive == positives[c].end() || *positive > last) {
            return firstOpenSign(c, last);
        }
        const auto sign = signs[c].lower_bound(release);
        return sign == signs[c].end() ? *positive : std::min(*positive, *sign);
    }

    int lastDayOfSource(std::size_t c) const {
        const SlowColony& colony = book.colonies[c];
        if (!colony.ended) {
            return today;
        }
        int last = standsUntil(c);
        for (const Days* days : {&signs[c], &positives[c]}) {
            last = std::max(last, latestUpTo(*days, today).value_or(last));
        }
        return last;
    }

    std::vector<Source> sources() const {
        std::vector<Source> all;
        for (std::size_t c = 0; c < count; ++c) {
            if (const auto date = sourceDate(c, today)) {
                all.push_back({c, false, *date, lastDayOfSource(c)});
            }
            for (const int release : afbReleases[c]) {
                if (const auto date = sourceDate(c, release - 1)) {
                    all.push_back({c, true, *date, release});
                }
            }
        }
        for (Source& s : all) {
            s.opens = windowOpens(s, limit("trace.days"), limit("trace.masked_days"));
            s.opensByDefaults = windowOpens(s, kUpwards.at("trace.days"), kUpwards.at("trace.masked_days"));
            s.closes = s.past ? s.lastDay : today;
        }
        return all;
    }

    /// "Once it has received": also what a past source received after its release tells that it was treated. (Read the
    /// other way, "the same colony up to that day", the window would be shorter; where both readings stand, the hold
    /// stays.)
    int windowOpens(const Source& s, int days, int maskedDays) const {
        return s.date - (treatedIn(s.colony, s.date - maskedDays, s.lastDay, today) ? maskedDays : days);
    }

    /// Whether `c` was released for S (4.4.4) on a day in first..last. A longer window set by the user must not let a
    /// yard's release answer more, so for that the window is the shorter of the two.
    bool releasedFor(const Source& s, std::size_t c, int first, int last) const {
        return std::any_of(book.results.begin(), book.results.end(), [&](const SlowResult& r) {
            if (r.disease != "afb" || r.result != "release" || r.day < std::max(first, s.date) || r.day > last) {
                return false;
            }
            return r.colony ? *r.colony == c
                            : stood(c, *r.yard, r.day, r.day) &&
                                  stood(s.colony, *r.yard, std::max(s.opens, s.opensByDefaults), s.closes);
        });
    }

    /// A negative 42 days or a lifting check 60 days after `last`, by `day`.
    bool answeredByOwn(std::size_t c, int last, int day) const {
        return anyIn(negatives[c], last + limit("afb.own_result_days"), day) ||
               anyIn(lifting[c], last + limit("afb.recheck_days"), day);
    }

    // ------------------------------------------------------------------------------------------------ contacts

    /// The colonies that are S, or became S's bees later in its window → up to which day what they got is a gift to S.
    std::map<std::size_t, int> becameSource(const Source& s) const {
        std::map<std::size_t, int> until{{s.colony, today}};
        for (bool news = true; news;) {
            news = false;
            for (const Gift& g : gifts) {
                const bool inWindow = g.lineage && g.day >= s.opens && g.day <= s.closes;
                if (inWindow && g.from != s.colony && until.contains(g.to) && g.day <= until[g.to] &&
                    (!until.contains(g.from) || until[g.from] < g.day)) {
                    until[g.from] = g.day;
                    news = true;
                }
            }
        }
        return until;
    }

    std::vector<Days> giftsToSource(const Source& s) const {
        const auto until = becameSource(s);
        std::vector<Days> given(count);
        for (const Gift& g : gifts) {
            const auto receiver = until.find(g.to);
            if (receiver != until.end() && g.day <= receiver->second && g.from != s.colony) {
                given[g.from].insert(g.day);
            }
        }
        return given;
    }

    void judgeContacts(const Source& s) {
        const std::vector<Days> given = giftsToSource(s);
        std::vector<Days> received(count); // from a colony then exposed and not answered
        const auto exposed = [&](std::size_t c, int day) {
            if (c == s.colony) {
                return day >= s.opens && (day <= s.closes || anyIn(received[c], s.closes + 1, day));
            }
            return (day >= s.opens && anyIn(given[c], s.opens, s.closes)) || anyIn(received[c], s.opens, day);
        };
        const auto answered = [&](std::size_t c, int day) {
            if (c == s.colony && day <= s.closes) {
                return false;
            }
            const int contact =
                std::max(latestUpTo(received[c], day).value_or(kBefore), latestUpTo(given[c], today).value_or(kBefore));
            return answeredByOwn(c, contact, day) || releasedFor(s, c, contact + 1, day);
        };
        throughGifts(s.opens, [&](const Gift& g) {
            return exposed(g.from, g.day) && !answered(g.from, g.day) && received[g.to].insert(g.day).second;
        });
        for (std::size_t c = 0; c < count; ++c) {
            const bool other = c != s.colony || (s.past && today > s.closes);
            holdIf(other && exposed(c, today) && !answered(c, today), c, "afb-contact");
        }
    }

    // --------------------------------------------------------------------------------------------------- reach

    /// S's yards → its last day there (4.4.9).
    std::map<std::size_t, int> yardsOfSource(const Source& s, int from) const {
        int lastStood = kBefore;
        for (const Stay& stay : stays[s.colony]) {
            lastStood = std::max(lastStood, stay.from > s.lastDay ? kBefore : std::min(stay.to, s.lastDay));
        }
        std::map<std::size_t, int> lastDays;
        for (const Stay& stay : stays[s.colony]) {
            const int last = std::min(stay.to, s.lastDay);
            if (stay.from <= s.lastDay && last >= std::min(from, lastStood)) {
                int& there = lastDays.try_emplace(stay.yard, kBefore).first->second;
                there = std::max(there, last == lastStood ? s.lastDay : last);
            }
        }
        return lastDays;
    }

    void judgeReach(const Source& s) {
        const int from = s.date - limit("afb.yard_back_days");
        const std::map<std::size_t, int> yards = yardsOfSource(s, from);
        std::vector<Days> received(count);
        // The last reach by standing, of the stays begun by `day`; none where there is none.
        const auto byStanding = [&](std::size_t c, int day) {
            std::optional<int> reach;
            for (const Stay& stay : stays[c]) {
                const auto there = yards.find(stay.yard);
                if (c == s.colony || there == yards.end() ||
                    std::max(stay.from, from) >
                        std::min({stay.to, day, there->second + limit("afb.yard_after_days")})) {
                    continue;
                }
                const int last = std::max(stay.from, std::min({stay.to, day, there->second}));
                reach = std::max(reach.value_or(last), last);
            }
            return reach;
        };
        const auto inReach = [&](std::size_t c, int day) {
            if (c == s.colony) {
                return day <= s.lastDay || anyIn(received[c], s.lastDay + 1, day);
            }
            return byStanding(c, day).has_value() || anyIn(received[c], from, day);
        };
        const bool livingSuspect = !s.past && lives(s.colony) && suspected(s.colony);
        const auto cleared = [&](std::size_t c, int day) {
            if (livingSuspect || (c == s.colony && day <= s.lastDay)) {
                return false;
            }
            const int standing = byStanding(c, day).value_or(kBefore);
            const int gift = latestUpTo(received[c], day).value_or(kBefore);
            return answeredByOwn(c, std::max(standing, gift), day) ||
                   releasedFor(s, c, std::max(standing, gift + 1), day);
        };
        throughGifts(from, [&](const Gift& g) {
            return g.beesOrComb && inReach(g.from, g.day) && !cleared(g.from, g.day) &&
                   received[g.to].insert(g.day).second;
        });
        for (std::size_t c = 0; c < count; ++c) {
            const bool other = c != s.colony || (s.past && today > s.lastDay);
            holdIf(other && inReach(c, today) && !cleared(c, today), c, "afb-yard");
        }
    }

    // ----------------------------------------------------------------------------------------- brood unchecked

    /// The latest 1 May, or 1 November in a southern yard, up to `day`; on the day of a carry the later of both yards'.
    int seasonStart(std::size_t c, int day) const {
        int start = kBefore;
        for (const Stay& s : stays[c]) {
            const bool there = (s.from <= day && day <= s.to) || &s == &stays[c].back();
            if (!there || s.from > day) {
                continue;
            }
            const std::string first = book.yards[s.yard].latitudeDeg.value_or(0) < 0 ? "-11-01" : "-05-01";
            const int year = std::stoi(slowIso(day).substr(0, 4));
            const int thisYear = slowDay(std::to_string(year) + first);
            start = std::max(start, thisYear <= day ? thisYear : slowDay(std::to_string(year - 1) + first));
        }
        return start;
    }

    bool unchecked(std::size_t c, int day, const Days& fromUnchecked) const {
        Days checks = clean[c];
        checks.insert(negatives[c].begin(), negatives[c].end());
        const int season = seasonStart(c, day);
        const int received = latestUpTo(fromUnchecked, day).value_or(kBefore);
        return std::none_of(checks.begin(), checks.end(), [&](int at) {
            const bool recent = at <= day && day - at <= limit("check.max_age_days") &&
                                (at >= season || day - at <= limit("check.grace_days"));
            const bool spoilt = anyIn(signs[c], at, day) || anyIn(positives[c], at, day) || anyIn(efbOwn[c], at, day) ||
                                anyIn(doubtSigns[c], at, day);
            return recent && at > received && !spoilt;
        });
    }

    void judgeUnchecked() {
        std::vector<Days> received(count);
        throughGifts(firstGift(), [&](const Gift& g) {
            return g.beesOrComb && unchecked(g.from, g.day, received[g.from]) && received[g.to].insert(g.day).second;
        });
        for (std::size_t c = 0; c < count; ++c) {
            holdIf(unchecked(c, today, received[c]), c, "brood-not-checked");
        }
    }

    // ------------------------------------------------------------------------------------------- efb and doubt

    bool withEfb(std::size_t c, int day, const Days& events) const {
        const auto last = latestUpTo(events, day);
        if (!last) {
            return false;
        }
        const int wait = limit("efb.clear_days");
        for (const Days* answers : {&full[c], &efbNegatives[c]}) {
            for (const int at : *answers) {
                if (at <= day && at >= *last + wait && !treatedIn(c, at - wait, at, at)) {
                    return false;
                }
            }
        }
        return !anyIn(efbReleases[c], *last + 1, day);
    }

    void judgeEfb() {
        std::vector<Days> events = efbOwn;
        throughGifts(firstGift(), [&](const Gift& g) {
            const bool carries = withEfb(g.from, g.day, events[g.from]) ||
                                 anyIn(efbOwn[g.from], g.day + 1, g.day + limit("efb.back_days"));
            return g.beesOrComb && carries && events[g.to].insert(g.day).second;
        });
        for (std::size_t c = 0; c < count; ++c) {
            holdIf(withEfb(c, today, events[c]), c, "efb");
        }
    }

    /// `received`: the doubt events that are gifts. Where a sign and a gift fall on one day, the gift's wait holds.
    bool inDoubt(std::size_t c, int day, const Days& received) const {
        const auto sign = latestUpTo(doubtSigns[c], day);
        const auto gift = latestUpTo(received, day);
        if (!sign && !gift) {
            return false;
        }
        const int last = std::max(sign.value_or(kBefore), gift.value_or(kBefore));
        const int wait = limit("doubt.recheck_days");
        return !anyIn(lifting[c], last + wait, day) && !anyIn(negatives[c], gift == last ? last + wait : last, day) &&
               !anyIn(afbReleases[c], last + 1, day);
    }

    void judgeDoubt() {
        std::vector<Days> received(count);
        throughGifts(firstGift(), [&](const Gift& g) {
            bool carries = inDoubt(g.from, g.day, received[g.from]);
            for (const int sign : doubtSigns[g.from]) {
                const bool soon = sign > g.day && sign <= g.day + limit("doubt.back_days");
                carries = carries || (soon && !negatives[g.from].contains(sign));
            }
            return g.beesOrComb && carries && received[g.to].insert(g.day).second;
        });
        for (std::size_t c = 0; c < count; ++c) {
            holdIf(inDoubt(c, today, received[c]), c, "brood-doubt");
        }
    }
};

} // namespace

std::map<std::string, std::set<std::string>> slowHolds(const SlowBook& book, int onDay) {
    return Judge(book, onDay).holds();
}

} // namespace tests::support
