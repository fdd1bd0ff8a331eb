#include "core/base/clock.h"

namespace core {

QDateTime SystemClock::nowUtc() const { return QDateTime::currentDateTimeUtc(); }

Day SystemClock::today() const { return dayOf(QDate::currentDate()); }

} // namespace core
