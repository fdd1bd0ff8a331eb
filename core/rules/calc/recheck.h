#pragma once

#include "core/base/day.h"
#include "core/model/settings.h"

#include <optional>

// The first days on which a record can answer a trouble, by rule 4.4 and the book's settings. Only a record lifts a
// hold; these days lift nothing. Law, inspectors and veterinarians decide.

namespace core::rules::calc {

/// `days` after `last`, and no day from `treated` to `masked` days after it.
Day firstDayAfter(Day last, int days, std::optional<Day> treated, int masked);

struct Recheck {
    Day negative; ///< of a laboratory or an inspector
    Day check;    ///< of all brood frames
};
/// `treated`: the latest day of an antibiotic known of the colony.
Recheck afbContactRecheck(Day lastContact, std::optional<Day> treated, const Settings& settings);
Recheck efbRecheck(Day lastEvent, std::optional<Day> treated, const Settings& settings);
/// `gift`: the doubt came with bees or comb, else with a sign of its own.
Recheck doubtRecheck(Day lastEvent, bool gift, std::optional<Day> treated, const Settings& settings);

/// A colony of unknown health that came on that day is kept apart: the days as after a contact with each disease. An
/// assumption; the advice is only "keep them apart until certain" (USDA booklet, Preventing the spread of bee
/// diseases).
struct Quarantine {
    Recheck efb;
    Recheck afb;
    Day until; ///< the latest of these days: to be kept apart until a record of then on is clean
};
Quarantine quarantineFrom(Day arrived, const Settings& settings);

/// The first day on which Tropilaelaps mites are dead in bees or gear without brood: more than 21 days. Source: WOAH
/// Terrestrial Code article 9.5.1 (2018).
Day withoutTropilaelaps(Day withoutBroodSince);

} // namespace core::rules::calc
