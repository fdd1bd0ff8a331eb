#pragma once

#include "core/rules/hold.h"

namespace core::rules {

/// A colony was held as this kind on all days from `from` to `to`, as far as they were asked for.
struct HoldSpan {
    HoldKind kind = HoldKind::BroodNotChecked;
    Day from;
    Day to;
    friend bool operator==(const HoldSpan&, const HoldSpan&) = default;
};

} // namespace core::rules
