#pragma once

namespace ui::look {

/// The size of all text of the program, in percent of the system's.
constexpr int kUsualText = 100;
constexpr int kSmallestText = 80;
constexpr int kLargestText = 200;

int textPercent();
/// For the whole application: windows, menus and dialogs follow. Brought into the range above.
void setTextPercent(int percent);
/// The next step up or down of a row of sizes; at its end the same.
int textPercentAfter(int percent, bool larger);

} // namespace ui::look
