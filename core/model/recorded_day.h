#pragma once

#include "core/base/day.h"
#include "core/base/id.h"

#include <optional>

namespace core {

/// What a book may hold of a yard on one day, in the order in which it is told.
enum class Recorded {
    Visit,
    Began,
    CarriedIn,
    Carried,
    CarriedOut,
    United,
    ShakenOut,
    Divided,
    Ended,
    Gift,
    Result,
    Treatment
};
constexpr int kRecordedCount = 12;

/// How often something is recorded of a yard's hives on one day: of those that stood in it that day.
struct RecordedDay {
    Day day;
    Recorded what = Recorded::Visit;
    int count = 0;
    friend bool operator==(const RecordedDay&, const RecordedDay&) = default;
};

/// The days between which a stand is known to have been there: its first use, and its last (not set: in use).
struct StandUse {
    StandId stand;
    Day first;
    std::optional<Day> last;
};

} // namespace core
