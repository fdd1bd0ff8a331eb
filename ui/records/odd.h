#pragma once

#include "core/base/day.h"
#include "core/base/quantity.h"
#include "core/base/shown_units.h"
#include "core/edit/session.h"
#include "core/model/rows.h"
#include "core/model/settings.h"

#include <QString>
#include <QStringList>

#include <optional>
#include <vector>

// What is possible but odd in a record: a sentence that is asked about once. Assumptions, common practice, no source.

namespace ui::records {

constexpr int kLongAgoDays = 365;
constexpr int kJumpDays = 21;
constexpr core::Quarters kJump{8 * 4};
constexpr core::Decagrams kWeightJump{2500}; ///< 25 kg: a super or two
/// The last drone from an egg of a queen that is gone hatches on the 24th day.
constexpr int kBroodGoneDays = 24;

/// More than a year back.
std::optional<QString> longAgo(core::Day day, core::Day today);

/// Before a visit that the colony already has.
std::optional<QString> beforeLastVisit(const QString& colony, core::Day day, std::optional<core::Day> lastVisit);

/// Frames of bees that a visit counts, of all its boxes; nullopt where it counts none.
std::optional<core::Quarters> countedBees(const core::Visit& visit, core::StrengthJudge judge);

/// `others`: the colony's other visits, newest first. All that is odd about it.
/// Weights are said in `unit`.
QStringList oddVisit(const core::Visit& visit, const std::vector<core::Visit>& others, core::StrengthJudge judge,
                     core::Day today, core::WeightUnit unit = core::WeightUnit::Kilograms);
/// The same by the book; of a visit that is changed (`was`) not what was odd before.
QStringList oddVisit(const core::edit::Session& book, const core::Visit& visit,
                     const std::optional<core::Visit>& was = {});

} // namespace ui::records
