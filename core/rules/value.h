#pragma once

#include "core/base/quantity.h"
#include "core/model/settings.h"

#include <algorithm>
#include <array>

// Rule 4.6: what a colony is expected to give, from the value tables (an assumption); and what a carry costs (4.7).

namespace core::rules {

/// Spring colonies in thousandths by frames of bees: E.
class ValueOf {
public:
    explicit ValueOf(const Settings& settings);
    /// Above 12 frames as at 12.
    int operator()(Quarters strength) const { return m_value[static_cast<size_t>(std::min(strength.value, kMost))]; }

private:
    static constexpr int kMost = 48; // quarters: 12 frames
    std::array<int, kMost + 1> m_value;
};

/// A table between its whole frames: thousandths at that strength, above 12 frames as at 12.
int tableAt(const ValueTable& table, Quarters strength);

/// Thousandths that carrying a hive from `from` to `to` takes: rounded half up, exactly.
qint64 carryCost(MmPoint from, MmPoint to, Millionths perMetre);

} // namespace core::rules
