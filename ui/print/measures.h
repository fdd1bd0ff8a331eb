#pragma once

// Sizes that the painters of this folder share.

namespace ui::print {

constexpr double kMmPerInch = 25.4;
constexpr double kMmPerPoint = kMmPerInch / 72;
constexpr double kMmPerPixel = kMmPerInch / 96; ///< the drawing's pens and gaps are made for pixels of a screen
constexpr int kTypePixels = 100;                ///< text is painted in one size and scaled, so that no device rounds it
constexpr int kPdfDpi = 600;

// Around the drawing of a yard, in pixels.
constexpr double kMargin = 12;
constexpr double kRight = 54;  ///< the north arrow's
constexpr double kBottom = 46; ///< the scale bar's

} // namespace ui::print
