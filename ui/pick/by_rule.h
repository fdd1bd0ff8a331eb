#pragma once

#include "ui/desk/reading.h"

#include <QString>

#include <vector>

namespace ui::pick {

/// What the rules say of a hive on the day shown, to select by.
enum class Rule { Weak, Held, Due, InPlan, NotCounted, BroodNotChecked };

struct RuleWords {
    Rule rule;
    QString text; ///< of the menu
    QString tip;
    QString said; ///< "3 hives selected: held"
    QString none; ///< "No hive of this yard is held."
};
const std::vector<RuleWords>& ruleWords();

/// Hives of the yard, in the reading's order.
std::vector<core::ColonyId> hivesBy(Rule rule, const desk::Reading& reading, core::YardIx yard);
std::vector<core::ColonyId> allHives(const desk::Reading& reading, core::YardIx yard);

} // namespace ui::pick
