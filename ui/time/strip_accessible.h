#pragma once

namespace ui::time {

class Strip;

/// Makes strips known to screen readers as sliders: their value is the day, told with what is recorded on it.
void installStripAccessible();
/// Screen readers hear of another day.
void announceDay(Strip& strip);

} // namespace ui::time
