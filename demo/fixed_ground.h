#pragma once

#include "demo/ground.h"

#include <vector>

namespace demo {

/// What stands in a yard of the demo besides its hives; invented, around the ground that its rows of hives take.
std::vector<core::FixedThing> fixedThingsOf(const DemoYard& yard, core::YardId id);

} // namespace demo
