#pragma once

#include "core/rules/hold_efb.h"

namespace core::rules {

/// Rule 4.4.12: the living colonies in doubt.
void traceDoubt(const Evidence& e, Spread& spread, std::vector<EventFact>& facts);

} // namespace core::rules
