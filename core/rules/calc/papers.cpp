#include "core/rules/calc/papers.h"

#include <algorithm>

namespace core::rules::calc {

namespace {

Day monthsAfter(Day day, int months) { return dayOf(toDate(day).addMonths(months)); }

constexpr CertificateLife kLives[] = {
    {15, "bees entering Rhode Island, inspected before the move", "R.I. Gen. Laws § 4-12-8(a)"},
    {90, "certificate of health, Rhode Island", "R.I. Gen. Laws § 4-12-7(a)"},
    {90, "bees entering Missouri, inspected before the move", "Mo. Rev. Stat. § 264.061(1)"},
};

} // namespace

PaperFault germanCertificate(Day issued, Day moved) {
    if (issued > moved) return PaperFault::NotIssuedYet;
    if (issued < dayOf(toDate(moved).year() - 1, 9, 1)) return PaperFault::IssuedBeforeSeptember;
    return moved > monthsAfter(issued, 9) ? PaperFault::OlderThanNineMonths : PaperFault::None;
}

DayRange germanAreaRecheck(Day killedOrTreated) {
    return {monthsAfter(killedOrTreated, 2), monthsAfter(killedOrTreated, 9)};
}

Day newZealandCertificateDue(Day inspected) {
    return std::min(inspected + 14, dayOf(toDate(inspected).year(), 12, 14));
}

std::span<const CertificateLife> certificateLives() { return kLives; }

Day keptUntil(Day record, int years) { return dayOf(toDate(record).addYears(years)); }

} // namespace core::rules::calc
