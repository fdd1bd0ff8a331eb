#pragma once

#include "core/rules/hold_standing.h"
#include "core/rules/holds_then.h"

#include <optional>
#include <vector>

// Who had contact with a colony, to be looked at: wider than what holds rest on (rule 4.4), which stop where a record
// answers. Nothing here holds or frees a colony.

namespace core::rules {

/// Which way chains of gifts are followed from a colony: what it passed on, or what came to it.
enum class ContactWay { Onwards, Back };

/// A gift of the window through which something may have come from the colony asked for, or to it.
struct ContactLink {
    Gift gift;
    qint32 before = -1; ///< the link that reached its nearer colony first; −1: that is the colony asked for
    int steps = 1;      ///< gifts from the colony asked for
};

struct Contacts {
    ColonyIx of;
    ContactWay way = ContactWay::Onwards;
    std::vector<ContactLink> links; ///< onwards: by day; back: the latest first
    std::vector<qint32> firstLink;  ///< by colony: the link that reached it first; −1: not reached
    std::vector<ColonyIx> reached;  ///< in the order in which they were reached, without the colony itself

    /// The colony at the far end of a link.
    ColonyIx far(const ContactLink& link) const { return way == ContactWay::Onwards ? link.gift.to : link.gift.from; }
    /// The gifts that lead to a colony, the one at the colony asked for first; empty: it was not reached.
    std::vector<Gift> chainTo(ColonyIx colony) const;
};

/// Gifts of every kind from `from` to `until`, both days included; the gifts of one day in any order among themselves
/// (rule 4.4.1). What is passed on is what was there by then: chains never go back in time.
Contacts contactsOf(const Gifts& gifts, size_t colonies, ColonyIx colony, Day from, Day until, ContactWay way);

/// A hive that stood in a yard together with that of the colony asked for.
struct YardContact {
    ColonyIx colony;
    YardIx yard;
    Day since; ///< both stood there, both days included
    Day until;
    friend bool operator==(const YardContact&, const YardContact&) = default;
};

/// By yard, then colony, then day; within the window.
std::vector<YardContact> yardContactsOf(const Standing& standing, ColonyIx colony, Day from, Day until);

/// Holds that would stand besides those that do, were a sample of the colony, taken on the day, positive for American
/// foulbrood in a laboratory. `whole`: as Session::snapshotForHolds() reads it. By colony, then kind.
std::vector<HeldThen> heldWerePositive(const Snapshot& whole, ColonyId colony, Day on);

} // namespace core::rules
