#pragma once

#include "core/rules/calc/range.h"

#include <span>

// Dates that printed rules of some countries name, as examples. Local law and the paper itself decide.

namespace core::rules::calc {

enum class PaperFault { None, NotIssuedYet, IssuedBeforeSeptember, OlderThanNineMonths };

/// Whether a German movement certificate covers a move on that day: not older than nine months, and not issued before
/// 1 September of the year before. Source: Bienenseuchen-Verordnung § 5(1). An assumption: the last day itself counts.
PaperFault germanCertificate(Day issued, Day moved);

/// When a German restricted area is inspected again: not before two and not after nine months from the killing or
/// treatment. Source: Bienenseuchen-Verordnung § 11(1) no. 1.
DayRange germanAreaRecheck(Day killedOrTreated);

/// The last day to send a New Zealand certificate of inspection: the earlier of 14 days after it and the day before
/// 15 December. Source: Biosecurity (National AFB Pest Management Plan) Order 1998, clause 32(3).
Day newZealandCertificateDue(Day inspected);

/// A certificate that covers so many days from its inspection.
struct CertificateLife {
    int days = 0;
    const char* what;
    const char* source;
};
std::span<const CertificateLife> certificateLives();

/// The first day on which a record need not be kept any more: `years` after it, 5 in the EU and the UK (Regulation (EU)
/// 2019/6 article 108; Veterinary Medicines Regulations 2013), 3 in Australia (Code of Practice part B).
Day keptUntil(Day record, int years);

} // namespace core::rules::calc
