#pragma once

#include "core/report/page_origin.h"
#include "core/rules/contacts.h"
#include "core/rules/hold.h"

#include <span>
#include <vector>

// The contacts of a colony as a list and on paper.

namespace core::report {

/// What was asked, and what the book says to it.
struct ContactTold {
    Day from, until;
    rules::Contacts contacts;
    std::vector<rules::YardContact> yards; ///< hives that stood with it
};

/// One line of the list: a gift, or a yard shared.
struct ContactLine {
    QString when; ///< "2026-05-20", "2026-05-20 to 2026-07-01"
    QString what; ///< "frames", "union", "stood in Home"
    QString from; ///< who gave; of a yard the other hive
    QString to;
    std::optional<int> steps; ///< gifts from the colony asked for; not set of a yard
    ColonyIx far;             ///< the colony other than the one asked for, or farther from it
};
/// Gifts in the order of the contacts, then yards.
std::vector<ContactLine> contactLines(const Snapshot& s, const ContactTold& told);

/// "K1 to K3: K2 received frames from K1 on 2026-05-01; K3 received …"; empty: they are not linked.
QString chainSentence(const Snapshot& s, const rules::Contacts& contacts, ColonyIx colony);
/// "3 hives are linked by gifts from 2025-09-20 to 2026-09-20; 11 stood in a yard with it."
QString contactSummary(const ContactTold& told);

std::vector<Page> contactPages(const Snapshot& s, const ContactTold& told, std::span<const rules::Hold> holds,
                               const PageOrigin& origin, const TextMeasure& measure);

} // namespace core::report
