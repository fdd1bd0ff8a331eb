#pragma once

#include <functional>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "tests/support/slow_book.h"

namespace tests::support {

using Days = std::set<int>;

/// A day no row can be dated on or before.
constexpr int kBefore = -1000000;

struct Gift {
    int day;
    std::size_t from;
    std::size_t to;
    bool beesOrComb;
    bool lineage; ///< a union, a shake-out or a divide
};

/// An unbroken time of a hive in one yard, both days included. The day of a carry belongs to both yards.
struct Stay {
    std::size_t yard;
    int from;
    int to;
};

/// The defaults of the settings that holds use; a book can only make them stricter, in the direction named.
extern const std::map<std::string, int> kUpwards;
extern const std::map<std::string, int> kDownwards;

std::optional<int> latestUpTo(const Days& days, int day);

/// Whether one of `days` lies in first..last, both included.
bool anyIn(const Days& days, int first, int last);

/// What is known of each colony on one day (4.0 and definitions 1 to 4 of 4.4): every collection is indexed by colony
/// and holds only what is dated up to that day.
struct SlowRecord {
    SlowRecord(const SlowBook& whole, int onDay);

    const SlowBook book;
    const int today;
    const std::size_t count;
    std::vector<Gift> gifts;
    std::vector<std::vector<Stay>> stays;
    std::vector<std::map<int, int>> treated;            ///< treated on the day → the day from which that counts
    std::vector<Days> clean, full, lifting;             ///< brood checks (4.4.3)
    std::vector<Days> signs, positives, negatives;      ///< for afb (4.4.4)
    std::vector<Days> afbReleases, efbReleases;         ///< those that name the colony
    std::vector<Days> efbOwn, efbNegatives, doubtSigns; ///< efbOwn: signs efb and efb positives

    int limit(const std::string& name) const;
    bool lives(std::size_t c) const;

    /// Day by day from `first`, and within a day until nothing more changes, since gifts of one day may have come in
    /// any order. `passes` notes what the gift carries and says whether that was news.
    void throughGifts(int first, const std::function<bool(const Gift&)>& passes) const;
    int firstGift() const;

    /// To its end, and one that ended other than united until the last gift taken from it (4.4.2).
    int standsUntil(std::size_t c) const;
    /// Whether its hive stood in `yard` on a day in first..last.
    bool stood(std::size_t c, std::size_t yard, int first, int last) const;
    /// Whether it was treated on a day in first..last, by what it had received up to `knownBy`.
    bool treatedIn(std::size_t c, int first, int last, int knownBy) const;

private:
    void collectGifts();
    void collectStays();
    void collectVisits();
    void collectResults();
    void collectTreated();
    std::optional<int> lastGiftFrom(std::size_t c) const;
};

} // namespace tests::support
