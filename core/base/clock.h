#pragma once

#include "core/base/day.h"

#include <QDateTime>

namespace core {

/// "Now" is an argument: only SystemClock, made in main, reads the machine's clock.
struct Clock {
    virtual ~Clock() = default;
    virtual QDateTime nowUtc() const = 0;
    /// The user's calendar day (local time).
    virtual Day today() const = 0;
};

struct SystemClock : Clock {
    QDateTime nowUtc() const override;
    Day today() const override;
};

} // namespace core
