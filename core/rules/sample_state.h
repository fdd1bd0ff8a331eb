#pragma once

#include "core/model/rows.h"

namespace core::rules {

/// Where a sample is on its way.
enum class SampleState { NotSent, Awaited, Late, In, GivenUp };

/// Late: sent `lateDays` ago (sample.late_days) or longer, and no answer. What is not sent is never late.
inline SampleState sampleState(const Sample& s, Day today, int lateDays) {
    if (s.result) return SampleState::In;
    if (s.lost) return SampleState::GivenUp;
    if (!s.sent) return SampleState::NotSent;
    return today - *s.sent >= lateDays ? SampleState::Late : SampleState::Awaited;
}

} // namespace core::rules
