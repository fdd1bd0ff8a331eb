#pragma once

#include "core/edit/edits.h"
#include "tests/reliability/soak/hand.h"

namespace tests::soak {

/// A colony to come, in an open yard, on bare ground or an empty stand.
NewColony freshColony(Hand& hand, const EditContext& c);
/// What is seen at a hive.
void see(Hand& hand, const EditContext& c, Visit& visit);

} // namespace tests::soak
