#include "core/rules/hold_findings.h"

namespace core::rules {

namespace {

using Rows = std::vector<std::pair<qint32, Day>>;

struct Lists {
    Rows signs, positives, negatives, releases, yardReleases, efb, efbNegatives, efbReleases, doubts, spoilers;
};

void addSigns(const Snapshot& s, Lists& lists) {
    for (const SnapSign& sign : s.signs) {
        const std::pair row(sign.colony.value, sign.day);
        if (sign.signs.has(Sign::Afb)) lists.signs.push_back(row);
        if (sign.signs.has(Sign::Efb)) lists.efb.push_back(row);
        if (sign.signs.has(Sign::BroodDoubt)) lists.doubts.push_back(row);
        if (sign.signs.broodTrouble()) lists.spoilers.push_back(row);
    }
}

Rows* positiveList(const SnapResult& r, Lists& lists) {
    if (r.disease == Disease::Efb) return &lists.efb;
    return r.method == Method::Field ? &lists.signs : &lists.positives;
}

void addOfColony(const SnapResult& r, Lists& lists) {
    const std::pair row(r.colony.value, r.day);
    const bool afb = r.disease == Disease::Afb;
    if (r.verdict == Verdict::Positive) {
        positiveList(r, lists)->push_back(row);
        lists.spoilers.push_back(row);
    } else if (r.verdict == Verdict::Negative && r.method != Method::Field) {
        (afb ? lists.negatives : lists.efbNegatives).push_back(row);
    } else if (r.verdict == Verdict::Release) {
        (afb ? lists.releases : lists.efbReleases).push_back(row);
    }
}

} // namespace

Findings findingsOf(const Snapshot& s) {
    Lists lists;
    addSigns(s, lists);
    for (const SnapResult& r : s.results) {
        if (r.colony.value >= 0)
            addOfColony(r, lists);
        else if (r.verdict == Verdict::Release && r.disease == Disease::Afb)
            lists.yardReleases.emplace_back(r.yard.value, r.day);
    }
    const size_t n = s.colonies.size();
    return {DaysBy(n, std::move(lists.signs)),
            DaysBy(n, std::move(lists.positives)),
            DaysBy(n, std::move(lists.negatives)),
            DaysBy(n, std::move(lists.releases)),
            DaysBy(s.yards.size(), std::move(lists.yardReleases)),
            DaysBy(n, std::move(lists.efb)),
            DaysBy(n, std::move(lists.efbNegatives)),
            DaysBy(n, std::move(lists.efbReleases)),
            DaysBy(n, std::move(lists.doubts)),
            DaysBy(n, std::move(lists.spoilers))};
}

} // namespace core::rules
