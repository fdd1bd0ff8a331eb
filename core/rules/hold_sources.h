#pragma once

#include "core/rules/hold_evidence.h"

namespace core::rules {

/// Rule 4.4.6: a colony that is confirmed or suspected, or (past) was so until a release.
struct Source {
    ColonyIx colony;
    bool past = false;
    bool confirmed = false; ///< by a positive; else by a sign alone
    Day date;
    Day last; ///< its last day
    Day open; ///< of its window, rule 4.4.7
    Day close;
    bool treated = false; ///< the window opens earlier for that
    /// Where its hive stood on some day of the window by the default limits and by what it was treated with up to its
    /// last day: a release of such a yard counts.
    std::vector<YardIx> releaseYards;
    /// Suspected and living: nothing clears a colony in its reach.
    bool livingSuspect = false;
};

/// Rule 4.4.5, on the snapshot's day.
bool isConfirmed(const Evidence& e, ColonyIx colony);
bool isSuspected(const Evidence& e, ColonyIx colony);

/// By colony, past ones first.
std::vector<Source> sourcesOf(const Evidence& e);

/// Whether `colony` was released for the source (rule 4.4.4) on a day from `first` to `last`.
bool releasedFor(const Evidence& e, const Source& source, ColonyIx colony, Day first, Day last);

} // namespace core::rules
