#pragma once

#include "core/model/settings.h"
#include "core/rules/reason.h"

#include <QString>

#include <span>
#include <vector>

// The limits that rules go by, by name: a setting of the book, or a number that a rule fixes.

namespace core::rules {

/// What rules fix and no setting changes.
namespace fixed {
inline constexpr MonthDay kCheckSeason{5, 1};                     // 4.4.10
inline constexpr int kSampleDays = 45;                            // 4.5
inline constexpr int kLastMonthOfSpring = 7;                      // 4.5
inline constexpr Quarters kMuchHeavier{8};                        // 4.5
inline constexpr int kMostValued = 12;                            // 4.6, frames
inline constexpr int kUnionDisturbed = 200;                       // 4.9, thousandths
inline constexpr MonthDay kReverseFrom{3, 15}, kReverseTo{5, 31}; // 4.11
inline constexpr MonthDay kDivideFrom{4, 20}, kDivideTo{6, 15};   // 4.13
inline constexpr int kBroodDays = 30;                             // 4.13
inline constexpr int kLeastParts = 2;                             // 4.13
inline constexpr int kListedBefore = 30;                          // 4.14, days
inline constexpr int kUnionCheckFor = 60;                         // 4.14
inline constexpr int kTakeOutFor = 30;                            // 4.14
inline constexpr int kResultFor = 60;                             // 4.14
} // namespace fixed

/// One limit as users see it.
struct Limit {
    QString name;            ///< a setting's, or "4.5 sample_days" of one that a rule fixes
    QString value;           ///< as shown: "30 days", "32 kg", "20 August"
    QString source;          ///< a publication, or "assumption …"
    QString meaning;         ///< one sentence
    bool isSetting = true;   ///< else the rule fixes it
    bool assumption = false; ///< no published figure
};

/// Names of those that no setting changes.
std::vector<const char*> fixedLimitNames();
/// In a southern yard days of the year move by six months.
Limit limitOf(const Settings& settings, const char* name, bool southern = false);
/// The limits of a reason, in its order.
std::vector<Limit> limitsOf(const Settings& settings, const Reason& reason);
/// Its value alone; what sentences show.
QString limitText(const Settings& settings, const char* name, bool southern = false);

/// "20 August", in the south "20 February".
QString dayOfYearText(MonthDay md, bool southern);

} // namespace core::rules
