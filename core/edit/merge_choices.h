#pragma once

#include "core/model/rows.h"

#include <QString>

#include <vector>

// What a merge day asks, changed by one wish. What goes against the new wish makes way: whoever pins a pair no longer
// forbids it. Ids are given when the day is saved (saveMergeDay).

namespace core::edit {

using MergeChoices = std::vector<MergeChoice>;

/// Whether this is asked. Of Pin and Forbid the order of the two says nothing; `b` says nothing of LeaveOut.
bool asks(const MergeChoices& choices, MergeAsk what, ColonyId a, ColonyId b = {});
const MergeChoice* findChoice(const MergeChoices& choices, MergeAsk what, ColonyId a, ColonyId b = {});

/// Other pins of the two go, and that they are forbidden or left out.
MergeChoices withPin(MergeChoices choices, ColonyId a, ColonyId b);
/// The pin of the two goes, and who of them would be host or on top.
MergeChoices withForbid(MergeChoices choices, ColonyId a, ColonyId b);
/// Pins of it go. Left out already: another word why.
MergeChoices withLeftOut(MergeChoices choices, ColonyId colony, const QString& why);
/// `host` is the host of `moved`, and not the other way round.
MergeChoices withHost(MergeChoices choices, ColonyId host, ColonyId moved);
/// The box of `upper` comes on top of that of `lower`, and not the other way round.
MergeChoices withTop(MergeChoices choices, ColonyId upper, ColonyId lower);
/// The rule decides again. Of Host and Top whichever of the two was named.
MergeChoices without(MergeChoices choices, MergeAsk what, ColonyId a, ColonyId b = {});

} // namespace core::edit
